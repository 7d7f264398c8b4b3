using MathNet.Numerics;

namespace Tendency.Inference.Functions;

/// <summary>Standard normal distribution; quantiles to 1e-14 relative.</summary>
public static class NormalDistribution
{
    private const double Sqrt2 = 1.4142135623730951;

    /// <summary>Density at <paramref name="z"/>.</summary>
    public static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>P(Z &lt;= z).</summary>
    public static double Lower(double z) => SpecialFunctions.Erfc(-z / Sqrt2) / 2;

    /// <summary>P(Z &gt; z), computed as such.</summary>
    public static double Upper(double z) => SpecialFunctions.Erfc(z / Sqrt2) / 2;

    /// <summary>The z with P(Z &lt;= z) = p; minus and plus infinity at 0 and 1.</summary>
    public static double Quantile(double p)
    {
        if (!(p >= 0 && p <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "A probability lies between 0 and 1.");
        }

        return -Sqrt2 * SpecialFunctions.ErfcInv(2 * p);
    }

    /// <summary>Two-sided critical value of a confidence level, e.g. 1.96 for 0.95.</summary>
    public static double CriticalValue(double level)
    {
        if (!(level > 0 && level < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(level), level, "A confidence level lies strictly between 0 and 1.");
        }

        return -Quantile((1 - level) / 2);
    }
}
