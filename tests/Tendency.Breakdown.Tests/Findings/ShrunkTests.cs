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

    [Fact]
    public void Share_NoPlays_IsTheParent()
    {
        var plays = ChartOfCalls.Of(1, ("weak", "none", _ => 40, _ => 40));

        var shrunk = Shrunk.Share(plays, "call", "run", [new Condition("back_side", ["strong"])], 0.95);

        Assert.Equal(shrunk.Parent, shrunk.Share, 12);
        Assert.Equal(0, shrunk.Tally.Plays);
    }
}
