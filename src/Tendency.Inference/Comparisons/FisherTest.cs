using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// Fisher's exact test of a 2 x 2 table with rows (a, b) and (c, d), conditional on its margins. An empty row or column leaves one
/// possible table and p = 1. Two-sided: all tables at most as likely as the observed one, ties within 1e-7 relative (R's rule); mid-P as
/// in Lydersen, Fagerland and Laake 2009, doi:10.1002/sim.3531. Plays of one game are not independent: use <see cref="StratifiedTest"/>
/// for claims.
/// </summary>
public sealed class FisherTest
{
    private readonly double[] probabilities;
    private readonly int position;

    private FisherTest(double[] possible, int observed)
    {
        (probabilities, position) = (possible, observed);
        var at = possible[observed];
        double less = 0, greater = 0, two = 0, tied = 0;
        for (var i = 0; i < possible.Length; i++)
        {
            var p = possible[i];
            less += i <= observed ? p : 0;
            greater += i >= observed ? p : 0;
            if (p <= at * (1 + StratifiedTest.TieTolerance))
            {
                two += p;
                tied += p >= at * (1 - StratifiedTest.TieTolerance) ? p : 0;
            }
        }

        Observed = at;
        Less = Math.Min(1, less);
        Greater = Math.Min(1, greater);
        TwoSided = Math.Min(1, two);
        MidTwoSided = Math.Min(1, two - (tied / 2));
    }

    /// <summary>Probability of a at most the observed one.</summary>
    public double Less { get; }

    /// <summary>Probability of a at least the observed one.</summary>
    public double Greater { get; }

    /// <summary>Two-sided exact p.</summary>
    public double TwoSided { get; }

    /// <summary>Probability of the observed table.</summary>
    public double Observed { get; }

    /// <summary>TwoSided less half the probability of all tables tied with the observed one.</summary>
    public double MidTwoSided { get; }

    /// <summary>Less, with half the probability of the observed table.</summary>
    public double MidLess => Less - (Observed / 2);

    /// <summary>Greater, with half the probability of the observed table.</summary>
    public double MidGreater => Greater - (Observed / 2);

    /// <summary>Twice the smaller one-sided mid-P, at most 1.</summary>
    public double MidDoubled => Math.Min(1, 2 * Math.Min(MidLess, MidGreater));

    /// <param name="a">First row, first column: hits of the first sample.</param>
    /// <param name="b">First row, second column: its misses.</param>
    /// <param name="c">Second row, first column.</param>
    /// <param name="d">Second row, second column.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is negative, or they add up to more than 10 million.</exception>
    public static FisherTest Run(int a, int b, int c, int d)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(a);
        ArgumentOutOfRangeException.ThrowIfNegative(b);
        ArgumentOutOfRangeException.ThrowIfNegative(c);
        ArgumentOutOfRangeException.ThrowIfNegative(d);
        if ((long)a + b + c + d > StratifiedTest.MostTrials)
        {
            throw new ArgumentOutOfRangeException(nameof(a), $"The counts add up to more than {StratifiedTest.MostTrials}.");
        }

        int row = a + b, column = a + c, total = row + c + d;
        int low = Math.Max(0, row - (total - column)), high = Math.Min(row, column);
        var possible = new double[high - low + 1];
        StratifiedTest.Hypergeometric(row, column, total, possible);
        return new FisherTest(possible, a - low);
    }

    /// <summary>
    /// Conditional maximum likelihood odds ratio; 0 or infinity when a is at the end of its range; null when only one table is possible.
    /// Solved to double precision (R's own search stops at 1e-4 relative).
    /// </summary>
    public double? OddsRatio()
    {
        var last = probabilities.Length - 1;
        if (last == 0)
        {
            return null;
        }

        return position == 0 ? 0 : position == last ? double.PositiveInfinity : Math.Exp(Solve(tilt => Tilted(tilt, i => i) < position));
    }

    /// <summary>Exact interval for the odds ratio: each one-sided p equals (1 - level)/2; [0, infinity] when only one table is possible.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside (0, 1).</exception>
    public Interval OddsRatioInterval(double level)
    {
        Domain.Level(level);

        var tail = (1 - level) / 2;
        var low = position == 0 ? 0 : Math.Exp(Solve(tilt => Tilted(tilt, i => i >= position ? 1 : 0) < tail));
        var high = position == probabilities.Length - 1
            ? double.PositiveInfinity
            : Math.Exp(Solve(tilt => Tilted(tilt, i => i <= position ? 1 : 0) > tail));
        return new Interval(low, high);
    }

    // Mean of a function of the table under log odds ratio t: probabilities weighted by e^(t i), scaled against overflow.
    private double Tilted(double t, Func<int, double> value)
    {
        var top = double.NegativeInfinity;
        for (var i = 0; i < probabilities.Length; i++)
        {
            top = Math.Max(top, probabilities[i] > 0 ? Math.Log(probabilities[i]) + (t * i) : double.NegativeInfinity);
        }

        double sum = 0, mean = 0;
        for (var i = 0; i < probabilities.Length; i++)
        {
            var weight = probabilities[i] > 0 ? Math.Exp(Math.Log(probabilities[i]) + (t * i) - top) : 0;
            sum += weight;
            mean += weight * value(i);
        }

        return mean / sum;
    }

    private static double Solve(Func<double, bool> tooLow)
    {
        double low = -100, high = 100;
        while (high - low > 1e-12)
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
}
