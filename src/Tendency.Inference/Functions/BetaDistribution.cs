namespace Tendency.Inference.Functions;

/// <summary>
/// Beta distribution with real shapes a, b from 1e-15 to 1e15. Tails to 1e-12 relative, quantiles to 1e-10 relative, at both ends of the range
/// (shapes from 1e-3 to 1e5 are checked at 50 digits). Throws <see cref="ArgumentOutOfRangeException"/> for other shapes, a probability
/// outside [0, 1] or a point that is not a number. Source: DLMF 8.17 (https://dlmf.nist.gov/8.17) [from memory].
/// </summary>
public static class BetaDistribution
{
    /// <summary>P(X &lt;= x); 0 below the range, 1 above it.</summary>
    public static double Lower(double a, double b, double x) => Tails(a, b, x).Lower;

    /// <summary>P(X &gt; x), computed as such.</summary>
    public static double Upper(double a, double b, double x) => Tails(a, b, x).Upper;

    /// <summary>Density at <paramref name="x"/>; 0 outside (0, 1), its ends included.</summary>
    public static double Density(double a, double b, double x)
    {
        Check(a, b);
        Domain.Number(x);
        return x <= 0 || x >= 1 ? 0 : IncompleteBeta.Kernel(a, b, x, 1 - x) / (x * (1 - x));
    }

    /// <summary>The x with P(X &lt;= x) = p; 0 at p = 0, 1 at p = 1.</summary>
    public static double Quantile(double a, double b, double p) => Quantiles(a, b, p).X;

    /// <summary>1 - x for the x with P(X &lt;= x) = p: keeps its digits where x itself rounds to 1.</summary>
    public static double QuantileComplement(double a, double b, double p) => Quantiles(a, b, p).OneMinusX;

    /// <summary>Both x and 1 - x for P(X &lt;= x) = p.</summary>
    internal static (double X, double OneMinusX) Quantiles(double a, double b, double p)
    {
        Check(a, b);
        Domain.Probability(p);
        if (p == 0)
        {
            return (0, 1);
        }

        if (p == 1)
        {
            return (1, 0);
        }

        var t = SolveLogit(a, b, p);
        return (1 / (1 + Math.Exp(-t)), 1 / (1 + Math.Exp(t)));
    }

    // Newton on the logarithm of the smaller tail as a function of t = log(x / (1 - x)), kept inside a bracket: both are nearly linear
    // far out, and t holds the digits of x and of 1 - x alike.
    private static double SolveLogit(double a, double b, double p)
    {
        var useLower = p <= 0.5;
        var target = Math.Log(useLower ? p : 1 - p);
        double low = -745, high = 745;
        var t = StartingLogit(a, b, p);
        for (var i = 0; i < 200; i++)
        {
            double x = 1 / (1 + Math.Exp(-t)), y = 1 / (1 + Math.Exp(t));
            var tails = IncompleteBeta.Tails(a, b, x, y);
            var tail = useLower ? tails.Lower : tails.Upper;
            var excess = Math.Log(tail) - target;
            var tooFarRight = useLower ? excess > 0 : excess < 0;
            if (tooFarRight)
            {
                high = t;
            }
            else
            {
                low = t;
            }

            var slope = IncompleteBeta.Kernel(a, b, x, y) / tail;
            var next = t - (useLower ? excess / slope : -excess / slope);
            if (!(next > low && next < high))
            {
                next = (low + high) / 2;
            }

            var step = Math.Abs(next - t);
            t = next;
            if (step <= 1e-13 * Math.Max(1, Math.Abs(t)) || high - low < 1e-15)
            {
                break;
            }
        }

        return t;
    }

    private static double StartingLogit(double a, double b, double p)
    {
        // Small x: I_x is about x^a / (a B(a, b)); otherwise the normal approximation of log-odds.
        var z = NormalDistribution.Quantile(p);
        var t = Math.Log(a / b) + (z * Math.Sqrt((1 / a) + (1 / b)));
        return Math.Clamp(t, -700, 700);
    }

    private static (double Lower, double Upper) Tails(double a, double b, double x)
    {
        Check(a, b);
        Domain.Number(x);
        return IncompleteBeta.Tails(a, b, x, 1 - x);
    }

    private static void Check(double a, double b)
    {
        Domain.Shape(a);
        Domain.Shape(b);
    }
}
