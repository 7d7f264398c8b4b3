using Tendency.Inference.Intervals;

namespace Tendency.Inference.Scores;

/// <summary>Mean of one value per group (a score difference per game) with Student's interval.</summary>
public static class MeanOfGroups
{
    /// <summary>
    /// Mean -/+ t(K - 1) sd / sqrt K (<see cref="OneMean.Student"/>), in the values' unit; null with fewer than two groups. With fewer
    /// than four print the groups instead.
    /// </summary>
    /// <param name="values">One finite number per group.</param>
    /// <param name="level">In (0, 1).</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the level outside.</exception>
    public static Interval? StudentInterval(IReadOnlyList<double> values, double level)
    {
        ArgumentNullException.ThrowIfNull(values);
        return values.Count < 2 ? null : OneMean.Student(values, level);
    }
}
