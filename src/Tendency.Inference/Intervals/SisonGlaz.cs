using Tendency.Inference.Functions;

namespace Tendency.Inference.Intervals;

/// <summary>
/// Sison and Glaz's simultaneous intervals: limits p - c/n and p + (c + 2 delta)/n, fractions, cut to [0, 1]. Source: doi:10.1080/01621459.1995.10476521.
/// </summary>
/// <param name="C">The smallest c whose coverage nu(c) does not pass the level while nu(c + 1) does.</param>
/// <param name="Delta">The linear share between them, 0 to 1.</param>
/// <param name="Intervals">One per category, in their order.</param>
public sealed record SisonGlaz(int C, double Delta, IReadOnlyList<Interval> Intervals)
{
    // The search takes time in proportion to the observations.
    private const long MostObservations = 10_000_000;

    internal static SisonGlaz? Solve(IReadOnlyList<int> counts, double level)
    {
        ArgumentNullException.ThrowIfNull(counts);
        Domain.Level(level);
        var sum = 0L;
        foreach (var count in counts)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(count, nameof(counts));
            sum += count;
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(sum, MostObservations, nameof(counts));
        var n = (int)sum;
        if (n == 0)
        {
            return null;
        }

        // With c = 0 every truncated count is a single point, which the approximation knows nothing about: no coverage.
        var previous = 0.0;
        for (var c = 0; c <= n; c++)
        {
            var next = Coverage(counts, n, c + 1);
            if (previous <= level && level < next)
            {
                var delta = (level - previous) / (next - previous);
                return new SisonGlaz(c, delta, [.. counts.Select(x => Limits(x, n, c, delta))]);
            }

            previous = next;
        }

        return null;
    }

    private static Interval Limits(int x, double n, int c, double delta) =>
        new(Math.Max(0, (x - c) / n), Math.Min(1, (x + c + (2 * delta)) / n));

    // nu(c): probability that every count stays within c of the observed one, by Levin's representation: independent Poissons truncated
    // to [max(0, x - c), x + c], an Edgeworth approximation of their sum at n, over the Poisson(n) probability of n.
    private static double Coverage(IReadOnlyList<int> counts, int n, int c)
    {
        double logProduct = 0, mean = 0, variance = 0, third = 0, fourthExcess = 0;
        foreach (var x in counts)
        {
            var m = TruncatedPoisson(x, Math.Max(0, x - c), x + c);
            logProduct += Math.Log(m.Probability);
            mean += m.Mean;
            variance += m.Variance;
            third += m.Third;
            fourthExcess += m.Fourth - (3 * m.Variance * m.Variance);
        }

        var logScale = -(n * Math.Log(n)) + n + GammaFunction.LogFactorial(n);
        var z = (n - mean) / Math.Sqrt(variance);
        var skew = third / Math.Pow(variance, 1.5);
        var excess = fourthExcess / (variance * variance);
        var poly = 1 + (skew * ((z * z * z) - (3 * z)) / 6)
            + (excess * (Math.Pow(z, 4) - (6 * z * z) + 3) / 24)
            + (skew * skew * (Math.Pow(z, 6) - (15 * Math.Pow(z, 4)) + (45 * z * z) - 15) / 72);
        return Math.Exp(logScale + logProduct) * poly * NormalDistribution.Density(z) / Math.Sqrt(variance);
    }

    private static (double Probability, double Mean, double Variance, double Third, double Fourth) TruncatedPoisson(int rate, int low, int high)
    {
        double total = 0, mean = 0;
        var weights = new double[high - low + 1];
        for (var k = low; k <= high; k++)
        {
            var weight = rate == 0 ? (k == 0 ? 1 : 0) : Math.Exp((k * Math.Log(rate)) - rate - GammaFunction.LogFactorial(k));
            weights[k - low] = weight;
            total += weight;
            mean += k * weight;
        }

        mean /= total;
        double second = 0, third = 0, fourth = 0;
        for (var k = low; k <= high; k++)
        {
            var d = k - mean;
            var share = weights[k - low] / total;
            second += d * d * share;
            third += d * d * d * share;
            fourth += d * d * d * d * share;
        }

        return (total, mean, second, third, fourth);
    }
}
