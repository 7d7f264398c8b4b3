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
    /// <param name="z">Observed statistic.</param>
    /// <param name="threshold">c &gt;= 0, in the same standard errors; should be below |z|.</param>
    public static double ConditionalMean(double z, double threshold)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(threshold);
        var size = Math.Abs(z);
        if (size == 0 || threshold == 0 || !double.IsFinite(size))
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

    private static double Expectation(double mu, double c)
    {
        var bias = NormalDistribution.Density(c - mu) - NormalDistribution.Density(c + mu);
        return mu + (bias / (NormalDistribution.Lower(mu - c) + NormalDistribution.Lower(-c - mu)));
    }
}
