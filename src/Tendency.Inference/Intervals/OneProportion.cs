using Tendency.Inference.Functions;

namespace Tendency.Inference.Intervals;

/// <summary>
/// Two-sided, equal-tailed confidence intervals, in fractions, for one share x/n. Counts may be real numbers (effective counts of weighted or clustered
/// observations): x = p n_eff, n = n_eff, also n_eff &lt; 1. With n = 0 there is no estimate and every interval is [0, 1].
/// All throw <see cref="ArgumentOutOfRangeException"/> unless 0 &lt;= x &lt;= n &lt;= 1e15 and 0 &lt; level &lt; 1.
/// </summary>
public static class OneProportion
{
    /// <summary>
    /// Wilson's score interval, the house's default: closed form, sensible at x = 0 (low exactly 0) and x = n (high exactly 1), and
    /// mirrored, low(x) = 1 - high(n - x). Source: Wilson 1927, doi:10.1080/01621459.1927.10502953; Brown, Cai and DasGupta 2001,
    /// doi:10.1214/ss/1009213286, sec. 3.1.1.
    /// </summary>
    public static Interval Wilson(double x, double n, double level)
    {
        Check(ref x, n, level);
        var z = NormalDistribution.CriticalValue(level);
        return Score(x, n, z * z);
    }

    /// <summary>Wilson's interval with continuity correction (Newcombe 1998, Statistics in Medicine 17:857, method 4). Wider: for comparison only.</summary>
    public static Interval WilsonContinuity(double x, double n, double level)
    {
        Check(ref x, n, level);
        if (n == 0)
        {
            return new Interval(0, 1);
        }

        var z = NormalDistribution.CriticalValue(level);
        double p = x / n, q = 1 - p, z2 = z * z;
        var low = ((2 * x) + z2 - 1 - (z * Math.Sqrt(Math.Max(0, z2 - 2 - (1 / n) + (4 * p * ((n * q) + 1)))))) / (2 * (n + z2));
        var high = ((2 * x) + z2 + 1 + (z * Math.Sqrt(Math.Max(0, z2 + 2 - (1 / n) + (4 * p * ((n * q) - 1)))))) / (2 * (n + z2));
        return new Interval(x <= 0 ? 0 : Math.Max(0, low), x >= n ? 1 : Math.Min(1, high));
    }

    /// <summary>
    /// Jeffreys' interval: quantiles of Beta(x + 1/2, n - x + 1/2); low is 0 at x = 0 and high is 1 at x = n
    /// (Brown, Cai and DasGupta 2001, sec. 3.1.3).
    /// </summary>
    public static Interval Jeffreys(double x, double n, double level)
    {
        Check(ref x, n, level);
        if (n == 0)
        {
            return new Interval(0, 1);
        }

        var raw = JeffreysRaw(x, n, level);
        return new Interval(x <= 0 ? 0 : raw.Low, x >= n ? 1 : raw.High);
    }

    /// <summary>
    /// Quantiles of Beta(x + 1/2, n - x + 1/2) without the rule for the edges: a posterior interval (Brown, Cai and DasGupta 2001, sec.
    /// 3.1.3); Beta(1/2, 1/2) at n = 0.
    /// </summary>
    public static Interval JeffreysRaw(double x, double n, double level)
    {
        Check(ref x, n, level);
        return Quantiles(x + 0.5, n - x + 0.5, level);
    }

    /// <summary>
    /// Clopper and Pearson's exact interval, Beta(x, n - x + 1) and Beta(x + 1, n - x) quantiles; at least the level everywhere, so too
    /// wide on average. Real arguments as in Korn and Graubard 1998. Source: Clopper and Pearson 1934, doi:10.1093/biomet/26.4.404.
    /// </summary>
    public static Interval ClopperPearson(double x, double n, double level)
    {
        Check(ref x, n, level);
        var tail = (1 - level) / 2;
        var low = x < Domain.Least ? 0 : BetaDistribution.Quantile(x, n - x + 1, tail);
        var high = n - x < Domain.Least ? 1 : 1 - BetaDistribution.Quantile(n - x, x + 1, tail);
        return new Interval(low, high);
    }

