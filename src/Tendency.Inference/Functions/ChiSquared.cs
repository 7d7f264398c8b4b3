namespace Tendency.Inference.Functions;

/// <summary>
/// Chi-square distribution with real degrees of freedom df from 1e-15 to 1e15, at x from 0 to infinity; both tails to 1e-12 relative. Throws
/// <see cref="ArgumentOutOfRangeException"/> outside. Source: Abramowitz and Stegun 26.4.19 [from memory].
/// </summary>
public static class ChiSquared
{
    /// <summary>P(X &lt;= x): 0 at 0, 1 at infinity.</summary>
    public static double Lower(double df, double x)
    {
        Check(df, x);
        return IncompleteGamma.Lower(df / 2, x / 2);
    }

    /// <summary>P(X &gt; x), computed as such: right in the far tail, where subtracting from 1 gives 0.</summary>
    public static double Upper(double df, double x)
    {
        Check(df, x);
        return IncompleteGamma.Upper(df / 2, x / 2);
    }

    /// <summary>The x with P(X &gt; x) = p, 0 &lt; p &lt; 1. One degree of freedom: the square of a normal quantile.</summary>
    public static double UpperQuantile(double df, double p)
    {
        Domain.Shape(df);
        if (!(p > 0 && p < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "The tail probability lies strictly between 0 and 1.");
        }

        if (df == 1)
        {
            var z = NormalDistribution.Quantile(p / 2);
            return z * z;
        }

        // The log of the upper tail falls steadily in log x: bisection in log x, then Newton inside the bracket.
        double low = -745, high = Math.Log(df + (50 * Math.Sqrt(df)) - (20 * Math.Log(p)) + 100);
        var t = Math.Log(df);
        for (var i = 0; i < 200; i++)
        {
            var x = Math.Exp(t);
            var upper = Upper(df, x);
            var lower = Lower(df, x);
            var excess = p <= 0.5 ? Math.Log(upper / p) : Math.Log((1 - p) / lower);
            if (excess > 0)
            {
                low = t;
            }
            else
            {
                high = t;
            }

            var density = x * Density(df, x);
            var next = t + (excess * (p <= 0.5 ? upper : lower) / density);
            if (!(next > low && next < high))
            {
                next = (low + high) / 2;
            }

            var step = Math.Abs(next - t);
            t = next;
            if (step <= 1e-15 * Math.Max(1, Math.Abs(t)))
            {
                break;
            }
        }

        return Math.Exp(t);
    }

    private static void Check(double df, double x)
    {
        Domain.Shape(df);
        if (!(x >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "A chi-square is 0 or more.");
        }
    }

    private static double Density(double df, double x)
    {
        var a = df / 2;
        return Math.Exp(((a - 1) * Math.Log(x / 2)) - (x / 2) - GammaFunction.Log(a)) / 2;
    }
}
