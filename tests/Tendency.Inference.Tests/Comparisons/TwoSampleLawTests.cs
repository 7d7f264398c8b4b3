using CsCheck;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Comparisons;

public sealed class TwoSampleLawTests
{
    private static readonly Gen<(int A, int B, int C, int D)> Table = Gen.Select(Gen.Int[0, 15], Gen.Int[0, 15], Gen.Int[0, 15], Gen.Int[0, 15]);

    private static readonly Gen<(int X1, int N1, int X2, int N2)> Samples =
        from n1 in Gen.Int[1, 60]
        from n2 in Gen.Int[1, 60]
        from x1 in Gen.Int[0, n1]
        from x2 in Gen.Int[0, n2]
        select (x1, n1, x2, n2);

    [Fact]
    public void Ratio_SamplesExchanged_TurnsUpsideDown() => Law.Holds(
        Samples,
        200,
        s =>
        {
            foreach (var method in new Func<double, double, double, double, double, Interval?>[]
                { (a, b, c, d, l) => Ratio.MiettinenNurminen(a, b, c, d, l), (a, b, c, d, l) => Ratio.Koopman(a, b, c, d, l), Ratio.Katz })
            {
                var forward = method(s.X1, s.N1, s.X2, s.N2, 0.9);
                var back = method(s.X2, s.N2, s.X1, s.N1, 0.9);
                Assert.Equal(forward is null, back is null);
                if (forward is { } ratio && s is { X1: > 0, X2: > 0 })
                {
                    Assert.Equal(1, ratio.Low * back!.Value.High, 1e-8);
                    Assert.True(ratio.Contains((double)s.X1 / s.N1 * s.N2 / s.X2));
                    var wide = method(s.X1, s.N1, s.X2, s.N2, 0.99)!.Value;
                    Assert.True(wide.Low <= ratio.Low && ratio.High <= wide.High);
                }
            }
        });

    // At a limit of a score interval the squared score equals the chi-square it was inverted from: difference 0 is inside exactly when
    // the test of equality does not reject, Pearson's for Mee's, (N - 1)/N of it for Miettinen and Nurminen's.
    [Fact]
    public void ScoreIntervals_HoldNoDifference_ExactlyWhenTheTestAccepts() => Law.Holds(
        Samples.Where(s => s.X1 + s.X2 > 0 && s.X1 + s.X2 < s.N1 + s.N2),
        300,
        s =>
        {
            double n = s.N1 + s.N2, x2 = HomogeneityTest.Run(new CountTable(2, 2, [s.X1, s.N1 - s.X1, s.X2, s.N2 - s.X2])).PearsonX2;
            Agree(x2, Difference.Mee(s.X1, s.N1, s.X2, s.N2, 0.9).Contains(0));
            Agree(x2, Ratio.Koopman(s.X1, s.N1, s.X2, s.N2, 0.9).Contains(1));
            Agree(x2 * (n - 1) / n, Difference.MiettinenNurminen(s.X1, s.N1, s.X2, s.N2, 0.9).Contains(0));
            Agree(x2 * (n - 1) / n, Ratio.MiettinenNurminen(s.X1, s.N1, s.X2, s.N2, 0.9).Contains(1));
        });

    [Fact]
    public void Fisher_TableTurned_ChangesNothingAndLimitsGiveTheTailsBack() => Law.Holds(
        Table,
        150,
        t =>
        {
            var test = FisherTest.Run(t.A, t.B, t.C, t.D);
            var turned = FisherTest.Run(t.A, t.C, t.B, t.D);
            var exchanged = FisherTest.Run(t.C, t.D, t.A, t.B);
            Assert.Equal(test.TwoSided, turned.TwoSided, 1e-12);
            Assert.Equal(test.Less, exchanged.Greater, 1e-12);
            Assert.Equal(test.MidDoubled, exchanged.MidDoubled, 1e-12);
            Assert.Equal(1 + test.Observed, test.Less + test.Greater, 1e-12);
            var odds = test.OddsRatioInterval(0.9);
            var wide = test.OddsRatioInterval(0.99);
            Assert.True(wide.Low <= odds.Low && odds.High <= wide.High);
            Assert.True(test.OddsRatio() is not { } ratio || odds.Contains(ratio));

            // Inverted through its test: an odds ratio of 1 is inside exactly when neither one-sided test rejects at 5 %.
            Assert.Equal(test.Less > 0.05 && test.Greater > 0.05, odds.Low < 1 && odds.High > 1);
        });

    [Fact]
    public void FreemanHalton_RowsAndColumnsMoved_ChangesNothingAndTwoByTwoIsFisher() => Law.Holds(
        Gen.Int[0, 5].Array[12],
        100,
        counts =>
        {
            var table = new CountTable(3, 4, counts);
            var moved = new CountTable(4, 3, Enumerable.Range(0, 12).Select(i => table[2 - (i % 3), i / 3]));
            Assert.Equal(FreemanHaltonTest.P(table)!.Value, FreemanHaltonTest.P(moved)!.Value, 1e-12);
            Assert.Equal(FisherTest.Run(counts[0], counts[1], counts[2], counts[3]).TwoSided, FreemanHaltonTest.P(new CountTable(2, 2, counts[..4]))!.Value, 1e-12);
        });

    [Fact]
    public void Difference_AnySamples_HoldsTheEstimateAndNests() => Law.Holds(
        Samples,
        200,
        s =>
        {
            foreach (var method in new Func<double, double, double, double, double, Interval>[] { Difference.Newcombe, Difference.MiettinenNurminen, Difference.Mee })
            {
                Interval narrow = method(s.X1, s.N1, s.X2, s.N2, 0.8), wide = method(s.X1, s.N1, s.X2, s.N2, 0.95);
                Assert.True(new Interval(narrow.Low - 1e-12, narrow.High + 1e-12).Contains(((double)s.X1 / s.N1) - ((double)s.X2 / s.N2)));
                Assert.True(wide.Low <= narrow.Low + 1e-12 && narrow.High <= wide.High + 1e-12);
            }
        });

    private static void Agree(double statistic, bool accepted)
    {
        var critical = ChiSquared.UpperQuantile(1, 0.1);
        Assert.True(Math.Abs(statistic - critical) < 1e-9 || accepted == statistic < critical, $"statistic {statistic}, critical {critical}, inside: {accepted}");
    }
}
