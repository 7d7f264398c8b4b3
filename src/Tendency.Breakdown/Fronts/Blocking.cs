namespace Tendency.Breakdown.Fronts;

/// <summary>A lineman who leaves his place to block elsewhere.</summary>
/// <param name="Man">guard, tackle or center.</param>
/// <param name="IsNear">He starts on the play's side; the center and the far men leave the backside.</param>
/// <param name="Job">What he does there: "kicks out", "wraps", "leads".</param>
public sealed record Pull(string Man, bool IsNear, string Job)
{
    public const string KicksOut = "kicks out";

    /// <summary>The pull of a line as "far guard kicks out", "center leads".</summary>
    /// <returns>Null when it names no lineman.</returns>
    internal static Pull? Parse(string words)
    {
        var parts = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var man = Array.FindIndex(parts, part => part is "guard" or "tackle" or "center");
        return man < 0 ? null : new Pull(parts[man], parts[0] == "near", string.Join(' ', parts[(man + 1)..]));
    }
}

/// <summary>Where the man who joins the blocking starts.</summary>
public enum InsertStart
{
    /// <summary>Just off the line on the play's side.</summary>
    Wing,

    /// <summary>Just off the line on the backside.</summary>
    FarWing,

    /// <summary>A second back before the deep one.</summary>
    Backfield,

    /// <summary>The deep back himself, for another runner.</summary>
    Back,
}

/// <summary>Who takes the ball through the hole the scheme aims at.</summary>
public enum Carrier
{
    Back,
    Quarterback,
    MotionMan,
}

/// <summary>The first step of the linemen who do not pull.</summary>
public enum LineBlocks
{
    Straight,

    /// <summary>All together to the play's side.</summary>
    Step,

    /// <summary>The play's side blocks down, toward the ball.</summary>
    Down,
}
