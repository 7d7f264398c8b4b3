using CsCheck;
using Tendency.Inference.Agreement;
using Tendency.Inference.Comparisons;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Agreement;

public sealed class AgreementLawTests
{
    private static readonly Gen<int[]> Nine = Gen.Int[0, 12].Array[9].Where(counts => counts.Sum() > 0);

    private static readonly Gen<double[][]> Ratings = Gen.Frequency((1, Gen.Const(double.NaN)), (5, Gen.Int[1, 4].Select(value => (double)value))).Array[10].Array[2, 4];

    [Fact]
    public void Kappa_RatersExchangedAndScaled_StaysTheSame() => Law.Holds(
        Gen.Select(Nine, Gen.Enum<AgreementWeights>()),
        300,
        (counts, weights) =>
        {
            var table = new CountTable(3, 3, counts);
            var kappa = Kappa.Of(table, weights);
            var turned = Kappa.Of(table.Transposed(), weights);
            var more = Kappa.Of(new CountTable(3, 3, counts.Select(count => 4 * count)), weights);
            Assert.Equal(kappa.Value is null, turned.Value is null);
            Assert.Equal(kappa.Value ?? 0, turned.Value ?? 0, 1e-11);
            Assert.Equal(kappa.StandardError ?? 0, turned.StandardError ?? 0, 1e-9);
            Assert.Equal(kappa.Value ?? 0, more.Value ?? 0, 1e-11);
            Assert.Equal(kappa.StandardError ?? 0, 2 * more.StandardError ?? 0, 1e-9);
            Assert.InRange(kappa.Value ?? 0, -1, 1 + 1e-12);
            Assert.True(kappa.Interval(0.9) is not { } interval || interval.Contains(Math.Clamp(kappa.Value!.Value, -1, 1)));
        });

    [Fact]
    public void Kappa_CategoriesInAnotherOrder_UnweightedStaysTheSame() => Law.Holds(
        Nine,
        200,
        counts =>
        {
            var table = new CountTable(3, 3, counts);
            int[] order = [2, 0, 1];
            var moved = Kappa.Of(new CountTable(3, 3, Enumerable.Range(0, 9).Select(i => table[order[i / 3], order[i % 3]])));
            Assert.Equal(Kappa.Of(table).Value ?? 0, moved.Value ?? 0, 1e-11);
        });

    [Fact]
    public void Alpha_RatersOrUnitsMoved_StaysTheSame() => Law.Holds(
        Gen.Select(Ratings, Gen.Enum<ValueMetric>()),
        200,
        (ratings, metric) =>
        {
            var alpha = KrippendorffAlpha.Of(ratings, metric);
            var raters = KrippendorffAlpha.Of([.. ratings.Reverse()], metric);
            var units = KrippendorffAlpha.Of([.. ratings.Select(row => row.Reverse().ToArray())], metric);
            Assert.Equal(alpha is null, raters is null);
            Assert.Equal(alpha ?? 0, raters ?? 0, 1e-11);
            Assert.Equal(alpha ?? 0, units ?? 0, 1e-11);
            Assert.True(alpha is null or <= 1 + 1e-12);
        });

    // What the values are called does not matter to the nominal metric, their order alone to the ordinal, their scale not to the others.
    [Fact]
    public void Alpha_ValuesRenamed_MattersOnlyToTheMetric() => Law.Holds(
        Ratings,
        200,
        ratings =>
        {
            Same(ratings, value => 10 - value, ValueMetric.Nominal);
            Same(ratings, value => value * value * value, ValueMetric.Ordinal);
            Same(ratings, value => (3 * value) - 7, ValueMetric.Interval);
            Same(ratings, value => 3 * value, ValueMetric.Ratio);
        });

    [Fact]
    public void RankCorrelation_RisingScale_StaysTheSameAndTurnsWithTheOrder() => Law.Holds(
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9]).Array[3, 20].Where(pairs => pairs.DistinctBy(p => p.Item1).Count() > 1 && pairs.DistinctBy(p => p.Item2).Count() > 1),
        200,
        pairs =>
        {
            double[] x = [.. pairs.Select(p => (double)p.Item1)], y = [.. pairs.Select(p => (double)p.Item2)];
            foreach (var method in new Func<IReadOnlyList<double>, IReadOnlyList<double>, double>[] { RankCorrelation.KendallTauB, RankCorrelation.Spearman })
            {
                var value = method(x, y);
                Assert.InRange(value, -1 - 1e-12, 1 + 1e-12);
                Assert.Equal(value, method(y, x), 1e-12);
                Assert.Equal(value, method([.. x.Select(Math.Exp)], y), 1e-12);
                Assert.Equal(-value, method([.. x.Select(v => -v)], y), 1e-12);
            }
        });

    private static void Same(double[][] ratings, Func<double, double> rename, ValueMetric metric) => Assert.Equal(
        KrippendorffAlpha.Of(ratings, metric) ?? 0,
        KrippendorffAlpha.Of([.. ratings.Select(row => row.Select(rename).ToArray())], metric) ?? 0,
        1e-11);
}
