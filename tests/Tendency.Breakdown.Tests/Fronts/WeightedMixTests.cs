using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Tests.Charts;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>The front check when games against fronts like ours count more: 12 powers against our Over, 20 inside zones against a Bear.</summary>
public sealed class WeightedMixTests
{
    private static readonly PlayLog s_plays = ChartText.Plays(Chart());
    private static readonly GameWeights s_weights = GameWeights.LikeOurs(s_plays, front => front == "over");

    [Fact]
    public void Mix_Weighted_IsWorkedByHand()
    {
        var mix = Check(s_weights).Matrix.Mix;

        // Weights 1 and 1/4: power 12 / (12 + 20/4) = 12/17. Kish: 17² / (12 + 20/16) = 289 / 13.25 = 21.81 runs.
        var power = mix.Cells.Where(cell => cell.Scheme.Name == "power").ToArray();
        Assert.Equal(289 / 13.25, mix.EffectiveRuns, 10);
        Assert.Equal(12.0 / 17 * 289 / 13.25, power.Sum(cell => cell.EffectiveCount), 10);
        Assert.Equal((32, 12), (mix.Runs, power.Sum(cell => cell.Count)));
    }

    /// <summary>The ratings turn where power passes six runs of ten: a plain mix of 12 in 32 asks for Tight, the weighted one of 12 in 17 for the other.</summary>
    [Fact]
    public void Ranking_PowerInTheGamesLikeOurs_TurnsTheAnswer()
    {
        Assert.Equal("tight", Better(Check(GameWeights.Equal)));
        Assert.Equal("double five", Better(Check(s_weights)));
    }

    [Fact]
    public void BreakEven_Weighted_KeepsThePlainShareBesideIt()
    {
        var turn = Check(s_weights).BreakEven("tight", "double five", "gap")!;

        Assert.Equal(12.0 / 17, turn.ShareNow, 10);
        Assert.Equal(12.0 / 32, turn.ShareAlike, 10);
        Assert.InRange(turn.ShareNow, turn.Low, turn.High);
    }

    [Fact]
    public void Card_Weighted_GivesRunsAndPassesTheirWeightedShareAndPlainCounts()
    {
        var options = Options(s_weights);
        var all = FrontCard.Of(s_plays, Check(s_weights), options)[0];

        Assert.Equal((32, 32), (all.Plays, all.Runs));
        // Two games can not show that they are alike: each pair of plays in one correlates by 0.02.
        Assert.Equal(289 / (13.25 + (.02 * (144 + 25 - 13.25))), all.Weighted!.EffectivePlays, 10);
    }

    [Fact]
    public void Mix_EveryGameAlike_IsThePlainCountExactly()
    {
        var mix = Check(GameWeights.Equal).Matrix.Mix;

        Assert.Equal(mix.Runs, mix.EffectiveRuns);
        Assert.All(mix.Cells, cell => Assert.Equal(cell.Count, cell.EffectiveCount));
    }

    private static string Better(FrontCheck check) => check.Ranking.Ranks.First(rank => rank.Front is "tight" or "double five").Front;

    private static FrontCheck Check(GameWeights weights) => FrontCheck.Of(s_plays, FrontBook.BuiltIn, FrontBook.BuiltIn.Fronts, Options(weights));

    private static FrontOptions Options(GameWeights weights) => new() { Draws = 2000, CardDraws = 200, Weights = weights };

    private static string Chart()
    {
        var text = new StringBuilder(RunChart.Of());
        for (var play = 1; play <= 32; play++)
        {
            var line = RunChart.Line(play, play <= 12 ? "power" : "inside zone", play % 4 < 2 ? "to back" : "away", play <= 12 ? "over" : "bear", play % 2 == 0);
            text.Append(play <= 12 ? line : "B" + line[1..]);
        }

        return text.ToString();
    }
}
