using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Situations;

namespace Tendency.Breakdown.Tests.Findings;

public sealed class ShrunkTests
{
    [Fact]
    public void Share_TwoLevels_EveryPlayCountsOnce()
    {
        // 40 of 80 elsewhere, 9 of 10 with the back strong: parent (40 + 1/2) / 81, then 12 plays' worth of it.
        var plays = ChartOfCalls.Of(1, ("strong", "none", _ => 9, _ => 1), ("weak", "none", _ => 40, _ => 40));
        const double parent = 40.5 / 81;

        var shrunk = Shrunk.Share(plays, "call", "run", [new Condition("back_side", ["strong"])], 0.95);

        Assert.Equal((9, 10), (shrunk.Tally.Count, shrunk.Tally.Plays));
        Assert.Equal(parent, shrunk.Parent, 12);
        Assert.Equal((9 + (12 * parent)) / 22, shrunk.Share, 12);
        Assert.True(shrunk.Likely.Contains(shrunk.Share));
    }

    /// <summary>Four of four elsewhere even: (4 + 12 x 20.5 / 41) / 16 = 63%. Eighteen of twenty: (18 + 12 x 12.5 / 25) / 32 = 75%.</summary>
    [Fact]
    public void Share_FourOfFour_DoesNotBeatEighteenOfTwenty()
    {
        var four = ChartOfCalls.Of(1, ("strong", "none", _ => 4, _ => 0), ("weak", "none", _ => 20, _ => 20));
        var eighteen = ChartOfCalls.Of(1, ("strong", "none", _ => 18, _ => 2), ("weak", "none", _ => 12, _ => 12));

        Assert.Equal(10.0 / 16, Expected(four), 12);
        Assert.Equal(24.0 / 32, Expected(eighteen), 12);

        static double Expected(PlayLog plays) => Shrunk.Share([plays, plays.Where("back_side", "strong")], "call", "run", 0.95).Share;
    }

    [Fact]
    public void Share_SituationThatTakesNoPlayAway_IsTheWhole()
    {
        var plays = ChartOfCalls.Of(1, ("strong", "none", _ => 9, _ => 1));

        Assert.Equal(9.5 / 11, Shrunk.Share([plays, plays.Where("back_side", "strong")], "call", "run", 0.95).Share, 12);
    }

    [Fact]
    public void Share_NoPlays_IsTheParent()
    {
        var plays = ChartOfCalls.Of(1, ("weak", "none", _ => 40, _ => 40));

        var shrunk = Shrunk.Share(plays, "call", "run", [new Condition("back_side", ["strong"])], 0.95);

        Assert.Equal(shrunk.Parent, shrunk.Share, 12);
        Assert.Equal(0, shrunk.Tally.Plays);
    }
}
