using Tendency.Inference.Forecasts;

namespace Tendency.Inference.Tests.Forecasts;

public sealed class BaggedTreesTests
{
    // Hit when both of the first two are set; the third says nothing.
    private static readonly double[][] s_rows = [.. Enumerable.Range(0, 200).Select(i => new double[] { i % 2, i / 2 % 2, i % 7 })];
    private static readonly bool[] s_hit = [.. s_rows.Select(row => row[0] + row[1] == 2)];

    [Fact]
    public void Fit_BothSet_TellsThemApart()
    {
        var model = BaggedTrees.Fit(s_rows, s_hit, 100, seed: 1);

        Assert.True(model.Probability([1, 1, 3]) > 0.8);
        Assert.True(model.Probability([1, 0, 3]) < 0.2);
    }

    [Fact]
    public void Fit_SameSeed_SameForest() =>
        Assert.Equal(BaggedTrees.Fit(s_rows, s_hit, 20, 7).Probability([0, 1, 2]), BaggedTrees.Fit(s_rows, s_hit, 20, 7).Probability([0, 1, 2]));

    [Fact]
    public void Fit_AllHits_NeverCertain() =>
        Assert.InRange(BaggedTrees.Fit(s_rows, [.. s_rows.Select(_ => true)], 20, 1).Probability([0, 0, 0]), 0.9, 1 - 1e-6);
}
