using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;

namespace Tendency.Breakdown.Findings;

/// <summary>Follows habits from game to game.</summary>
/// <remarks>
/// Beta-binomial bootstrap of the homogeneity and the change-point statistic: plays of a game are alike, so counting them as independent
/// would call every second habit a change. The correlation is pooled over down and distance, at least 0.02.
/// </remarks>
public static class SteadyHabits
{
    /// <summary>A game with fewer plays of a habit says nothing of it.</summary>
    private const int FewestPlays = 3;

    private const int FewestGames = 3;
    private const int FewestGamesForAChange = 4;
    private const double LeastCorrelation = 0.02;

    /// <summary>At 1 every game would be a single draw, and no spread could be more than luck.</summary>
    private const double MostCorrelation = 0.95;

    /// <param name="plays">The subject's counted plays, derived columns included.</param>
    /// <param name="habits">Those not charted, or seen in fewer than three games, are passed over.</param>
    /// <param name="seed">The same seed gives the same p-values.</param>
    /// <param name="draws">Draws of the bootstrap; 9,999 for print.</param>
    /// <returns>What moved most first.</returns>
    public static IReadOnlyList<Steadiness> Follow(PlayLog plays, IReadOnlyList<Habit> habits, int seed, int draws = 9_999) =>
        [.. habits.Select(habit => Follow(plays, habit, seed, draws)).OfType<Steadiness>().OrderBy(s => Math.Min(s.SpreadP, s.ChangeP ?? 1))];

    /// <summary>One habit; null when it is not charted or seen in fewer than three games.</summary>
    public static Steadiness? Follow(PlayLog plays, Habit habit, int seed, int draws = 9_999)
    {
        if (!plays.IsCharted(habit.Column) || habit.When.Any(condition => !plays.IsCharted(condition.Name)))
        {
            return null;
        }

        var about = plays;
        foreach (var condition in habit.When)
        {
            var holds = condition.Rows(about);
            about = about.Where(row => holds[row]);
        }

        var did = Did(about, habit);
        var games = ByGame(about, did, about.Category(ColumnNames.Game)).Where(g => g.Tally.Plays >= FewestPlays).ToArray();
        if (games.Length < FewestGames)
        {
            return null;
        }

        var table = new CountTable([.. games.Select(g => (IReadOnlyList<int>)[g.Tally.Count, g.Tally.Plays - g.Tally.Count])]);
        var after = ChangePoint.Find(table)!.After;
        var rho = Math.Clamp(WithinGames(about, did, games.Take(after).Select(g => g.Game).ToHashSet(StringComparer.Ordinal)), LeastCorrelation, MostCorrelation);
        var (spread, change) = Drift.Bootstrap(table, rho, draws, seed);
        return games.Length < FewestGamesForAChange
            ? new Steadiness(habit, games, spread, null, null)
            : new Steadiness(habit, games, spread, after, change) { ChangeAfterGame = Array.IndexOf(plays.Category(ColumnNames.Game).UsedLevels(), games[after - 1].Game) + 1 };
    }

    // True where they did it, null where the column is not charted.
    private static bool?[] Did(PlayLog plays, Habit habit)
    {
        var column = plays.Dimension(habit.Column);
        var other = habit.Value.StartsWith('!');
        var code = column.CodeOf(other ? habit.Value[1..] : habit.Value);
        return [.. Enumerable.Range(0, plays.Rows).Select(row => column.Codes[row] == 0 ? (bool?)null : column.Codes[row] == code != other)];
    }

    private static IEnumerable<GameTally> ByGame(PlayLog plays, bool?[] did, CategoryColumn games) => Enumerable.Range(0, plays.Rows)
        .Where(row => did[row] is not null)
        .GroupBy(row => games.Codes[row])
        .OrderBy(game => game.Key)
        .Select(game => new GameTally(games.Levels[game.Key], new Tally(game.Count(row => did[row] == true), game.Count())));

    /// <summary>
    /// Correlation within a game among games on the same side of the likeliest change: over all games a real change would pass for
    /// ordinary variation and hide itself.
    /// </summary>
    private static double WithinGames(PlayLog plays, bool?[] did, HashSet<string> before)
    {
        var games = plays.Category(ColumnNames.Game);
        var cells = plays.Category(ColumnNames.DownDistance);
        return WithinGroupCorrelation.Pooled(Enumerable.Range(0, plays.Rows)
            .Where(row => did[row] is not null)
            .GroupBy(row => (cells.Codes[row], before.Contains(games[row])))
            .Select(cell => cell.GroupBy(row => games.Codes[row]).Select(game => new GroupCount(game.Count(row => did[row] == true), game.Count())))).Usable;
    }
}
