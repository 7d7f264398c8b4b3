using Tendency.Inference.Games;

namespace Tendency.Inference.Tests.Games;

public class BreakEvenRangeTests
{
    private static readonly IReadOnlyList<IReadOnlyList<bool>> FirstThing = [[true, false]];

    /// <summary>With one thing inside and one outside the mix does not matter: every draw has the share the means give, 0.2 / (0.2 + 0.1).</summary>
    [Fact]
    public void Of_RatesAtTheirMeans_IsTheShareItself()
    {
        var values = SplitDraws.Simulate(Tables((4, 6, 5, 5), (5, 5, 3, 7)), [3, 2], FirstThing, ratesVary: false, draws: 50, seed: 1)[0];
        var range = BreakEvenRange.Of(values, 0, 1, firstLeadsAbove: false, 0.95);
        Assert.Equal(1, range.Chance);
        Assert.Equal(2.0 / 3, range.Range!.Value.Low, 1e-12);
        Assert.Equal(2.0 / 3, range.Range.Value.High, 1e-12);
        Assert.Equal(0, BreakEvenRange.Of(values, 0, 1, firstLeadsAbove: true, 0.95).Chance);
    }

    /// <summary>Independent rates against two single things: the first leads the one and trails the other with the product of two exact chances.</summary>
    [Fact]
    public void Of_RatesVary_TurnsAsOftenAsBetasSay()
    {
        const int draws = 40_000;
        var values = SplitDraws.Simulate(Tables((4, 6, 5, 5), (5, 5, 3, 7)), [3, 2], FirstThing, ratesVary: true, draws, seed: 7)[0];
        var trailsInside = BestOfBetas.Chances([(4, 6), (5, 5)])[1];
        var leadsOutside = BestOfBetas.Chances([(5, 5), (3, 7)])[0];
        var chance = trailsInside * leadsOutside;
        Assert.Equal(chance, BreakEvenRange.Of(values, 0, 1, firstLeadsAbove: false, 0.95).Chance, 5 * Math.Sqrt(chance * (1 - chance) / draws));
    }

    /// <summary>Rates known as well as can be, two things inside: the share moves with their proportion only, a Beta(1 + 1) even one, and so do its quantiles.</summary>
    [Fact]
    public void Of_ProportionInsideUncertain_RangeIsThatOfTheBeta()
    {
        var tables = Tables((4, 6, 5, 5, 5, 5), (5, 5, 5, 5, 3, 7));
        var values = SplitDraws.Simulate(tables, [1, 1, 1], [[true, true, false]], ratesVary: false, draws: 40_000, seed: 3)[0];
        var range = BreakEvenRange.Of(values, 0, 1, firstLeadsAbove: false, 0.9).Range!.Value;

        // The first thing's part of the inside is even on 0 to 1; the share 0.2 / (0.2 + 0.1 u) falls from 1 to 2/3 as u rises.
        Assert.Equal(0.2 / (0.2 + (0.1 * 0.95)), range.Low, 3e-3);
        Assert.Equal(0.2 / (0.2 + (0.1 * 0.05)), range.High, 3e-3);
    }

    private static RateTables Tables(params (double, double, double, double)[] options) =>
        new([.. options.Select(o => new UncertainOption([o.Item1, o.Item3], [o.Item2, o.Item4]))]);

    private static RateTables Tables(params (double, double, double, double, double, double)[] options) =>
        new([.. options.Select(o => new UncertainOption([o.Item1, o.Item3, o.Item5], [o.Item2, o.Item4, o.Item6]))]);
}
