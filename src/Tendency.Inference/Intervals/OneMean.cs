using Tendency.Inference.Functions;

namespace Tendency.Inference.Intervals;

/// <summary>Interval of a mean of independent values.</summary>
public static class OneMean
{
    /// <summary>
    /// mean ± t s/√n with n − 1 degrees of freedom, in the values' unit. Of width 0 where all values are equal. Source: Student 1908,
    /// doi:10.1093/biomet/6.1.1.
    /// </summary>
    /// <param name="values">At least two finite numbers.</param>
    /// <param name="level">In (0, 1).</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two values, one that is not finite, or a level outside.</exception>
    public static Interval Student(IReadOnlyList<double> values, double level)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentOutOfRangeException.ThrowIfLessThan(values.Count, 2, nameof(values));
        Domain.Level(level);
        foreach (var value in values)
        {
            Domain.Finite(value, nameof(values));
        }

        var mean = values.Average();
        var variance = values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1);
        var half = StudentT.Quantile(values.Count - 1, (1 + level) / 2) * Math.Sqrt(variance / values.Count);
        return new Interval(mean - half, mean + half);
    }
}
