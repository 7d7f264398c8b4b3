using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Tests.Findings;

namespace Tendency.Breakdown.Tests.Counts;

public sealed class GameWeightsTests
{
    private static readonly PlayLog s_plays = ChartOfCalls.Of(3, ("strong", "none", g => 10 - g, g => g));

    [Fact]
    public void Recency_HalfLifeOne_HalvesGameByGame() =>
        Assert.Equal([0.25, 0.5, 1], GameWeights.Recency(s_plays, 1).ByGame.OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Value));

    [Fact]
    public void Recency_None_SaysNothing() => Assert.Empty(GameWeights.Recency(s_plays, 0).Why);

    [Fact]
    public void Share_HalfLifeOne_WeightsAndKishsPlays()
    {
        // Kish: (10/4 + 10/2 + 10)² / (10/16 + 10/4 + 10).
        var share = GameWeights.Recency(s_plays, 1).Share([("G1", new Tally(10, 10)), ("G2", new Tally(9, 10)), ("G3", new Tally(8, 10))], 0, 0.95);

        Assert.Equal(((0.25 * 10) + (0.5 * 9) + 8) / 17.5, share.Share, 12);
        Assert.Equal(17.5 * 17.5 / 13.125, share.EffectivePlays, 12);
        Assert.Equal((27, 30), (share.Tally.Count, share.Tally.Plays));
    }

    [Fact]
    public void LikeOurs_FrontsOfOneGameOurs_CountsThatGameMost()
    {
        var games = s_plays.Category("game");
        var fronts = CategoryColumn.FromWords("front", Enumerable.Range(0, s_plays.Rows).Select(row => games[row] switch { "G1" => "Over", "G2" => "Bear", _ => "" }));

        var weights = GameWeights.LikeOurs(s_plays.With(fronts), ["over"]).ByGame;

        Assert.Equal(1, weights["G1"], 12);
        Assert.Equal(0.25, weights["G2"], 12);
        Assert.Equal(0.625, weights["G3"], 12);
    }
}
