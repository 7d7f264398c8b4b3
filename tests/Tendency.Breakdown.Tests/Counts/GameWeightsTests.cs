using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Tests.Findings;

namespace Tendency.Breakdown.Tests.Counts;

public sealed class GameWeightsTests
{
    private static readonly PlayLog s_plays = ChartOfCalls.Of(3, ("strong", "none", g => 10 - g, g => g));

    // Two games against an Over front (ours), two against a Bear; 15 of 20 plays are runs in the first two, 5 of 20 in the others.
    private static readonly PlayLog s_fourGames = WithFronts(
        ChartOfCalls.Of(4, ("strong", "none", g => g < 2 ? 15 : 5, g => g < 2 ? 5 : 15)), game => game is "G1" or "G2" ? "Over" : "Bear");

    [Fact]
    public void Recency_HalfLifeOne_HalvesGameByGame() => Assert.Equal([0.25, 0.5, 1], WeightsOf(GameWeights.Recency(s_plays, 1), "G1", "G2", "G3"));

    [Fact]
    public void Recency_None_SaysNothing()
    {
        Assert.Empty(GameWeights.Recency(s_plays, 0).Why);
        Assert.False(GameWeights.Recency(s_plays, 0).IsOn);
    }

    [Fact]
    public void Recency_VeryShortHalfLife_KeepsOldGamesDefined()
    {
        var share = GameWeights.Recency(s_plays, 0.001).Share([("G1", new Tally(6, 10))], 0, 0.95);

        Assert.Equal(0.6, share.Share, 12);
        Assert.Equal(10, share.EffectivePlays, 6);
    }

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
        var weights = GameWeights.LikeOurs(WithFronts(s_plays, game => game switch { "G1" => "Over", "G2" => "Bear", _ => "" }), front => front == "Over");

        Assert.Equal([1, 0.25, 0.625], WeightsOf(weights, "G1", "G2", "G3"));
        Assert.Equal(new Tally(10, 10), weights.LikeFronts["G1"]);
        Assert.Equal(["G1", "G2"], weights.LikeFronts.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void LikeOurs_TwoGamesOfFour_IsTheShareWorkedByHand()
    {
        var share = GameWeights.LikeOurs(s_fourGames, front => front == "Over").Share(s_fourGames, "call", "run", 0.95);

        // Weights 1, 1, 1/4, 1/4: (15 + 15 + 5/4 + 5/4) / (20 + 20 + 5 + 5) = 32.5 / 50. Kish: 50² / (40 + 40/16) = 2500 / 42.5 = 58.82.
        Assert.Equal(0.65, share.Share, 12);
        Assert.Equal(2500 / 42.5, share.EffectivePlays, 10);
        Assert.Equal(new Tally(40, 80), share.Tally);

        // Wilson at 38.235 of 58.824, z = 1.959964: center (38.235 + 1.9207) / 62.665 = 0.6408, half 1.96 / 62.665 · √(13.382 + 0.960) = 0.1185.
        Assert.Equal(0.5224, share.Likely.Low, 3);
        Assert.Equal(0.7593, share.Likely.High, 3);
    }

    [Theory]
    [InlineData("Bear")]
    [InlineData("")]
    public void LikeOurs_NoFrontOfOursCharted_CountsAllAlike(string charted)
    {
        var weights = GameWeights.LikeOurs(WithFronts(s_plays, _ => charted), front => front == "Over");

        Assert.False(weights.IsOn);
        Assert.Equal([1, 1, 1], WeightsOf(weights, "G1", "G2", "G3"));
    }

    [Fact]
    public void And_AgeAndFronts_Multiply()
    {
        var both = GameWeights.Recency(s_fourGames, 1).And(GameWeights.LikeOurs(s_fourGames, front => front == "Over"));

        Assert.Equal([1.0 / 8, 1.0 / 4, 1.0 / 8, 1.0 / 4], WeightsOf(both, "G1", "G2", "G3", "G4"));
        Assert.Equal("Recent games count more, halving every game. Games against fronts like ours count more.", both.Why);
        Assert.Equal("Recent games and games against fronts like ours count more.", both.Which);
        Assert.Equal(4, both.LikeFronts.Count);
    }

    [Fact]
    public void EffectivePlays_EqualWeights_IsTheirNumberExactly() =>
        Assert.Equal(331.0, GameWeights.Equal.EffectivePlays(Enumerable.Repeat("G1", 331)));

    private static double[] WeightsOf(GameWeights weights, params string[] games) => [.. games.Select(game => Math.Round(weights.Of(game), 12))];

    private static PlayLog WithFronts(PlayLog plays, Func<string, string> frontOfGame)
    {
        var games = plays.Category("game");
        return plays.With(CategoryColumn.FromWords("front", Enumerable.Range(0, plays.Rows).Select(row => frontOfGame(games[row]))));
    }
}
