using Tendency.Breakdown.Audits.Drives;

namespace Tendency.Breakdown.Tests.Audits;

/// <summary>The rules of the game from one snap to the next. Facts: the rule codes as the trade knows them; see facts.csv T012, T021, T022.</summary>
public class NextSnapTests
{
    // down, distance, yards to goal, gain -> down, distance, yards to goal
    [Theory]
    [InlineData(1, 10, 75, 4, 2, 6, 71)]
    [InlineData(2, 6, 71, 6, 1, 10, 65)]
    [InlineData(3, 3, 12, 5, 1, 7, 7)]
    [InlineData(1, 10, 10, 2, 2, 8, 8)]
    [InlineData(2, 8, 40, -7, 3, 15, 47)]
    [InlineData(1, 10, 99, 0, 2, 10, 99)]
    public void After_GainWithoutFlag_MovesChains(int down, int toGo, int toGoal, int gain, int nextDown, int nextToGo, int nextToGoal) =>
        Assert.Equal(new NextState(nextDown, nextToGo, nextToGoal), Assert.Single(NextSnap.After(Snap(down, toGo, toGoal, gain), 0).States));

    [Fact]
    public void After_FailedFourthDown_EndsTheSeries() => Assert.True(NextSnap.After(Snap(4, 2, 40, 1), 0).Ends);

    [Fact]
    public void After_TouchdownOrInterception_EndsTheSeries()
    {
        Assert.True(NextSnap.After(Snap(1, 10, 30, 30) with { Touchdown = true }, 0).Ends);
        Assert.True(NextSnap.After(Snap(1, 10, 30, 0) with { Result = "interception" }, 0).Ends);
    }

    [Fact]
    public void After_FumbleOrUnchartedFlag_TellsNothing()
    {
        Assert.Empty(NextSnap.After(Snap(1, 10, 30, 3) with { Result = "fumble" }, 0).States);
        Assert.Empty(NextSnap.After(Snap(1, 10, 30, null) with { Result = "penalty" }, 0).States);
    }

    [Fact]
    public void After_ReplayedFoulOfTheOffense_KeepsOrLosesTheDown() =>
        Assert.Equal([new NextState(2, 18, 60), new NextState(3, 18, 60)], NextSnap.After(Flag(2, 8, 50, null, "offense", 10, "replay"), 0).States);

    [Fact]
    public void After_ReplayedFoulOfTheDefense_MayGiveAFirstDown()
    {
        Assert.Equal([new NextState(2, 3, 45), new NextState(1, 10, 45)], NextSnap.After(Flag(2, 8, 50, null, "defense", 5, "replay"), 0).States);
        Assert.Equal([new NextState(1, 10, 35)], NextSnap.After(Flag(2, 8, 50, null, "defense", 15, "replay"), 0).States);
    }

    [Fact]
    public void After_OffsetFlags_NothingMoves() => Assert.Equal([new NextState(3, 8, 50)], NextSnap.After(Flag(3, 8, 50, null, "", null, "offset"), 0).States);

    [Fact]
    public void After_DeclinedFlag_ThePlayStands() => Assert.Equal([new NextState(3, 5, 47)], NextSnap.After(Flag(2, 8, 50, 3, "offense", 10, "declined"), 0).States);

    [Fact]
    public void After_FlagAddedOn_MovesFromTheEndOfThePlay() =>
        Assert.Contains(new NextState(1, 10, 32), NextSnap.After(Flag(2, 8, 50, 3, "defense", 15, "added on"), 0).States);

    private static WalkedSnap Snap(int down, int toGo, int toGoal, int? gain) => new(0, 1, down, toGo, false, toGoal, gain) { Result = "rush", Call = "run" };

    private static WalkedSnap Flag(int down, int toGo, int toGoal, int? gain, string on, int? yards, string effect) =>
        Snap(down, toGo, toGoal, gain) with { PenaltyOn = on, PenaltyYards = yards, Effect = effect, Result = gain is null ? "penalty" : "rush" };
}
