using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Clusters;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Counts;

/// <summary>How much each game counts. Weights are relative; whoever prints a weighted figure prints <see cref="Why"/> and the plain count beside it.</summary>
/// <param name="ByGame">Weight of a play of each game, 0 or more.</param>
/// <param name="Why">What the page says; empty when every game counts the same.</param>
public sealed record GameWeights(IReadOnlyDictionary<string, double> ByGame, string Why)
{
    /// <summary>Least weight of a game whose defense shared no front with our plan: it still shows what they like to call.</summary>
    public const double LeastLikeness = 0.25;

    public static GameWeights Equal(PlayLog plays) => new(GamesOf(plays).ToDictionary(game => game, _ => 1.0, StringComparer.Ordinal), "");

    /// <summary>2^(-age / half-life), the newest game (the last in order) having age 0. A half-life of 0 weighs every game the same.</summary>
    public static GameWeights Recency(PlayLog plays, double halfLifeGames)
    {
        if (halfLifeGames <= 0)
        {
            return Equal(plays);
        }

        var games = GamesOf(plays);
        return new GameWeights(
            games.Index().ToDictionary(g => g.Item, g => EffectiveSize.RecencyWeight(games.Length - 1 - g.Index, halfLifeGames), StringComparer.Ordinal),
            $"Recent games count more: a game {halfLifeGames:0.#} games old counts half.");
    }

    /// <summary>
    /// More for games in which they faced defenses like ours: from <see cref="LeastLikeness"/> to 1, rising with the share of the game's charted
    /// fronts that are in our plan. A game without a charted front counts like the average of the others; without any, all count the same.
    /// </summary>
    public static GameWeights LikeOurs(PlayLog plays, IReadOnlyList<string> ourFronts)
    {
        var fronts = plays.Category(ColumnNames.Front);
        var games = plays.Category(ColumnNames.Game);
        var ours = ourFronts.ToHashSet(StringComparer.OrdinalIgnoreCase);
        var likeness = Enumerable.Range(0, plays.Rows)
            .Where(row => fronts.Codes[row] > 0)
            .GroupBy(row => games[row], StringComparer.Ordinal)
            .ToDictionary(game => game.Key, game => LeastLikeness + ((1 - LeastLikeness) * game.Average(row => ours.Contains(fronts[row]) ? 1.0 : 0)), StringComparer.Ordinal);
        if (likeness.Count == 0 || ours.Count == 0)
        {
            return Equal(plays);
        }

        var usual = likeness.Values.Average();
        return new GameWeights(
            GamesOf(plays).ToDictionary(game => game, game => likeness.GetValueOrDefault(game, usual), StringComparer.Ordinal),
            "Games against fronts like ours count more.");
    }

    /// <summary>Both at once: weights multiply.</summary>
    public GameWeights And(GameWeights other) => new(
        ByGame.ToDictionary(g => g.Key, g => g.Value * other.ByGame.GetValueOrDefault(g.Key, 1), StringComparer.Ordinal),
        string.Join(' ', ((string[])[Why, other.Why]).Where(why => why.Length > 0)));

    /// <summary>A weighted share with the plays it is worth.</summary>
    /// <param name="games">Plain counts of each game.</param>
    /// <param name="rho">Correlation within a game; 0 takes plays as independent.</param>
    public WeightedShare Share(IEnumerable<(string Game, Tally Tally)> games, double rho, double level)
    {
        var all = games.Select(g => (g.Tally, Weight: ByGame.GetValueOrDefault(g.Game, 1))).ToArray();
        var total = all.Sum(g => g.Weight * g.Tally.Plays);
        var plays = EffectiveSize.OfWeightedGroups(all.Select(g => ((double)g.Tally.Plays, g.Weight)), rho);
        var share = total > 0 ? all.Sum(g => g.Weight * g.Tally.Count) / total : 0;
        return new WeightedShare(
            new Tally(all.Sum(g => g.Tally.Count), all.Sum(g => g.Tally.Plays)), share, plays, OneProportion.Wilson(share * plays, plays, level));
    }

    private static string[] GamesOf(PlayLog plays) => plays.Category(ColumnNames.Game).UsedLevels();
}

/// <summary>A share in which some games count more.</summary>
/// <param name="Tally">The plain count, always printed beside it.</param>
/// <param name="Share">The weighted share; 0 without plays.</param>
/// <param name="EffectivePlays">How many independent plays of equal weight it is worth.</param>
/// <param name="Likely">Wilson's interval at the effective plays.</param>
public sealed record WeightedShare(Tally Tally, double Share, double EffectivePlays, Interval Likely);
