using Tendency.Breakdown.Counts;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>What a less lopsided mix would do to our success.</summary>
public enum MixVerdict
{
    /// <summary>Too few plays of one of the calls, or no result charted.</summary>
    Unknown,

    /// <summary>The range holds no difference.</summary>
    TooClose,

    /// <summary>The other call did better: calling it more gains even if nobody adjusts.</summary>
    Gains,

    /// <summary>The usual call did better: calling the other more loses as long as nobody sits on it.</summary>
    Loses,
}

/// <summary>What the usual call and the other one brought us, by our own film.</summary>
/// <param name="Usual">Successes of the usual call from the look, ours: an offense's gain, a defense's stop.</param>
/// <param name="Other">Successes of the other call.</param>
/// <param name="OtherFromLook">Whether the other call was counted from this look; else from all our plays, too few here.</param>
public sealed record CallFilm(Tally Usual, Tally Other, bool OtherFromLook, double Level)
{
    /// <summary>Fewer plays with a result say nothing.</summary>
    public const int FewestPlays = 5;

    public bool IsKnown => Usual.Plays >= FewestPlays && Other.Plays >= FewestPlays;

    /// <summary>Success gained a play by the other call instead; negative = lost. Null when not known.</summary>
    public double? Difference => IsKnown ? Other.Share - Usual.Share : null;

    /// <summary>Newcombe's range of the difference.</summary>
    public Interval? Range => IsKnown ? Inference.Comparisons.Difference.Newcombe(Other.Count, Other.Plays, Usual.Count, Usual.Plays, Level) : null;

    public MixVerdict Verdict => Range is not { } range ? MixVerdict.Unknown
        : range.Low > 0 ? MixVerdict.Gains
        : range.High < 0 ? MixVerdict.Loses : MixVerdict.TooClose;
}
