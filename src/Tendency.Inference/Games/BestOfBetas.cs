using MathNet.Numerics.Integration;
using Tendency.Inference.Functions;

namespace Tendency.Inference.Games;

/// <summary>Which of several independent Beta(a, b) success rates is the largest?</summary>
public static class BestOfBetas
{
    // Beyond these quantiles of a rate nothing is left that could matter to 1e-8.
    private const double Tail = 1e-13;

    // Beyond it a rate is a single point between two steps of the quadrature.
    private const double LargestShape = 1e6;

    // Log-odds beyond which rates leave the doubles; there every tail is a power of the odds.
    private const double Far = 700;

    /// <summary>
    /// Probability that each rate is the largest; sums to 1 within 1e-8. By quadrature of its density times the others' distribution
    /// functions: trapezoids in the log-odds, where all of them are smooth and vanish at both ends, converge faster than any power
    /// (Trefethen and Weideman 2014, doi:10.1137/130932132 [from memory]). Shapes near 0 have mass beyond the doubles, which is added in
    /// closed form.
    /// </summary>
    /// <param name="shapes">a and b of every rate, from 1e-15 to a million; none gives an empty list, a single one has probability 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A shape lies outside.</exception>
    public static double[] Chances(IReadOnlyList<(double A, double B)> shapes)
    {
        ArgumentNullException.ThrowIfNull(shapes);
        foreach (var (a, b) in shapes)
        {
            Domain.Shape(a, nameof(shapes));
            Domain.Shape(b, nameof(shapes));
            if (a > LargestShape || b > LargestShape)
            {
                throw new ArgumentOutOfRangeException(nameof(shapes), Math.Max(a, b), $"A shape is at most {LargestShape}.");
            }
        }

        return [.. Enumerable.Range(0, shapes.Count).Select(j => Chance(shapes, j))];
    }

    private static double Chance(IReadOnlyList<(double A, double B)> shapes, int j)
    {
        if (shapes.Count == 1)
        {
            return 1;
        }

        var (a, b) = shapes[j];
        var low = Math.Max(-Far, Logit(BetaDistribution.Quantiles(a, b, Tail)));
        var high = Math.Min(Far, -Logit(BetaDistribution.Quantiles(b, a, Tail)));
        var sharpest = shapes.Min(shape => Math.Sqrt((1 / shape.A) + (1 / shape.B)));
        var steps = (int)Math.Clamp(Math.Ceiling((high - low) / Math.Min(0.2, sharpest / 3)), 50, 50_000);
        var width = (high - low) / steps;
        var sum = 0.0;
        for (var i = 0; i <= steps; i++)
        {
            var t = low + (i * width);
            double x = 1 / (1 + Math.Exp(-t)), y = 1 / (1 + Math.Exp(t));
            var term = IncompleteBeta.Kernel(a, b, x, y);
            for (var k = 0; k < shapes.Count && term > 0; k++)
            {
                term *= k == j ? 1 : IncompleteBeta.Tails(shapes[k].A, shapes[k].B, x, y).Lower;
            }

            sum += i == 0 || i == steps ? term / 2 : term;
        }

        return (sum * width) + (low > -Far ? 0 : FarBelow(shapes, a)) + (high < Far ? 0 : FarAbove(shapes, j));
    }

    // All rates beyond -Far, each with distribution c e^(a t): the integral of one's density times the others' is a product.
    private static double FarBelow(IReadOnlyList<(double A, double B)> shapes, double a) =>
        shapes.Aggregate(a / shapes.Sum(shape => shape.A), (product, shape) => product * IncompleteBeta.Tails(shape.A, shape.B, Math.Exp(-Far), 1).Lower);

    // Beyond Far the upper tails are g e^(-b t): integrated over the tail of rate j itself, as a share s of it.
    private static double FarAbove(IReadOnlyList<(double A, double B)> shapes, int j)
    {
        double[] tail = [.. shapes.Select(shape => IncompleteBeta.Tails(shape.A, shape.B, 1, Math.Exp(-Far)).Upper)];
        double NoneAbove(double s) => Enumerable.Range(0, tail.Length).Where(k => k != j)
            .Aggregate(1.0, (product, k) => product * (1 - (tail[k] * Math.Pow(s, shapes[k].B / shapes[j].B))));
        return tail[j] * DoubleExponentialTransformation.Integrate(NoneAbove, 0, 1, 1e-10);
    }

    private static double Logit((double X, double OneMinusX) point) => Math.Log(point.X) - Math.Log(point.OneMinusX);
}
