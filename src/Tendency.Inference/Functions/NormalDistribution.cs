using MathNet.Numerics;

namespace Tendency.Inference.Functions;

/// <summary>
/// Standard normal distribution; quantiles to 1e-14 relative. A point may be infinite; NaN and a probability outside [0, 1] are refused
/// with an <see cref="ArgumentOutOfRangeException"/>. Source of the functions: MathNet.Numerics' Erfc and ErfcInv.
/// </summary>
public static class NormalDistribution
{
    private const double Sqrt2 = 1.4142135623730951;

    /// <summary>Density at <paramref name="z"/>.</summary>
    public static double Density(double z)
    {
        Domain.Number(z);
        return Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
    }

    /// <summary>P(Z &lt;= z).</summary>
    public static double Lower(double z)
    {
        Domain.Number(z);
        return SpecialFunctions.Erfc(-z / Sqrt2) / 2;
    }

    /// <summary>P(Z &gt; z), computed as such.</summary>
    public static double Upper(double z)
    {
        Domain.Number(z);
        return SpecialFunctions.Erfc(z / Sqrt2) / 2;
    }

    /// <summary>The z with P(Z &lt;= z) = p; minus and plus infinity at 0 and 1.</summary>
    public static double Quantile(double p)
    {
        Domain.Probability(p);
        return -Sqrt2 * SpecialFunctions.ErfcInv(2 * p);
    }

    /// <summary>Two-sided critical value of a confidence level in (0, 1), e.g. 1.96 for 0.95.</summary>
    public static double CriticalValue(double level)
    {
        Domain.Level(level);
        return -Quantile((1 - level) / 2);
    }
}
