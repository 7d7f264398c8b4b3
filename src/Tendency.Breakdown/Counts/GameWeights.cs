using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Clusters;

namespace Tendency.Breakdown.Counts;

/// <summary>How much each game counts. Weights are relative; whoever prints a weighted figure prints <see cref="Why"/> and the plain count beside it.</summary>
/// <param name="Reasons">Why games count differently, each with its own weight of a game; none = every game counts the same.</param>
public sealed record GameWeights(IReadOnlyList<WeightReason> Reasons)
{
    /// <summary>Least weight of a game whose defense shared no front with our plan: it still shows what they like to call. Our choice, no source.</summary>
    public const double LeastLikeness = 0.25;

    // A game older than many half-lives: what only it shows keeps a share.
    private const double Least = 1e-6;

    public static GameWeights Equal { get; } = new([]);

    /// <summary>Charted fronts of each game that are in our plan; empty unless games against fronts like ours count more.</summary>
    public IReadOnlyDictionary<string, Tally> LikeFronts { get; private init; } = new Dictionary<string, Tally>();

    public bool IsOn => Reasons.Count > 0;

    /// <summary>The same in one sentence without the measure: "Recent games and games against fronts like ours count more."</summary>
    public string Which
    {
        get
        {
            var games = string.Join(" and ", Reasons.Select(reason => reason.Which));
            return games.Length == 0 ? "" : $"{char.ToUpperInvariant(games[0])}{games[1..]} count more.";
        }
    }

    /// <summary>What the page says; empty when every game counts the same.</summary>
    public string Why => string.Join(' ', Reasons.Select(reason => reason.Why));

    /// <summary>Weight of a play of a game, above 0: the reasons multiply. 1 for a game they do not name.</summary>
    public double Of(string game) => Reasons.Aggregate(1.0, (weight, reason) => weight * reason.ByGame.GetValueOrDefault(game, 1));

    /// <summary>2^(-age / half-life), the newest game (the last in order) having age 0. A half-life of 0, or no game, weighs all the same.</summary>
    public static GameWeights Recency(PlayLog plays, double halfLifeGames)
    {
        var games = GamesOf(plays);
        if (halfLifeGames <= 0 || games.Length == 0)
        {
            return Equal;
        }

        return new GameWeights([new WeightReason(
            "age",
            "recent games",
            $"Recent games count more, halving every {(halfLifeGames == 1 ? "game" : $"{halfLifeGames:0.###} games")}.",
            games.Index().ToDictionary(g => g.Item, g => Math.Max(Least, EffectiveSize.RecencyWeight(games.Length - 1 - g.Index, halfLifeGames)), StringComparer.Ordinal))]);
    }

    /// <summary>
    /// More for games in which they faced defenses like ours: from <see cref="LeastLikeness"/> to 1, rising with the share of the game's charted
    /// fronts that are in our plan. A game without a charted front counts like the average of the others; all count the same where none of the
    /// charted fronts is ours, or no front is charted.
    /// </summary>
    /// <param name="plays">The offense's plays, whatever else is counted: their games and the fronts they met.</param>
    /// <param name="isOurs">Whether a front as charted is one of our plan.</param>
    public static GameWeights LikeOurs(PlayLog plays, Func<string, bool> isOurs)
    {
        var fronts = plays.Category(ColumnNames.Front);
        var games = plays.Category(ColumnNames.Game);
        var ours = fronts.Levels.Select(front => front.Length > 0 && isOurs(front)).ToArray();
        var charted = Enumerable.Range(0, plays.Rows)
            .Where(row => fronts.Codes[row] > 0)
            .GroupBy(row => games[row], StringComparer.Ordinal)
            .ToDictionary(game => game.Key, game => new Tally(game.Count(row => ours[fronts.Codes[row]]), game.Count()), StringComparer.Ordinal);
        if (charted.Values.Sum(game => game.Count) == 0)
        {
            return Equal;
        }

        var likeness = charted.ToDictionary(game => game.Key, game => LeastLikeness + ((1 - LeastLikeness) * game.Value.Share!.Value), StringComparer.Ordinal);
        var usual = likeness.Values.Average();
        return new GameWeights([new WeightReason(
            "fronts",
            "games against fronts like ours",
            "Games against fronts like ours count more.",
            GamesOf(plays).ToDictionary(game => game, game => likeness.GetValueOrDefault(game, usual), StringComparer.Ordinal))])
        { LikeFronts = charted };
    }

    /// <summary>Both at once: weights multiply.</summary>
    public GameWeights And(GameWeights other) => new([.. Reasons, .. other.Reasons]) { LikeFronts = LikeFronts.Count > 0 ? LikeFronts : other.LikeFronts };

    /// <summary>How many plays of equal weight some plays count like (Kish 1965, from memory). Equal weights: their number, exactly.</summary>
    public double EffectivePlays(IEnumerable<string> gameOfPlay) => EffectiveSize.Kish(gameOfPlay.Select(Of));

    /// <summary>How often a column holds a value, among the plays in which it is charted, with the plays taken as independent.</summary>
    /// <param name="level">Level of the interval, in (0, 1).</param>
    public WeightedShare Share(PlayLog plays, string column, string value, double level)
    {
        var answer = plays.Dimension(column);
        var code = answer.CodeOf(value);
        var games = plays.Category(ColumnNames.Game);
        return Share(
            Enumerable.Range(0, plays.Rows).Where(row => answer.Codes[row] != 0).GroupBy(row => games.Codes[row])
                .OrderBy(game => game.Key)
                .Select(game => (games.Levels[game.Key], new Tally(game.Count(row => answer.Codes[row] == code), game.Count()))),
            0,
            level);
    }

    /// <summary>A weighted share with the plays it is worth.</summary>
    /// <param name="games">Plain counts of each game.</param>
    /// <param name="rho">Correlation within a game; 0 takes plays as independent.</param>
    /// <param name="level">Level of the interval, in (0, 1).</param>
    public WeightedShare Share(IEnumerable<(string Game, Tally Tally)> games, double rho, double level)
    {
        var all = games.Select(g => (g.Tally, Weight: Of(g.Game))).ToArray();
        var total = all.Sum(g => g.Weight * g.Tally.Plays);
        var plays = EffectiveSize.OfWeightedGroups(all.Select(g => ((double)g.Tally.Plays, g.Weight)), rho);
        var share = total > 0 ? all.Sum(g => g.Weight * g.Tally.Count) / total : 0;
        return new WeightedShare(
            new Tally(all.Sum(g => g.Tally.Count), all.Sum(g => g.Tally.Plays)), share, plays, Estimate.IntervalOf(share * plays, plays, level, IntervalMethod.Wilson).ClippedToShare());
    }

    private static string[] GamesOf(PlayLog plays) => plays.Category(ColumnNames.Game).UsedLevels();
}
