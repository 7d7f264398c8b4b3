using Tendency.Inference.Agreement;

namespace Tendency.Inference.Tests.Agreement;

public class RankCorrelationTests
{
    // By hand: (5 - 0)/sqrt(5 * 6) pairs; 4.5/sqrt(4.5 * 5) of the mid-ranks 1, 2.5, 2.5, 4.
    [Fact]
    public void Correlations_WithTies_AreThoseOfTheHandCount()
    {
        double[] x = [1, 2, 2, 3], y = [1, 2, 3, 4];
        Assert.Equal(5 / Math.Sqrt(30), RankCorrelation.KendallTauB(x, y), 1e-14);
        Assert.Equal(4.5 / Math.Sqrt(22.5), RankCorrelation.Spearman(x, y), 1e-14);
    }

    [Fact]
    public void Correlations_SameAndReversedOrder_AreOneAndMinusOne()
    {
        double[] x = [3, 1, 4, 1.5, 9], reversed = [-3, -1, -4, -1.5, -9];
        Assert.Equal((1, -1), (RankCorrelation.KendallTauB(x, x), RankCorrelation.KendallTauB(x, reversed)));
        Assert.Equal(-1, RankCorrelation.Spearman(x, reversed), 1e-14);
    }

    [Fact]
    public void Correlations_ConstantScore_AreNotDefined() =>
        Assert.True(double.IsNaN(RankCorrelation.KendallTauB([1, 1, 1], [1, 2, 3])));
}
