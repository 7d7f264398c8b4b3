using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// Intervals for the ratio p1/p2 of two independent shares, x1 of n1 and x2 of n2, n &gt; 0 (real counts allowed). x1 = 0 gives low = 0,
/// x2 = 0 gives high = infinity; with both 0 the ratio is undefined and the interval is [0, infinity]. All throw
/// <see cref="ArgumentOutOfRangeException"/> unless n &gt; 0, 0 &lt;= x &lt;= n and 0 &lt; level &lt; 1.
/// </summary>
public static class Ratio
{
    // Logarithm of a ratio beyond which a count is as good as 0.
    private const double Far = 100;

    /// <summary>
    /// Score interval with the variance factor N/(N - 1); [0, infinity] where N = n1 + n2 is at most 1. Source: Miettinen and Nurminen 1985,
    /// doi:10.1002/sim.4780040211.
    /// </summary>
    public static Interval MiettinenNurminen(double x1, double n1, double x2, double n2, double level) =>
        ScoreInterval(x1, n1, x2, n2, level, n1 + n2 > 1 ? (n1 + n2) / (n1 + n2 - 1) : double.PositiveInfinity);

    /// <summary>Score interval without the factor. Source: Koopman 1984, doi:10.2307/2531405.</summary>
    public static Interval Koopman(double x1, double n1, double x2, double n2, double level) => ScoreInterval(x1, n1, x2, n2, level, 1);

    /// <summary>Log interval (Katz and others 1978, doi:10.2307/2530610): for comparison only; null when a count is 0.</summary>
    public static Interval? Katz(double x1, double n1, double x2, double n2, double level)
    {
        Check(ref x1, n1, ref x2, n2, level);
        if (x1 == 0 || x2 == 0)
        {
            return null;
        }

        var z = NormalDistribution.CriticalValue(level);
        var half = z * Math.Sqrt((1 / x1) - (1 / n1) + (1 / x2) - (1 / n2));
        var ratio = x1 / n1 / (x2 / n2);
        return double.IsFinite(half) && double.IsFinite(ratio)
            ? new Interval(ratio * Math.Exp(-half), ratio * Math.Exp(half))
            : new Interval(0, double.PositiveInfinity);
    }

    private static Interval ScoreInterval(double x1, double n1, double x2, double n2, double level, double factor)
    {
        Check(ref x1, n1, ref x2, n2, level);
        if ((x1 == 0 && x2 == 0) || double.IsInfinity(factor))
        {
            return new Interval(0, double.PositiveInfinity);
        }

        var z = NormalDistribution.CriticalValue(level);
        var estimate = x1 == 0 ? -Far : x2 == 0 ? Far : Math.Log(x1 / n1 / (x2 / n2));
        if (Math.Abs(estimate) > Far)
        {
            return estimate > 0 ? new Interval(0, double.PositiveInfinity) : new Interval(0, Math.Exp(Far));
        }

        // The score falls as the tested ratio rises: bisection in the log of the ratio on each side of the estimate.
        var low = x1 == 0 ? 0 : Bisect(-Far, estimate, phi => Score(x1, n1, x2, n2, phi, factor) > z);
        var high = x2 == 0 ? double.PositiveInfinity : Bisect(estimate, Far, phi => Score(x1, n1, x2, n2, phi, factor) > -z);
        return new Interval(low, high);
    }

    private static double Bisect(double low, double high, Func<double, bool> tooLow)
    {
        for (var i = 0; i < 100 && high - low > 1e-15; i++)
        {
            var middle = (low + high) / 2;
            if (tooLow(Math.Exp(middle)))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return Math.Exp((low + high) / 2);
    }

    // Most likely p2 when p1 = phi p2: the smaller root of a quadratic, in the form that does not cancel.
    private static double Score(double x1, double n1, double x2, double n2, double phi, double factor)
    {
        double a = (n1 + n2) * phi, b = (n1 * phi) + x1 + n2 + (x2 * phi), c = x1 + x2;
        var p2 = Math.Min(1, 2 * c / (b + Math.Sqrt(Math.Max(0, (b * b) - (4 * a * c)))));
        var p1 = Math.Min(1, phi * p2);
        var variance = ((p1 * (1 - p1) / n1) + (phi * phi * p2 * (1 - p2) / n2)) * factor;
        var distance = (x1 / n1) - (phi * x2 / n2);
        if (variance > 0)
        {
            return distance / Math.Sqrt(variance);
        }

        return distance == 0 ? 0 : distance > 0 ? double.PositiveInfinity : double.NegativeInfinity;
    }

    private static void Check(ref double x1, double n1, ref double x2, double n2, double level)
    {
        OneProportion.Check(ref x1, n1, level, nameof(x1), nameof(n1));
        OneProportion.Check(ref x2, n2, level, nameof(x2), nameof(n2));
        Domain.Positive(n1);
        Domain.Positive(n2);
    }
}
