using Tendency.Breakdown.Counts;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Tests.Counts;

public class PercentTests
{
    [Theory]
    [InlineData(0, 400, "0%")]
    [InlineData(1, 400, "under 1%")]
    [InlineData(2, 400, "1%")]
    [InlineData(58, 400, "15%")]
    [InlineData(399, 400, "over 99%")]
    [InlineData(400, 400, "100%")]
    public void Of_CountAndItsShare_SayTheSameAndNeverClaimNoneOrAll(int count, int plays, string percent)
    {
        Assert.Equal(percent, Percent.Of(new Tally(count, plays)));
        Assert.Equal(percent, Percent.Of((double)count / plays));
    }

    [Fact]
    public void Range_LimitsNextToNoneAndAll_AreShortened() => Assert.Equal("<1–>99%", Percent.Range(new Interval(0.001, 0.999)));

    [Fact]
    public void Of_NotANumber_IsRefused() => Assert.Throws<ArgumentException>(() => Percent.Of(double.NaN));
}