    /// <summary>
    /// Agresti and Coull's interval: Wald around (x + z²/2)/(n + z²). Not cut to [0, 1]: it can leave the range, cut it when shown
    /// (<see cref="Interval.ClippedToShare"/>). Source: Agresti and Coull 1998, doi:10.1080/00031305.1998.10480550.
    /// </summary>
    public static Interval AgrestiCoull(double x, double n, double level)
    {
        Check(ref x, n, level);
        if (n == 0)
        {
            return new Interval(0, 1);
        }

        var z = NormalDistribution.CriticalValue(level);
        var total = n + (z * z);
        var centre = (x + (z * z / 2)) / total;
        var half = z * Math.Sqrt(centre * (1 - centre) / total);
        return new Interval(centre - half, centre + half);
    }

    /// <summary>
    /// Mid-P exact interval for integer counts (Newcombe 1998, method 6): the tail beyond x plus half of P(x) is (1 - level)/2.
    /// Low is 0 at x = 0, high is 1 at x = n.
    /// </summary>
    public static Interval MidP(int x, int n, double level)
    {
        double real = x;
        Check(ref real, n, level);
        var low = x == 0 ? 0 : MidPLower(x, n, (1 - level) / 2);
        var high = x == n ? 1 : 1 - MidPLower(n - x, n, (1 - level) / 2);
        return new Interval(low, high);
    }

    /// <summary>The score interval for a squared critical value: Wilson's, and Goodman's and Quesenberry and Hurst's with theirs.</summary>
    internal static Interval Score(double x, double n, double squaredCritical)
    {
        if (n == 0)
        {
            return new Interval(0, 1);
        }

        var total = n + squaredCritical;
        var centre = (x + (squaredCritical / 2)) / total;
        var half = Math.Sqrt(squaredCritical) / total * Math.Sqrt((x * (n - x) / n) + (squaredCritical / 4));
        return new Interval(x <= 0 ? 0 : Math.Max(0, centre - half), x >= n ? 1 : Math.Min(1, centre + half));
    }

    internal static Interval Quantiles(double a, double b, double level)
    {
        var tail = (1 - level) / 2;
        var low = BetaDistribution.Quantile(a, b, tail);

        // At a level near 0 both are the median, up to rounding.
        return new Interval(low, Math.Max(low, 1 - BetaDistribution.Quantile(b, a, tail)));
    }

    /// <summary>Names the two counts as the caller does; a count a rounding error above the trials is cut to them.</summary>
    internal static void Check(ref double x, double n, double level, string countName = "x", string trialsName = "n")
    {
        Domain.Count(n, trialsName);

        // p * n_eff may pass n by a rounding error.
        if (!(x >= 0 && x <= n * (1 + 1e-12)))
        {
            throw new ArgumentOutOfRangeException(countName, x, $"The count lies between 0 and the {n} trials.");
        }

        Domain.Level(level);
        x = Math.Min(x, n);
    }

    // P(X > x) + P(X = x)/2 rises with p: the mean of two beta tails. Bisection on the logit, to the last digits.
    private static double MidPLower(int x, int n, double tail)
    {
        double low = -745, high = 745;
        while (high - low > 1e-14 * Math.Max(1, Math.Abs(low)))
        {
            var t = (low + high) / 2;
            double p = 1 / (1 + Math.Exp(-t)), q = 1 / (1 + Math.Exp(t));
            var atLeast = IncompleteBeta.Tails(x, n - x + 1.0, p, q).Lower;
            var above = x == n ? 0 : IncompleteBeta.Tails(x + 1.0, n - x, p, q).Lower;
            if ((atLeast + above) / 2 > tail)
            {
                high = t;
            }
            else
            {
                low = t;
            }
        }

        return 1 / (1 + Math.Exp(-(low + high) / 2));
    }
}
