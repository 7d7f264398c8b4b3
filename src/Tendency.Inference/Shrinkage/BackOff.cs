using Tendency.Inference.Functions;

namespace Tendency.Inference.Shrinkage;

/// <summary>
/// Estimates for a sparse cell that lean on its parents: all observations -> ... -> parent -> cell, each level containing the next. Every
/// level uses only observations not in the next one, so each counts once. Source: beta-binomial, Skellam 1948; hierarchical back-off,
/// MacKay and Peto 1995, doi:10.1017/S1351324900000218.
/// </summary>
public static class BackOff
{
    /// <summary>Prior strength (in observations) when the level has too few siblings to estimate it.</summary>
    public const double UsualStrength = 12;

    /// <summary>
    /// One share along a path: <paramref name="hits"/>[d] of <paramref name="trials"/>[d] at level d, the last level being the cell; both
    /// fall along the path (real counts allowed). <paramref name="strength"/>[d - 1] is level d's prior strength in observations, &gt; 0 and
    /// possibly infinite; one fewer than levels. A path of one level stands on half a hit in one trial. The mean is always inside (0, 1).
    /// </summary>
    /// <exception cref="ArgumentException">Lengths do not fit, a count is not finite, a strength not positive, or a level holds less than the next.</exception>
    public static BackOffShare Share(ReadOnlySpan<double> hits, ReadOnlySpan<double> trials, ReadOnlySpan<double> strength)
    {
        var levels = hits.Length;
        if (levels == 0 || trials.Length != levels || strength.Length != levels - 1)
        {
            throw new ArgumentException("A path needs hits and trials for every level and a strength for every level but the first.", nameof(hits));
        }

        for (var d = 0; d < levels; d++)
        {
            Domain.Count(hits[d], nameof(hits));
            Domain.Count(trials[d], nameof(trials));
        }

        CheckStrength(strength);
        var means = new double[levels];
        double mean = 0.5, weight = 1;
        for (var d = 0; d < levels; d++)
        {
            weight = d > 0 ? strength[d - 1] : weight;
            var last = d == levels - 1;
            var x = last ? hits[d] : hits[d] - hits[d + 1];
            var n = last ? trials[d] : trials[d] - trials[d + 1];

            // Real counts that should be equal may differ by a rounding error.
            if (!(x >= -1e-9 && x <= n + 1e-9))
            {
                throw new ArgumentException($"Level {d} must contain the next: {x} of {n} remain.", nameof(hits));
            }

            x = Math.Max(0, x);
            n = Math.Max(x, n);
            if (last)
            {
                return new BackOffShare(Finish(means, d, x, n, mean, weight), x + (weight * mean), n - x + (weight * (1 - mean)));
            }

            mean = double.IsInfinity(weight) ? mean : (x + (weight * mean)) / (n + weight);
            means[d] = mean;
        }

        throw new InvalidOperationException("A path always ends in its cell.");
    }

    /// <summary>
    /// The same for a mix of k categories: <paramref name="counts"/>[d][j], root 1/k each with a total weight of 1. Returns the mean mix
    /// of every level, the cell's last; each sums to 1.
    /// </summary>
    /// <exception cref="ArgumentException">As for <see cref="Share"/>, or no category.</exception>
    public static double[][] Mix(IReadOnlyList<IReadOnlyList<double>> counts, ReadOnlySpan<double> strength)
    {
        ArgumentNullException.ThrowIfNull(counts);
        if (counts.Count == 0 || strength.Length != counts.Count - 1 || counts.Any(c => c is not { Count: > 0 } || c.Count != counts[0].Count))
        {
            throw new ArgumentException("A path needs the same categories at every level and a strength for every level but the first.", nameof(counts));
        }

        foreach (var count in counts.SelectMany(level => level))
        {
            Domain.Count(count, nameof(counts));
        }

        CheckStrength(strength);
        var k = counts[0].Count;
        var means = new double[counts.Count][];
        var parent = Enumerable.Repeat(1.0 / k, k).ToArray();
        for (var d = 0; d < counts.Count; d++)
        {
            var weight = d == 0 ? 1 : strength[d - 1];
            var level = new double[k];
            var total = 0.0;
            for (var j = 0; j < k; j++)
            {
                var x = d == counts.Count - 1 ? counts[d][j] : counts[d][j] - counts[d + 1][j];
                level[j] = x >= -1e-9 ? Math.Max(0, x) : throw new ArgumentException($"Level {d} must contain the next.", nameof(counts));
                total += level[j];
            }

            means[d] = double.IsInfinity(weight) ? parent : [.. level.Zip(parent, (x, m) => (x + (weight * m)) / (total + weight))];
            parent = means[d];
        }

        return means;
    }

    private static void CheckStrength(ReadOnlySpan<double> strength)
    {
        foreach (var weight in strength)
        {
            if (!(weight > 0))
            {
                throw new ArgumentOutOfRangeException(nameof(strength), weight, "A strength is above 0, or infinite.");
            }
        }
    }

    private static double[] Finish(double[] means, int d, double x, double n, double mean, double weight)
    {
        means[d] = double.IsInfinity(weight) ? mean : (x + (weight * mean)) / (n + weight);
        return means;
    }
}
