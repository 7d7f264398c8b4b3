using Tendency.Inference.Agreement;
using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Games;
using Tendency.Inference.Information;
using Tendency.Inference.Intervals;
using Tendency.Inference.Multiplicity;
using Tendency.Inference.Scores;

namespace Tendency.Inference.Tests.References;

/// <summary>
/// Arguments at which plain formulas lose their digits: rates nearly equal, a mix of nearly one category, weights of any size, shapes near 0.
/// Values computed with mpmath 1.2.1 at 50 digits unless a test says otherwise; arguments are the doubles shown.
/// </summary>
public sealed class NearTheLimitsTests
{
    [Theory]
    [InlineData(2, 3, "1000000 5 3 999990 9 1", 2.2054516307512766, 0.33196497408482589)]
    [InlineData(2, 2, "100000 100001 100001 100000", 9.9999500002916646e-06, 0.99747687799096529)]
    [InlineData(2, 2, "3 7 30 71", 0.00038366753800566267, 0.98437248879281858)]
    public void G_RowsNearlyAlike_KeepsItsDigits(int rows, int columns, string counts, double g, double p)
    {
        var table = Table(rows, columns, counts);
        var test = HomogeneityTest.Run(table);
        AssertRelative(g, test.G, 1e-12);
        AssertRelative(p, test.P, 1e-10);
        AssertRelative(g, MutualInformation.OfTable(table)!.G, 1e-12);
        AssertRelative(g, ChangePoint.Find(new CountTable([.. Enumerable.Range(0, rows).Select(r => Enumerable.Range(0, columns).Select(c => table[r, c]).ToArray())]))!.G, 1e-12);
    }

    [Theory]
    [InlineData(2, 3, "1000000 5 3 999990 9 1", 0.00017071619868054715, 0.00016992075332967723, 7.954453508699325e-07, 7.4100715803991095e-08)]
    [InlineData(2, 2, "999999 1 1 999999", 1, 2.1374262888865376e-05, 0.99997862573711116, 0.99997826506335086)]
    public void Information_NearlyOneCategory_KeepsItsDigits(int rows, int columns, string counts, double column, double givenRow, double plugIn, double corrected)
    {
        var found = MutualInformation.OfTable(Table(rows, columns, counts))!;
        AssertRelative(column, found.ColumnBits, 1e-12);
        AssertRelative(givenRow, found.ColumnGivenRow, 1e-12);
        AssertRelative(plugIn, found.PlugIn, 1e-12);
        AssertRelative(corrected, found.Corrected, 1e-12);
    }

    [Theory]
    [InlineData("999990 3 4 3", 0.46153498222603899, 0.17149628989016241, 0.00099703699217633564)]
    [InlineData("500000 1 0 1", 0.66666577777896296, 0.31427009955254759, 0.0013333302222310369)]
    public void Kappa_NearlyOneValue_KeepsItsErrors(string counts, double kappa, double error, double nullError)
    {
        var found = Kappa.Of(Table(2, 2, counts));
        Assert.Equal(kappa, found.Value!.Value, 1e-11);
        Assert.Equal(error, found.StandardError!.Value, 1e-11);
        Assert.Equal(nullError, found.NullStandardError!.Value, 1e-11);
    }

    // Weights are relative, so the expected sizes are those of the weights 1 and 1: 10 and 10 / (1 + 4 * 0.02).
    [Theory]
    [InlineData(1e-200)]
    [InlineData(5e-324)]
    [InlineData(1e200)]
    [InlineData(1e308)]
    public void EffectiveSize_WeightsOfAnySize_CountTheSame(double weight)
    {
        Assert.Equal(10, EffectiveSize.Kish(Enumerable.Repeat(weight, 10)), 1e-11);
        Assert.Equal(10 / 1.08, EffectiveSize.OfWeightedGroups([(5, weight), (5, weight)], 0.02), 1e-11);
        Assert.Equal(10 / 1.08, EffectiveSize.Of([.. Enumerable.Repeat(weight, 10)], [0, 0, 0, 0, 0, 1, 1, 1, 1, 1], 0.02), 1e-11);
    }

