using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>Runs and passes side by side: bear is better against this run game, wide nine rushes two points better than even.</summary>
public class FrontCardTests
{
    private static readonly FrontBook Book = FrontBook.BuiltIn;

    /// <summary>By hand: 20 of 40 passes succeed; wide nine's rush is +2, bear's +1; a rush point is 3 points of pass success.</summary>
    [Fact]
    public void Passes_RushRating_MovesPassSuccessByItsStep()
    {
        var check = Check(Chart(runs: 40, passes: 40), new FrontOptions { Draws = 500 });
        Assert.Equal([("bear", 1.0, 0.47), ("wide nine", 2.0, 0.44)], check.Passes.Select(p => (p.Front, p.Rush, Math.Round(p.SuccessAllowed, 12))));
    }

    /// <summary>
    /// Inside zone alone: +2 against -1 is 18 points on a run, one rush point 3 on a pass. The card turns where 18 r = 3 (1 - r), at one run in seven.
    /// </summary>
    [Theory]
    [InlineData(30, 90, "bear")]
    [InlineData(12, 108, "wide nine")]
    public void Card_FewerRuns_TurnsToTheRushWhereTheRatingsSay(int runs, int passes, string front)
    {
        var (log, options) = (Chart(runs, passes), new FrontOptions { Draws = 500 });
        var line = FrontCard.Of(log, Check(log, options), options)[0];
        Assert.Equal((front, "bear"), (line.Front, line.OnRuns));
    }

    [Fact]
    public void Card_RushWorthNothing_FollowsTheRuns()
    {
        var (log, options) = (Chart(12, 108), new FrontOptions { Draws = 500, RushStep = 0 });
        var line = FrontCard.Of(log, Check(log, options), options)[0];
        Assert.Equal("bear", line.Front);
        Assert.InRange(line.Sure - line.OnRunsSure, -0.1, 0.1);
    }

    /// <summary>A matching-pennies game: each front has a run it is worst against, and the value lies below both.</summary>
    [Fact]
    public void IfTheyAdjust_TwoFronts_SaysWhatEachFearsAlone()
    {
        var chart = RunChart.Of((10, "inside zone", "away"), (10, "power", "away"));
        var game = FrontCheck.Of(Charts.ChartText.Plays(chart), Book, Book.Plan(["tight", "double five"]).Fronts, new FrontOptions { Draws = 500 }).IfTheyAdjust!;
        Assert.Equal([("double five", "inside zone"), ("tight", "power")], game.Worst.Select(w => (w.Front, w.Run)).Order());
        Assert.All(game.Worst, w => Assert.True(w.Allowed > game.Value));
    }

    private static FrontCheck Check(PlayLog log, FrontOptions options) => FrontCheck.Of(log, Book, Book.Plan(["bear", "wide nine"]).Fronts, options);

    private static PlayLog Chart(int runs, int passes)
    {
        var text = new StringBuilder(RunChart.Of((runs / 2, "inside zone", "away"), (runs / 2, "inside zone", "to back")));
        for (var play = runs + 1; play <= runs + passes; play++)
        {
            text.Append($"A,{play},1,10,pass,,,L,R,R,,{(play % 2 == 0 ? 6 : 1)},complete\n");
        }

        return Charts.ChartText.Plays(text.ToString());
    }
}
