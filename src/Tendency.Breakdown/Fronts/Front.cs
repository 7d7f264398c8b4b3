namespace Tendency.Breakdown.Fronts;

/// <summary>What decides which side is which when the defense sets a front.</summary>
public enum SetBy
{
    Strength,
    Back,
}

/// <summary>What the man over the center may do: float to either A gap, always fit to the play, or stay where he is shaded (he is then in a line list).</summary>
public enum NoseKind
{
    Floats,
    ToPlay,
    Fixed,
}

/// <summary>Who comes from depth to fit a run.</summary>
public enum LateHelp
{
    /// <summary>Outside safety on the side without the overhang, then the middle safety.</summary>
    OpenSafetyAndMiddle,

    /// <summary>Outside safety on the side the front is set to, then the middle safety.</summary>
    ToSafetyAndMiddle,

    /// <summary>Outside safety on the other side, then the middle safety.</summary>
    OffSafetyAndMiddle,

    /// <summary>One safety, who goes where he is missing most.</summary>
    OneSafety,

    /// <summary>The strong safety, always on the strength's side.</summary>
    StrongSafety,

    /// <summary>A post safety, counted only as the last man on the cutback.</summary>
    PostSafety,
}

/// <summary>One front as data: who lines up where, who helps, what it is good for.</summary>
/// <param name="Name">Printed name, with spaces.</param>
/// <param name="SetBy">Whether "to" below means the strength's side or the back's side.</param>
/// <param name="LineTo">Techniques on the side the front is set to, from the inside out; a floating nose is not in it.</param>
/// <param name="LineOff">Techniques on the other side.</param>
/// <param name="Linebackers">Linebackers in the box.</param>
/// <param name="Overhangs">Overhangs without a pass duty: one stands on the strength's side, two on both.</param>
/// <param name="EdgeTo">Who forces the run on the side the front is set to.</param>
/// <param name="RushTo">Pass rush of that side, -2 to 2, expert opinion.</param>
public sealed record Front(
    string Name,
    SetBy SetBy,
    IReadOnlyList<string> LineTo,
    IReadOnlyList<string> LineOff,
    NoseKind Nose,
    int Linebackers,
    int Overhangs,
    LateHelp Late,
    string EdgeTo,
    string EdgeOff,
    double RushTo,
    double RushOff,
    string StrongAgainst,
    string WeakAgainst,
    string Notes,
    IReadOnlyList<string> AlsoCalled)
{
    /// <summary>Whether three safeties stand deep, so that the shell behind it decides who helps.</summary>
    public bool HasThreeSafeties => Late is LateHelp.OpenSafetyAndMiddle or LateHelp.ToSafetyAndMiddle or LateHelp.OffSafetyAndMiddle;

    /// <summary>Players a defense has.</summary>
    public const int MostMen = 11;

    /// <summary>Men who fit the run at the snap or late.</summary>
    public int Men => LineTo.Count + LineOff.Count + (Nose == NoseKind.Fixed ? 0 : 1) + Linebackers + Overhangs + (HasThreeSafeties ? 2 : 1);

    /// <summary>Mean rush rating of both sides.</summary>
    public double Rush => (RushTo + RushOff) / 2;

    /// <summary>The alignment from left to right with the side the front is set to on the right: <c>4i-0-4i</c>.</summary>
    public string Alignment
    {
        get
        {
            var left = LineOff.Reverse();
            var nose = Nose == NoseKind.Fixed ? Array.Empty<string>() : ["0"];
            return string.Join('-', left.Concat(nose).Concat(LineTo));
        }
    }
}