    // Closed forms: of rates Beta(a, 1), with distribution x^a, each is the largest with its share of the a; Beta(1, b) mirrored.
    [Theory]
    [InlineData(0.01, 0.01, 50)]
    [InlineData(0.001, 0.004, 0.02)]
    [InlineData(1e-5, 3e-5, 1)]
    public void BestOfBetas_ShapesNearZero_AsByHand(double first, double second, double third)
    {
        var sum = first + second + third;
        var chances = BestOfBetas.Chances([(first, 1), (second, 1), (third, 1)]);
        Assert.Equal(first / sum, chances[0], 1e-8);
        Assert.Equal(second / sum, chances[1], 1e-8);
        Assert.Equal(third / sum, chances[2], 1e-8);
        Assert.Equal(second / (first + second), BestOfBetas.Chances([(1, first), (1, second)])[0], 1e-8);
    }

    [Theory]
    [InlineData(32, 33, 32.481058387034629)]
    [InlineData(80, 80.5, 78.868849592375696)]
    [InlineData(95, 95.01, 0.067292811032386921)]
    public void ConditionalMean_FarOut_DoesNotUnderflow(double threshold, double z, double mean) =>
        Assert.Equal(mean, SelectionCorrection.ConditionalMean(z, threshold), 1e-9);

    // By hand: two forecasts fit two hit rates exactly, 1/3 and 2/3 at logits -460.5 and 36.7; with slope 1 the intercept is minus their mean.
    [Fact]
    public void CalibrationLine_NearlyCertainForecasts_AsByHand()
    {
        double low = 1e-200, high = 1 - Math.Pow(2, -53);
        var line = CalibrationLine.Of([true, false, false, true, true, false], [low, low, low, high, high, high]);
        Assert.Equal(0.0027879008821653068, line.Slope!.Value, 1e-8);
        Assert.Equal(0.59072862184381159, line.Intercept!.Value, 1e-8);
        Assert.Equal(211.89010901456601, line.InTheLarge!.Value, 1e-8);
    }

    // In the limit of one observation the variance factor N/(N - 1) is infinite: nothing is known. Below it has no meaning.
    [Fact]
    public void MiettinenNurminen_OneObservationInAll_KnowsNothing()
    {
        Assert.Equal(new Interval(-1, 1), Difference.MiettinenNurminen(0.2, 0.5, 0.3, 0.5, 0.9));
        Assert.Equal(new Interval(0, double.PositiveInfinity), Ratio.MiettinenNurminen(0.1, 0.2, 0.3, 0.4, 0.9));
    }

    [Fact]
    public void Intervals_LevelNearZero_AreTheMedian()
    {
        var jeffreys = OneProportion.JeffreysRaw(3, 9, 1e-17);
        Assert.InRange(jeffreys.Width, 0, 1e-9);
        Assert.InRange(new DirichletPosterior([3, 9]).Marginal(0, 1e-17).Width, 0, 1e-9);
    }

    // Equal shares in unequal groups: the linearised variance is exactly 0, not a rounding error that would pass for certainty.
    [Fact]
    public void KornGraubard_EqualShares_IsUnknown()
    {
        var share = new GroupedShare([new(9, 14), new(18, 28), new(27, 42)]);
        Assert.Equal(0, share.LinearVariance);
        Assert.Null(share.KornGraubard(0.95));
    }

    // A single column of such a table can be filled in C(167, 7), some 7 * 10^11 ways: refused at once, not tried.
    [Fact]
    public void FreemanHalton_TableTooLarge_SaysSo() => Assert.Null(FreemanHaltonTest.P(new CountTable(8, 9, Enumerable.Repeat(20, 72))));

    private static CountTable Table(int rows, int columns, string counts) => new(rows, columns, counts.Split(' ').Select(int.Parse));

    private static void AssertRelative(double expected, double actual, double tolerance) =>
        Assert.True(Math.Abs(actual - expected) <= tolerance * Math.Abs(expected), $"expected {expected:R}, got {actual:R}");
}
