using CsCheck;
using Tendency.Inference.Intervals;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Intervals;

public sealed class MixLawTests
{
    private static readonly Gen<int[]> Counts = Gen.Int[0, 40].Array[2, 8].Where(counts => counts.Sum() > 0);

    [Fact]
    public void QuesenberryHurst_AnyMix_IsWiderThanOneAtATime() => Law.Holds(
        Counts,
        200,
        counts =>
        {
            double[] real = [.. counts.Select(x => (double)x)];
            var hurst = Simultaneous.QuesenberryHurst(real, 0.9);
            for (var j = 0; j < real.Length; j++)
            {
                var alone = OneProportion.Wilson(real[j], real.Sum(), 0.9);
                Assert.True(hurst[j].Low <= alone.Low + 1e-9 && alone.High <= hurst[j].High + 1e-9);
            }
        });

    [Fact]
    public void SisonGlaz_AnyMix_HasOneWidthAndHoldsTheShares() => Law.Holds(
        Counts,
        100,
        counts =>
        {
            if (Simultaneous.SisonGlaz(counts, 0.9) is not { } found)
            {
                return;
            }

            double n = counts.Sum();
            Assert.InRange(found.Delta, 0, 1);
            Assert.All(found.Intervals.Zip(counts), pair =>
            {
                Assert.True(pair.First.Contains(pair.Second / n));
                Assert.True(pair.First.Width <= (2 * (found.C + found.Delta) / n) + 1e-12);
            });
        });

    // Categories put together: a Dirichlet's shares add up, and so do their weights.
    [Fact]
    public void DirichletPosterior_CategoriesJoined_MeansAddUp() => Law.Holds(
        Gen.Select(Counts, Gen.Double[0.1, 3]),
        200,
        (counts, prior) =>
        {
            double[] real = [.. counts.Select(x => (double)x)];
            var posterior = new DirichletPosterior(real, prior);
            var joined = new DirichletPosterior([real[0] + real[1], .. real[2..]], [2 * prior, .. real[2..].Select(_ => prior)]);
            Assert.Equal(1, Enumerable.Range(0, real.Length).Sum(posterior.Mean), 1e-12);
            Assert.Equal(posterior.Mean(0) + posterior.Mean(1), joined.Mean(0), 1e-12);
            for (var j = 0; j < real.Length; j++)
            {
                Assert.True(posterior.Marginal(j, 0.9).Low <= posterior.Marginal(j, 0.5).Low);
                Assert.True(posterior.Marginal(j, 0.9).Contains(posterior.Mean(j)));
            }
        });

    // The continuity correction and Agresti and Coull's never lie inside Wilson's; all are mirrored.
    [Fact]
    public void OneProportion_OtherMethods_HoldWilsonsAndMirror() => Law.Holds(
        Gen.Int[1, 150].SelectMany(n => Gen.Int[0, n].Select(x => (x, n))),
        300,
        (x, n) =>
        {
            var wilson = OneProportion.Wilson(x, n, 0.95);
            foreach (var method in new Func<double, double, double, Interval>[] { OneProportion.WilsonContinuity, OneProportion.AgrestiCoull })
            {
                Interval other = method(x, n, 0.95), mirrored = method(n - x, n, 0.95);
                Assert.True(other.Low <= wilson.Low + 1e-12 && wilson.High <= other.High + 1e-12);
                Assert.Equal(other.Low, 1 - mirrored.High, 1e-12);
            }

            Assert.Equal(OneProportion.MidP(x, n, 0.95).Low, 1 - OneProportion.MidP(n - x, n, 0.95).High, 1e-9);
        });

    // Effective counts: Agresti and Coull's interval has Wilson's middle wherever Wilson's is not cut at 0 or n.
    [Fact]
    public void AgrestiCoull_EffectiveCounts_HasWilsonsMiddle() => Law.Holds(
        Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[0.1, 400], Gen.Double[0.5, 0.999]),
        300,
        (p, n, level) =>
        {
            Interval wilson = OneProportion.Wilson(p * n, n, level), other = OneProportion.AgrestiCoull(p * n, n, level);
            Assert.Equal(wilson.Low + wilson.High, other.Low + other.High, 1e-12);
            Assert.True(other.Width >= wilson.Width - 1e-12);
        });

    [Fact]
    public void Student_ValuesMovedAndScaled_Follows() => Law.Holds(
        Gen.Select(Gen.Double[-5, 5].Array[2, 12], Gen.Double[-3, 3], Gen.Double[0.1, 4]),
        100,
        (values, move, scale) =>
        {
            var interval = OneMean.Student(values, 0.9);
            var moved = OneMean.Student([.. values.Select(value => (scale * value) + move)], 0.9);
            Assert.Equal((scale * interval.Low) + move, moved.Low, 1e-9);
            Assert.True(interval.Contains(values.Average()) && interval.Width <= OneMean.Student(values, 0.99).Width);
        });
}
