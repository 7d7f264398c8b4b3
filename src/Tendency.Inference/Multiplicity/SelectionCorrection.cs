using Tendency.Inference.Functions;

namespace Tendency.Inference.Multiplicity;

/// <summary>
/// Winner's curse: an effect reported only because its |z| passed a threshold is too large on average. Conditional maximum likelihood
/// under that selection. Source: Zhong and Prentice 2008, doi:10.1093/biostatistics/kxn001; Ghosh, Zou and Wright 2008,
/// doi:10.1016/j.ajhg.2008.03.002.
/// </summary>
public static class SelectionCorrection
{
    /// <summary>
    /// The mu with E[Z | |Z| &gt; c] = z for Z ~ N(mu, 1): between 0 and <paramref name="z"/>, with its sign; 0 at z = 0, z at c = 0. The
    /// corrected effect is effect * mu / z.
    /// </summary>
    /// <param name="z">Observed statistic, finite.</param>
    /// <param name="threshold">c &gt;= 0, finite, in the same standard errors; should be below |z|.</param>
    /// <exception cref="ArgumentOutOfRangeException">One is not finite, or the threshold negative.</exception>
    public static double ConditionalMean(double z, double threshold)
    {
        Domain.Finite(z);
        Domain.NotNegative(threshold);
        var size = Math.Abs(z);
        if (size == 0 || threshold == 0)
        {
            return z;
        }

        double low = 0, high = size;
        for (var i = 0; i < 200 && high > low; i++)
        {
            var mu = (low + high) / 2;
            if (mu <= low || mu >= high)
            {
                break;
            }

            if (Expectation(mu, threshold) < size)
            {
                low = mu;
            }
            else
            {
                high = mu;
            }
        }

        return Math.CopySign((low + high) / 2, z);
    }

    // Divided by the density at c - mu, so that nothing underflows far out.
    private static double Expectation(double mu, double c)
    {
        var other = Math.Exp(-2 * c * mu);
        return mu + ((1 - other) / (TailOverDensity(c - mu) + (other * TailOverDensity(c + mu))));
    }

    // Mills' ratio P(Z > x) / density; beyond 30 by its asymptotic series (Abramowitz and Stegun 26.2.12 [from memory]).
    private static double TailOverDensity(double x)
    {
        if (x < 30)
        {
            return NormalDistribution.Upper(x) / NormalDistribution.Density(x);
        }

        var r = 1 / (x * x);
        return (1 - (r * (1 - (3 * r * (1 - (5 * r * (1 - (7 * r)))))))) / x;
    }
}
