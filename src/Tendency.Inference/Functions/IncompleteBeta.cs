namespace Tendency.Inference.Functions;

/// <summary>
/// Regularised incomplete beta function. Both tails are computed as such and 1 - x may be handed in separately, so that limits very
/// near 0 or 1 keep their digits; relative error below 1e-12. Source: Lentz's continued fraction, Press et al., Numerical Recipes,
/// sec. 6.4; density after Loader 2000 [from memory].
/// </summary>
internal static class IncompleteBeta
{
    private const double Tiny = 1e-300;

    /// <summary>I_x(a, b) and 1 - I_x(a, b) for a, b &gt; 0 and x + y = 1.</summary>
    public static (double Lower, double Upper) Tails(double a, double b, double x, double y)
    {
        if (x <= 0)
        {
            return (0, 1);
        }

        if (y <= 0)
        {
            return (1, 0);
        }

        if (x * (a + b + 2) < a + 1)
        {
            var lower = Fraction(a, b, x) * Kernel(a, b, x, y) / a;
            return (lower, Small(lower, x) ? Fraction(b, a, y) * Kernel(a, b, x, y) / b : 1 - lower);
        }

        var upper = Fraction(b, a, y) * Kernel(a, b, x, y) / b;
        return (Small(upper, y) ? Fraction(a, b, x) * Kernel(a, b, x, y) / a : 1 - upper, upper);
    }

    /// <summary>x^a y^b / B(a, b), y = 1 - x.</summary>
    public static double Kernel(double a, double b, double x, double y)
    {
        var n = a + b;
        var exponent = GammaFunction.StirlingError(n) - GammaFunction.StirlingError(a) - GammaFunction.StirlingError(b)
            - GammaFunction.Deviance(a, n * x) - GammaFunction.Deviance(b, n * y);
        return Math.Exp(exponent) * Math.Sqrt(a / n * b / (2 * Math.PI));
    }

    // A shape near 0 can put nearly all mass on the side whose fraction converges fast; the other tail then needs its own (slower) one.
    private static bool Small(double large, double distance) => large > 0.9 && distance > 1e-4;

    private static double Fraction(double a, double b, double x)
    {
        double c = 1, d = 1 - ((a + b) * x / (a + 1));
        d = 1 / (Math.Abs(d) < Tiny ? Tiny : d);
        var h = d;
        for (var m = 1; m < 200_000; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            Step(even, ref c, ref d, ref h);
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            if (Math.Abs(Step(odd, ref c, ref d, ref h) - 1) < 1e-15)
            {
                break;
            }
        }

        return h;
    }

    private static double Step(double coefficient, ref double c, ref double d, ref double h)
    {
        d = 1 + (coefficient * d);
        d = 1 / (Math.Abs(d) < Tiny ? Tiny : d);
        c = 1 + (coefficient / c);
        c = Math.Abs(c) < Tiny ? Tiny : c;
        var delta = d * c;
        h *= delta;
        return delta;
    }
}
