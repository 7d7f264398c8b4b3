using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Counts;

/// <summary>How an interval for one share is made.</summary>
public enum IntervalMethod
{
    Wilson,
    Jeffreys,
    Exact,
    AgrestiCoull,
}

/// <summary>A share, with the plays it comes from and how sure it is.</summary>
/// <param name="Tally">The plays counted.</param>
/// <param name="Likely">Range at the level asked for, clipped to 0–1.</param>
public sealed record Estimate(Tally Tally, Interval Likely)
{
    /// <summary>Fewest plays for which a percentage is printed.</summary>
    public const int FewestPlays = 5;

    public static Estimate Of(Tally tally, double level, IntervalMethod method = IntervalMethod.Wilson) =>
        new(tally, IntervalOf(tally.Count, tally.Plays, level, method).ClippedToShare());

    /// <summary>The interval of a share from real-valued, possibly effective, counts; not clipped.</summary>
    internal static Interval IntervalOf(double count, double plays, double level, IntervalMethod method) => method switch
    {
        IntervalMethod.Jeffreys => OneProportion.Jeffreys(count, plays, level),
        IntervalMethod.Exact => OneProportion.ClopperPearson(count, plays, level),
        IntervalMethod.AgrestiCoull => OneProportion.AgrestiCoull(count, plays, level),
        _ => OneProportion.Wilson(count, plays, level),
    };
}
