using Tendency.Inference.Functions;

namespace Tendency.Inference.Intervals;

/// <summary>
/// Intervals for the k shares of one mix that hold all at once. Input: one count per category offered, those never seen included (they
/// count in k); counts may be real. One interval per category comes back, in their order, in fractions of the mix. n = 0 gives [0, 1] for
/// each; no category gives an empty list. A negative or infinite count or a level outside (0, 1) is refused with an
/// <see cref="ArgumentOutOfRangeException"/>.
/// </summary>
public static class Simultaneous
{
    /// <summary>
    /// Goodman's intervals, the house's default: score limits with the chi-square(1) quantile at (1 - level)/k; low is 0 at x = 0 and
    /// high is 1 at x = n. Source: Goodman 1965, doi:10.1080/00401706.1965.10490252.
    /// </summary>
    public static IReadOnlyList<Interval> Goodman(IReadOnlyList<double> counts, double level)
    {
        Check(counts, level);
        return counts.Count == 0 ? [] : Score(counts, ChiSquared.UpperQuantile(1, (1 - level) / counts.Count));
    }

    /// <summary>Quesenberry and Hurst's intervals: as Goodman's with the chi-square(k - 1) quantile; wider. Source: doi:10.1080/00401706.1964.10490163.</summary>
    public static IReadOnlyList<Interval> QuesenberryHurst(IReadOnlyList<double> counts, double level)
    {
        Check(counts, level);
        return counts.Count switch
        {
            0 => [],
            1 => Score(counts, ChiSquared.UpperQuantile(1, 1 - level)),
            _ => Score(counts, ChiSquared.UpperQuantile(counts.Count - 1, 1 - level)),
        };
    }

    /// <summary>
    /// Sison and Glaz's intervals, as a check only: they fall far short of their level on mixes with one dominant category and have no
    /// width when one category holds everything. Null when no c crosses the level, and without observations. Source: Sison and Glaz 1995,
    /// doi:10.1080/01621459.1995.10476521; May and Johnson 2000, doi:10.18637/jss.v005.i06.
    /// </summary>
    public static SisonGlaz? SisonGlaz(IReadOnlyList<int> counts, double level) => Intervals.SisonGlaz.Solve(counts, level);

    private static Interval[] Score(IReadOnlyList<double> counts, double squaredCritical)
    {
        var n = counts.Sum();
        return [.. counts.Select(x => OneProportion.Score(Math.Min(x, n), n, squaredCritical))];
    }

    private static void Check(IReadOnlyList<double> counts, double level)
    {
        ArgumentNullException.ThrowIfNull(counts);
        Domain.Level(level);
        foreach (var count in counts)
        {
            Domain.Count(count, nameof(counts));
        }
    }
}
