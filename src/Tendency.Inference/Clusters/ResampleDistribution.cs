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

    public IReadOnlyList<double> Values { get; }

    public IReadOnlyList<double> Probabilities { get; }

    public double Mean { get; }

    public double StandardDeviation { get; }

    /// <summary>Smallest value v with P(T &lt;= v) &gt;= level, to 1e-12.</summary>
    public double Quantile(double level)
    {
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
