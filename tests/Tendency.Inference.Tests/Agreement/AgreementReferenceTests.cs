using Tendency.Inference.Agreement;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Agreement;

public sealed class AgreementReferenceTests
{
    // Krippendorff 2011, example C: four observers, twelve units, gaps.
    private static readonly double[][] ExampleC =
    [
        [1, 2, 3, 3, 2, 1, 4, 1, 2, double.NaN, double.NaN, double.NaN],
        [1, 2, 3, 3, 2, 2, 4, 1, 2, 5, double.NaN, 3],
        [double.NaN, 3, 3, 3, 2, 3, 4, 2, 2, 5, 1, double.NaN],
        [1, 2, 3, 3, 2, 4, 4, 1, 2, 5, 1, double.NaN],
    ];

    [Fact]
    public void Kappa_ReferenceGrid_Within1e11()
    {
        foreach (var row in Grid.Read("grid_kappa"))
        {
            var k = row.Integer("k");
            var weights = Enum.Parse<AgreementWeights>(row["weights"], ignoreCase: true);
            var kappa = Kappa.Of(new CountTable(k, k, row.Integers("counts")), weights);
            row.Absolute("po", kappa.Observed, 1e-11);
            row.Absolute("pe", kappa.Expected, 1e-11);
            row.Absolute("kappa", kappa.Value ?? double.NaN, 1e-11);
            row.Absolute("se", kappa.StandardError ?? double.NaN, 1e-11);
            row.Absolute("se0", kappa.NullStandardError ?? double.NaN, 1e-11);
            var interval = kappa.Interval(0.95);
            row.Absolute("lo95", interval?.Low ?? double.NaN, 1e-9);
            row.Absolute("hi95", interval?.High ?? double.NaN, 1e-9);
        }
    }

    [Fact]
    public void Kappa_PublishedExamples_GiveComputedValues()
    {
        var fleiss = Kappa.Of(new CountTable(3, 3, [75, 1, 4, 5, 4, 1, 0, 0, 10]));
        Assert.Equal(0.67647058823529405, fleiss.Value!.Value, 1e-11);
        Assert.Equal(0.076187257923462468, fleiss.NullStandardError!.Value, 1e-11);
        Assert.Equal(0.087702953475212536, fleiss.StandardError!.Value, 1e-11);

        // Cohen 1968: disagreement weights 0 1 3 / 1 0 6 / 3 6 0, of at most 6.
        double[,] weights = { { 1, 5 / 6.0, 0.5 }, { 5 / 6.0, 1, 0 }, { 0.5, 0, 1 } };
        var cohen = Kappa.Of(new CountTable(3, 3, [88, 14, 18, 10, 40, 10, 2, 6, 12]), weights);
        Assert.Equal(0.34782608695652162, cohen.Value!.Value, 1e-11);
    }

    [Fact]
    public void Kappa_EdgeTables_AreUndefinedOrPerfect()
    {
        Assert.Null(Kappa.Of(new CountTable(2, 2, [9, 0, 0, 0])).Value);
        var perfect = Kappa.Of(new CountTable(2, 2, [9, 0, 0, 4]));
        Assert.Equal((1, 0), (perfect.Value, perfect.StandardError));
        Assert.Equal(0.7719, perfect.RawAgreement(0.95).Low, 0.0005);
    }

    [Fact]
    public void Alpha_ReferenceGrid_Within1e11()
    {
        foreach (var row in Grid.Read("grid_krippendorff"))
        {
            var ratings = row.Numbers("data").Chunk(row.Integer("units")).ToList();
            var metric = Enum.Parse<ValueMetric>(row["metric"], ignoreCase: true);
            row.Absolute("alpha", KrippendorffAlpha.Of(ratings, metric) ?? double.NaN, 1e-11);
            row.Absolute("jack_se", KrippendorffAlpha.JackknifeError(ratings, metric) ?? double.NaN, 1e-11);
        }
    }

    [Theory]
    [InlineData(ValueMetric.Nominal, 0.74342105263157898)]
    [InlineData(ValueMetric.Ordinal, 0.81538750375488134)]
    [InlineData(ValueMetric.Interval, 0.84910714285714284)]
    [InlineData(ValueMetric.Ratio, 0.79740277471161214)]
    public void Alpha_KrippendorffsExampleC_GivesComputedValue(ValueMetric metric, double expected) =>
        Assert.Equal(expected, KrippendorffAlpha.Of(ExampleC, metric)!.Value, 1e-11);

    // Krippendorff 2011, example A: two observers, ten units, two values.
    [Fact]
    public void Alpha_KrippendorffsExampleA_GivesComputedValue()
    {
        double[][] ratings = [[0, 1, 0, 0, 0, 0, 0, 0, 1, 0], [1, 1, 1, 0, 0, 1, 0, 0, 0, 0]];
        Assert.Equal(0.095238095238095233, KrippendorffAlpha.Of(ratings, ValueMetric.Nominal)!.Value, 1e-11);
    }

    [Fact]
    public void AlphaBootstrap_SameSeed_RepeatsAndHoldsAlpha()
    {
        var blocks = Enumerable.Range(0, 12).ToList();
        var interval = KrippendorffAlpha.Bootstrap(ExampleC, blocks, ValueMetric.Nominal, 0.95, 500, 3)!.Value;
        Assert.Equal(interval, KrippendorffAlpha.Bootstrap(ExampleC, blocks, ValueMetric.Nominal, 0.95, 500, 3));
        Assert.InRange(0.743, interval.Low, interval.High);
        Assert.Null(KrippendorffAlpha.Of([[1, 1], [1, 1]], ValueMetric.Nominal));
    }
}
