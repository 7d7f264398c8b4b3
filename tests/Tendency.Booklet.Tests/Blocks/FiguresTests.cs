using Tendency.Booklet.Blocks;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Tests.Blocks;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(0, 16, "0%")]
    [InlineData(9, 9, "100%")]
    [InlineData(1, 300, "under 1%")]
    [InlineData(299, 300, "over 99%")]
    [InlineData(1, 8, "13%")] // 12.5 rounds up
    [InlineData(57, 200, "29%")] // 28.5, which binary fractions hold as 28.499…
    [InlineData(44, 62, "71%")]
    [InlineData(3, 4, "3 of 4")]
    [InlineData(0, 0, "no plays")]
    public void Percent_OfCount_RoundsHalvesUpAndNeverClaimsAllOrNone(int count, int plays, string expected) =>
        Assert.Equal(expected, Figures.Percent(new Share(count, plays)));

    [Theory]
    [InlineData(.587, .808, "59–81%")]
    [InlineData(0, .194, "0–19%")]
    [InlineData(.003, .12, "<1–12%")]
    [InlineData(.701, .997, "70–>99%")]
    [InlineData(.701, 1, "70–100%")]
    [InlineData(1e-17, .3, "0–30%")] // a Wilson limit that is zero by formula
    public void Range_Limits_NeverRoundToNoneOrAll(double low, double high, string expected) =>
        Assert.Equal(expected, Figures.Range(new Interval(low, high)));

    [Fact]
    public void Evidence_UnderFivePlays_GivesTheCountAlone() =>
        Assert.Equal("3 of 4 plays, too few for a percentage", Figures.Evidence(new Share(3, 4, new Interval(.3, .95))));

    [Fact]
    public void Evidence_FivePlaysOrMore_GivesPercentCountAndRange() =>
        Assert.Equal("71% (44 of 62 runs; likely 59–81%)", Figures.Evidence(new Share(44, 62, new Interval(.587, .808)), "runs"));

    [Theory]
    [InlineData(.3, "+0.3")]
    [InlineData(-1.25, "−1.3")]
    [InlineData(-.04, "0.0")]
    public void Signed_Number_HasItsSignAndATrueMinus(double value, string expected) => Assert.Equal(expected, Figures.Signed(value));

    [Fact]
    public void Share_MoreThanAll_IsRefused() => Assert.Throws<ArgumentException>(() => new Share(5, 4));

    [Theory]
    [InlineData(.52, false)]
    [InlineData(.5, true)]
    public void Differs_RangeLeavesOutBaseline_Only(double baseline, bool expected) =>
        Assert.Equal(expected, new Share(10, 12, new Interval(.51, .95), baseline).Differs);

    [Fact]
    public void Differs_UnderFivePlays_Never() => Assert.False(new Share(4, 4, new Interval(.51, 1), .2).Differs);
}
