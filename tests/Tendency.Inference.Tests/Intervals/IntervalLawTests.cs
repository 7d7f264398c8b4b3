using CsCheck;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Intervals;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Intervals;

/// <summary>Laws that hold for every count, with fixed seeds so that a run repeats.</summary>
public sealed class IntervalLawTests
{
    private const double Rounding = 1e-9;

    private static readonly Func<double, double, double, Interval>[] Methods =
        [OneProportion.Wilson, OneProportion.Jeffreys, OneProportion.JeffreysRaw, OneProportion.ClopperPearson];

    private static readonly Gen<(double X, double N)> Counts =
        Gen.Select(Gen.Double[0.001, 0.999], Gen.Double[0.1, 400], (p, n) => (p * n, n));

    private static readonly Gen<(int X, int N)> WholeCounts =
        from n in Gen.Int[1, 120]
        from x in Gen.Int[0, n]
        select (x, n);

    [Fact]
    public void OneProportion_AnyCounts_StaysInRangeNestsAndMirrors() => Law.Holds(
        Gen.Select(Counts, Gen.Double[0.5, 0.9], Gen.Double[0.001, 0.09]),
        300,
        (count, level, more) =>
        {
            var (x, n) = count;
            foreach (var method in Methods)
            {
                Interval narrow = method(x, n, level), wide = method(x, n, level + more), mirrored = method(n - x, n, level);
                Assert.InRange(narrow.Low, 0, 1);
                Assert.InRange(narrow.High, 0, 1);
                Assert.True(wide.Low <= narrow.Low + Rounding && narrow.High <= wide.High + Rounding, $"{method.Method.Name} {x}/{n}: {level} not inside {level + more}");
                Assert.Equal(narrow.Low, 1 - mirrored.High, Rounding);
            }
        });

    [Fact]
    public void OneProportion_WholeCounts_HoldTheEstimateAndOrderByStrictness() => Law.Holds(
        WholeCounts,
        300,
        count =>
        {
            var (x, n) = count;
            var p = (double)x / n;
            var exact = OneProportion.ClopperPearson(x, n, 0.95);
            var mid = OneProportion.MidP(x, n, 0.95);
            Assert.True(OneProportion.Wilson(x, n, 0.95).Contains(p) && mid.Contains(p) && OneProportion.Jeffreys(x, n, 0.95).Contains(p));
            Assert.True(exact.Low <= mid.Low + Rounding && mid.High <= exact.High + Rounding, $"mid-P outside exact at {x}/{n}");
        });

    [Fact]
    public void OneProportion_NoTrials_KnowsNothing()
    {
        Assert.Equal(new Interval(0, 1), OneProportion.Wilson(0, 0, 0.95));
        Assert.Equal(new Interval(0, 1), OneProportion.WilsonContinuity(0, 0, 0.95));
        Assert.Equal(new Interval(0, 1), OneProportion.Jeffreys(0, 0, 0.95));
        Assert.Equal(new Interval(0, 1), OneProportion.ClopperPearson(0, 0, 0.95));
        Assert.Equal(new Interval(0, 1), OneProportion.AgrestiCoull(0, 0, 0.95));
        Assert.Equal(new Interval(0, 1), OneProportion.MidP(0, 0, 0.95));
    }

