using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// Intervals for the difference p1 - p2 of two independent shares, x1 of n1 and x2 of n2, as fractions (real counts allowed); all within
/// [-1, 1], the two samples exchanged mirror the interval. For clustered or weighted samples put effective counts in (Zou and Donner 2008).
/// All throw <see cref="ArgumentOutOfRangeException"/> unless 0 &lt;= x &lt;= n and 0 &lt; level &lt; 1, the score intervals also for n = 0.
/// </summary>
public static class Difference
{
    /// <summary>
    /// Newcombe's method 10, the house's default: combines the two Wilson intervals, closed form.
    /// Source: Newcombe 1998, doi:10.1002/(SICI)1097-0258(19980430)17:8&lt;873::AID-SIM779&gt;3.0.CO;2-I. n1 or n2 = 0 uses [0, 1] and
    /// the estimate 1/2 for that sample.
    /// </summary>
    public static Interval Newcombe(double x1, double n1, double x2, double n2, double level)
    {
        OneProportion.Check(ref x1, n1, level, nameof(x1), nameof(n1));
        OneProportion.Check(ref x2, n2, level, nameof(x2), nameof(n2));
        var w1 = OneProportion.Wilson(x1, n1, level);
        var w2 = OneProportion.Wilson(x2, n2, level);
        double p1 = n1 == 0 ? 0.5 : x1 / n1, p2 = n2 == 0 ? 0.5 : x2 / n2;
        var d = p1 - p2;
        var low = d - Math.Sqrt(Square(p1 - w1.Low) + Square(w2.High - p2));
        var high = d + Math.Sqrt(Square(w1.High - p1) + Square(p2 - w2.Low));
        return new Interval(Math.Max(-1, low), Math.Min(1, high));
    }

    /// <summary>
    /// Miettinen and Nurminen's score interval with the variance factor N/(N - 1); [-1, 1] where N = n1 + n2 is at most 1. Source: Miettinen and Nurminen 1985,
    /// doi:10.1002/sim.4780040211.
    /// </summary>
    public static Interval MiettinenNurminen(double x1, double n1, double x2, double n2, double level) =>
        ScoreInterval(x1, n1, x2, n2, level, n1 + n2 > 1 ? (n1 + n2) / (n1 + n2 - 1) : double.PositiveInfinity);

    /// <summary>Mee's score interval: Miettinen and Nurminen's without the factor (Mee 1984) [from memory].</summary>
    public static Interval Mee(double x1, double n1, double x2, double n2, double level) => ScoreInterval(x1, n1, x2, n2, level, 1);

    /// <summary>Agresti and Caffo's interval: Wald after adding one hit and one miss to each sample, cut to [-1, 1]. Source: doi:10.1080/00031305.2000.10474560.</summary>
    public static Interval AgrestiCaffo(double x1, double n1, double x2, double n2, double level)
    {
        OneProportion.Check(ref x1, n1, level, nameof(x1), nameof(n1));
        OneProportion.Check(ref x2, n2, level, nameof(x2), nameof(n2));
        var z = NormalDistribution.CriticalValue(level);
        double p1 = (x1 + 1) / (n1 + 2), p2 = (x2 + 1) / (n2 + 2);
        var half = z * Math.Sqrt((p1 * (1 - p1) / (n1 + 2)) + (p2 * (1 - p2) / (n2 + 2)));
        return new Interval(Math.Max(-1, p1 - p2 - half), Math.Min(1, p1 - p2 + half));
    }

    private static Interval ScoreInterval(double x1, double n1, double x2, double n2, double level, double factor)
    {
        OneProportion.Check(ref x1, n1, level, nameof(x1), nameof(n1));
        OneProportion.Check(ref x2, n2, level, nameof(x2), nameof(n2));
        Domain.Positive(n1);
        Domain.Positive(n2);
        if (double.IsInfinity(factor))
        {
            return new Interval(-1, 1);
        }

        var z = NormalDistribution.CriticalValue(level);
        var d = (x1 / n1) - (x2 / n2);

        // The signed score statistic falls as the tested difference rises: bisection on each side of the estimate.
        double Excess(double delta) => Score(x1, n1, x2, n2, delta, factor);
        var low = d <= -1 ? -1 : Bisect(-1, d, delta => Excess(delta) > z);
        var high = d >= 1 ? 1 : Bisect(d, 1, delta => Excess(delta) > -z);
        return new Interval(low, high);
    }

    private static double Bisect(double low, double high, Func<double, bool> tooLow)
    {
        for (var i = 0; i < 100 && high - low > 1e-16; i++)
        {
            var middle = (low + high) / 2;
            if (tooLow(middle))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    private static double Score(double x1, double n1, double x2, double n2, double delta, double factor)
    {
        var distance = (x1 / n1) - (x2 / n2) - delta;
        var p2 = ConstrainedSecond(x1, n1, x2, n2, delta);
        var p1 = Math.Clamp(p2 + delta, 0, 1);
        var variance = ((p1 * (1 - p1) / n1) + (p2 * (1 - p2) / n2)) * factor;
        if (variance > 0)
        {
            return distance / Math.Sqrt(variance);
        }

        return distance == 0 ? 0 : distance > 0 ? double.PositiveInfinity : double.NegativeInfinity;
    }

    // Most likely p2 when p1 = p2 + delta: the root of the falling score equation, by bisection (the trigonometric cubic loses digits).
    private static double ConstrainedSecond(double x1, double n1, double x2, double n2, double delta)
    {
        double low = Math.Max(0, -delta), high = Math.Min(1, 1 - delta);
        for (var i = 0; i < 200; i++)
        {
            var p2 = (low + high) / 2;
            if (p2 <= low || p2 >= high)
            {
                break;
            }

            var p1 = p2 + delta;
            var slope = Part(x1, p1) - Part(n1 - x1, 1 - p1) + Part(x2, p2) - Part(n2 - x2, 1 - p2);
            if (slope > 0)
            {
                low = p2;
            }
            else
            {
                high = p2;
            }
        }

        return (low + high) / 2;
    }

    private static double Part(double count, double share) => count == 0 ? 0 : count / share;

    private static double Square(double value) => value * value;
}
