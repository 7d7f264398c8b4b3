namespace Tendency.SampleCharts.Walks;

/// <summary>How the offense lines up, in the words of the chart. Strength is L or R; the back's side is told from it.</summary>
public sealed record Look(
    string Personnel, string Formation, char Strength, string BackSet, string BackSide, string Attached, string Wing,
    string Motion, string Tempo)
{
    /// <summary>L or R where the back stands on a side; null where he is behind the passer or not there at all.</summary>
    public char? BackLetter => BackSide switch
    {
        "strong" => Strength,
        "weak" => Sides.Other(Strength),
        _ => null,
    };
}

/// <summary>
/// What was called. Kind is run, pass, rpo or none. ThrownOrKept tells an rpo's two ends apart:
/// RunBall is true where the ball was handed off or kept.
/// </summary>
public sealed record Call(
    string Kind, bool RunBall, string RunScheme = "", char? RunSide = null, string Gap = "", string Read = "",
    string PassConcept = "", string Drop = "", string Protection = "", char? SlideSide = null)
{
    public static Call None { get; } = new("none", RunBall: false);
}

/// <summary>What the defense showed and sent.</summary>
public sealed record DefenseLook(string Front, string Coverage, int Shell, int Rushers, int Box, string PressureSide);

/// <summary>A flag on the play. Effect is replay, declined, added on or offset; yards are always positive, who fouled gives the sign.</summary>
public sealed record Flag(string On, int Yards, string Effect, bool FirstDown, string Name);

/// <summary>What came of the snap. Gain is null where a flag wiped the play out.</summary>
public sealed record Outcome(int? Gain, string Result, bool Touchdown = false, string Target = "", Flag? Flag = null, string Note = "");

/// <summary>One snap as it was walked, before anybody charts it.</summary>
public sealed record Snap(
    string Offense, string Defense, Situation At, Look Look, Call Call, DefenseLook Faced, Outcome Outcome);

internal static class Sides
{
    public static char Other(char side) => side == 'L' ? 'R' : 'L';

    public static string Text(char? side) => side is { } letter ? letter.ToString() : "";
}