    [Theory]
    [InlineData(-1, 5, 0.95)]
    [InlineData(6, 5, 0.95)]
    [InlineData(1, 5, 1)]
    [InlineData(1, 5, 0)]
    [InlineData(double.NaN, 5, 0.95)]
    [InlineData(1, double.PositiveInfinity, 0.95)]
    public void OneProportion_ImpossibleInput_Throws(double x, double n, double level) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OneProportion.Wilson(x, n, level));

    // The exact interval inverted through its test: at a limit the tail beyond x has exactly the nominal probability.
    [Fact]
    public void ClopperPearson_AtItsLimits_GivesTheTailsBack() => Law.Holds(
        WholeCounts,
        100,
        count =>
        {
            var (x, n) = count;
            var interval = OneProportion.ClopperPearson(x, n, 0.9);
            Assert.True(x == 0 || Math.Abs(Tail(n, interval.Low, k => k >= x) - 0.05) < 1e-9, $"{x}/{n} low");
            Assert.True(x == n || Math.Abs(Tail(n, interval.High, k => k <= x) - 0.05) < 1e-9, $"{x}/{n} high");
        });

    [Fact]
    public void Goodman_AnyMix_IsWiderThanOneAtATimeAndKeepsOrder() => Law.Holds(
        Gen.Int[0, 40].Array[2, 8].Where(counts => counts.Sum() > 0),
        300,
        counts =>
        {
            double[] real = [.. counts.Select(x => (double)x)];
            var n = real.Sum();
            var goodman = Simultaneous.Goodman(real, 0.95);
            var reversed = Simultaneous.Goodman([.. real.Reverse()], 0.95);
            for (var j = 0; j < real.Length; j++)
            {
                var alone = OneProportion.Wilson(real[j], n, 0.95);
                Assert.True(goodman[j].Low <= alone.Low + Rounding && alone.High <= goodman[j].High + Rounding);
                Assert.Equal(goodman[j], reversed[real.Length - 1 - j]);
                Assert.True(goodman[j].Contains(real[j] / n));
            }
        });

    [Fact]
    public void Difference_SamplesExchanged_MirrorsTheInterval() => Law.Holds(
        Gen.Select(WholeCounts, WholeCounts),
        100,
        (first, second) =>
        {
            foreach (var method in new Func<double, double, double, double, double, Interval>[] { Difference.Newcombe, Difference.MiettinenNurminen, Difference.AgrestiCaffo })
            {
                var forward = method(first.X, first.N, second.X, second.N, 0.95);
                var back = method(second.X, second.N, first.X, first.N, 0.95);
                var labels = method(first.N - first.X, first.N, second.N - second.X, second.N, 0.95);
                Assert.Equal(forward.Low, -back.High, Rounding);
                Assert.Equal(forward.Low, -labels.High, Rounding);
                Assert.InRange(forward.Low, -1, forward.High);
                Assert.InRange(forward.High, forward.Low, 1);
            }

            var ratio = Ratio.MiettinenNurminen(first.X, first.N, second.X, second.N, 0.95);
            var inverse = Ratio.MiettinenNurminen(second.X, second.N, first.X, first.N, 0.95);
            Assert.True(first.X == 0 ? ratio.Low == 0 : Math.Abs((ratio.Low * inverse.High) - 1) < 1e-8 || double.IsInfinity(inverse.High));
        });

    // Coverage over all x of Binomial(n, p), summed exactly. Wilson's average over p is 95 % within half a point for n = 20 to 80
    // (Brown, Cai and DasGupta 2001, sec. 4.1); the exact interval is never below its level.
    [Theory]
    [InlineData(20)]
    [InlineData(41)]
    [InlineData(80)]
    public void Coverage_OverAllShares_IsNearTheLevel(int n)
    {
        Interval[] wilson = [.. Enumerable.Range(0, n + 1).Select(x => OneProportion.Wilson(x, n, 0.95))];
        Interval[] exact = [.. Enumerable.Range(0, n + 1).Select(x => OneProportion.ClopperPearson(x, n, 0.95))];
        double sum = 0;
        for (var i = 1; i < 200; i++)
        {
            var p = i / 200.0;
            sum += Tail(n, p, x => wilson[x].Contains(p));
            Assert.True(Tail(n, p, x => exact[x].Contains(p)) >= 0.95 - 1e-9, $"exact interval covers {p} too seldom");
        }

        Assert.InRange(sum / 199, 0.945, 0.957);
    }

    private static double Tail(int n, double p, Func<int, bool> counted)
    {
        // In logarithms: (1 - p)^n may underflow.
        double sum = 0, log = n * Math.Log(1 - p);
        for (var x = 0; x <= n; x++)
        {
            sum += counted(x) ? Math.Exp(log) : 0;
            log += Math.Log((n - x) * p / ((x + 1) * (1 - p)));
        }

        return sum;
    }
}
