using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Scores;

/// <summary>Mean of one value per group (a score difference per game) with Student's interval.</summary>
public static class MeanOfGroups
{
    /// <summary>Mean -/+ t(K - 1) sd / sqrt K; null with fewer than two groups. With fewer than four print the groups instead.</summary>
    public static Interval? StudentInterval(IReadOnlyList<double> values, double level)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < 2)
        {
            return null;
        }

        var mean = values.Average();
        var sd = Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1));
        var half = StudentT.Quantile(values.Count - 1, (1 + level) / 2) * sd / Math.Sqrt(values.Count);
        return new Interval(mean - half, mean + half);
    }
}
