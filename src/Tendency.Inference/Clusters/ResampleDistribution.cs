using Tendency.Inference.Functions;

namespace Tendency.Inference.Clusters;

/// <summary>A distribution on finitely many values, rising, with their probabilities (sum 1).</summary>
public sealed class ResampleDistribution
{
    internal ResampleDistribution(IReadOnlyDictionary<double, double> points)
    {
        Values = [.. points.Keys.Order()];
        Probabilities = [.. Values.Select(value => points[value])];
        Mean = Values.Zip(Probabilities, (v, p) => v * p).Sum();
        StandardDeviation = Math.Sqrt(Values.Zip(Probabilities, (v, p) => (v - Mean) * (v - Mean) * p).Sum());
    }

    /// <summary>Attainable values, rising.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>Probability of each value.</summary>
    public IReadOnlyList<double> Probabilities { get; }

    /// <summary>Mean of the values.</summary>
    public double Mean { get; }

    /// <summary>Their standard deviation, with n in the denominator.</summary>
    public double StandardDeviation { get; }

    /// <summary>Smallest value v with P(T &lt;= v) &gt;= level, to 1e-12 (Hyndman and Fan 1996, doi:10.2307/2684934, type 1 [from memory]).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside [0, 1].</exception>
    public double Quantile(double level)
    {
        Domain.Probability(level);
        var sum = 0.0;
        for (var i = 0; i < Values.Count; i++)
        {
            sum += Probabilities[i];
            if (sum >= level - 1e-12)
            {
                return Values[i];
            }
        }

        return Values[^1];
    }
}
