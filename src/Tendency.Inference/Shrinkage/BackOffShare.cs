using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Shrinkage;

/// <summary>
/// A shrunk share: its posterior is Beta(<paramref name="A"/>, <paramref name="B"/>). Source: Gelman and others, Bayesian Data Analysis, 3rd
/// ed., sec. 2.4 [from memory].
/// </summary>
/// <param name="PathMeans">Mean at every level of the path, the cell's own last.</param>
/// <param name="A">Hits of the cell plus the parent's share of the prior strength; infinite if the strength is.</param>
/// <param name="B">Misses of the cell plus the rest of the prior strength.</param>
public sealed record BackOffShare(IReadOnlyList<double> PathMeans, double A, double B)
{
    /// <summary>The shrunk estimate, a fraction strictly inside (0, 1).</summary>
    public double Mean => PathMeans[^1];

    /// <summary>Equal-tailed posterior interval at a level in (0, 1); a single point if the prior strength is infinite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside (0, 1).</exception>
    public Interval Interval(double level)
    {
        Domain.Level(level);
        return double.IsInfinity(A) || double.IsInfinity(B) ? new Interval(Mean, Mean) : OneProportion.Quantiles(A, B, level);
    }
}
