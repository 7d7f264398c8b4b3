using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Tests.Charts;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Tests.Counts;

public sealed class LikelyRangesTests
{
    /// <summary>
    /// By hand: 9, 7, 5, 3, 1 runs of ten. Between games 10 (.16 + .04 + 0 + .04 + .16) / 4 = 1, within 8.5 / 45 = .18889, correlation
    /// .81111 / 2.7 = .30041, so 50 plays count like 50 / (1 + 9 x .30041) = 13.5; Wilson at a half: .5 +/- 1.95996 / (2 sqrt(13.5 + 3.84146)).
    /// </summary>
    [Fact]
    public void Of_GamesDiffer_IsTheRangeWorkedByHand()
    {
        var plays = Chart([9, 7, 5, 3, 1]);
        var ranges = new LikelyRanges(plays, 0.95);

        Assert.Equal(13.5, ranges.EffectivePlays(plays, "call", "run"), 9);
        Assert.Equal((0.2647, 0.7353), Rounded(ranges.Of(plays, "call", "run")));

        // Goodman, two kinds: the upper 2.5% of chi-square is 5.02389; .5 +/- 2.24140 / (2 sqrt(18.52389)).
        Assert.All(ranges.OfMix([25, 25], plays, "call"), range => Assert.Equal((0.2396, 0.7604), Rounded(range)));
    }

    [Fact]
    public void Of_GamesAlike_IsThePlainRange()
    {
        var plays = Chart([5, 5, 5, 5, 5]);

        Assert.Equal(Plain(25, 50), Rounded(new LikelyRanges(plays, 0.95).Of(plays, "call", "run")));
    }

    [Fact]
    public void Of_FourGamesAlike_StillCountsThemATouchAlike()
    {
        // So few games can not show that they are: 40 / (1 + 9 x .02).
        var plays = Chart([5, 5, 5, 5]);

        Assert.Equal(40 / 1.18, new LikelyRanges(plays, 0.95).EffectivePlays(plays, "call", "run"), 9);
    }

    [Fact]
    public void Of_OneGame_IsThePlainRange()
    {
        var plays = Chart([8]);

        Assert.Equal(Plain(8, 10), Rounded(new LikelyRanges(plays, 0.95).Of(plays, "call", "run")));
    }

    /// <summary>
    /// Every game runs on ten of twenty, but what it runs on second down it throws on third: games differ in each situation and not as a whole. By hand:
    /// correlation in a situation (15.36 / 8 - .1) / (1.92 + 9 x .1) = .64539, across none. All plays meet it only in pairs of one situation.
    /// </summary>
    [Fact]
    public void EffectivePlays_GamesDifferInEachSituationOnly_AllPlaysLoseLessThanAGameWouldCost()
    {
        var plays = Chart([9, 1, 9, 1, 9], [1, 9, 1, 9, 1]);
        var ranges = new LikelyRanges(plays, 0.95);
        const double cost = 1 + (9 * 1.82 / 2.82);

        Assert.Equal(100 / cost, ranges.EffectivePlays(plays, "call", "run"), 9);
        Assert.Equal(50 / cost, ranges.EffectivePlays(plays.Where("down", "2"), "call", "run"), 9);
    }

    [Fact]
    public void At_StricterLevel_WidensTheSameEffectivePlays()
    {
        var plays = Chart([9, 7, 5, 3, 1]);
        var ranges = new LikelyRanges(plays, 0.95);

        Assert.True(ranges.At(0.99).Of(plays, "call", "run").Width > ranges.Of(plays, "call", "run").Width);
        Assert.Equal(ranges.EffectivePlays(plays, "call", "run"), ranges.At(0.99).EffectivePlays(plays, "call", "run"));
    }

    private static (double, double) Plain(int count, int of) => Rounded(OneProportion.Wilson(count, of, 0.95));

    private static (double, double) Rounded(Interval range) => (Math.Round(range.Low, 4), Math.Round(range.High, 4));

    // Ten plays of a down in every game, the second down first: so many are runs.
    private static PlayLog Chart(params int[][] runsOfDowns)
    {
        var text = new StringBuilder("game,play,down,distance,call\n");
        for (var game = 0; game < runsOfDowns[0].Length; game++)
        {
            foreach (var (down, runs) in runsOfDowns.Index())
            {
                for (var play = 0; play < 10; play++)
                {
                    text.Append($"G{game + 1},{(10 * down) + play + 1},{down + 2},8,{(play < runs[game] ? "run" : "pass")}\n");
                }
            }
        }

        return ChartText.Plays(text.ToString());
    }
}
