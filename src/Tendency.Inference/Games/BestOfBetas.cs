using Tendency.Inference.Functions;

namespace Tendency.Inference.Games;

/// <summary>Which of several independent Beta(a, b) success rates is the largest?</summary>
public static class BestOfBetas
{
    // Beyond these quantiles of a rate nothing is left that could matter to 1e-8.
    private const double Tail = 1e-13;

    /// <summary>
    /// Probability that each rate is the largest; sums to 1 within 1e-8. By quadrature of its density times the others' distribution
    /// functions: trapezoids in the log-odds, where all of them are smooth and vanish at both ends, converge faster than any power.
    /// </summary>
    /// <param name="shapes">a and b of every rate, &gt; 0.</param>
    public static double[] Chances(IReadOnlyList<(double A, double B)> shapes)
    {
        ArgumentNullException.ThrowIfNull(shapes);
        return [.. Enumerable.Range(0, shapes.Count).Select(j => Chance(shapes, j))];
    }

    private static double Chance(IReadOnlyList<(double A, double B)> shapes, int j)
    {
        if (shapes.Count == 1)
        {
            return 1;
        }

        var (a, b) = shapes[j];
        double low = Logit(BetaDistribution.Quantiles(a, b, Tail)), high = -Logit(BetaDistribution.Quantiles(b, a, Tail));
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

        return sum * width;
    }

    private static double Logit((double X, double OneMinusX) point) => Math.Log(point.X) - Math.Log(point.OneMinusX);
}
