using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Situations;

namespace Tendency.Output;

/// <summary>What changed from game to game, in words, for a reader at the terminal; never in csv or json.</summary>
internal static class DriftText
{
    // Whole percents are printed: 999 draws give a p-value of 5% to within a point.
    private const int Draws = 999;

    // A plan is made of situations from eight plays on; of many shares the largest are followed.
    private const int FewestPlays = 8;
    private const int MostFollowed = 200;
    private const int MostShown = 12;

    // So many games show that a share moved, and one more shows when.
    private const int FewestGames = 3;

    /// <summary>Follows the shares of a frequency table; "" under three games, or where nothing can be followed.</summary>
    /// <param name="by">What was counted by; games themselves part nothing here.</param>
    public static string Of(PlayLog plays, IReadOnlyList<string> by, string of, int seed)
    {
        var games = plays.Category(ColumnNames.Game).UsedLevels().Length;
        if (games < FewestGames || of == ColumnNames.Game)
        {
            return "";
        }

        string[] names = [.. by.Where(name => name != ColumnNames.Game)];
        var followed = CrossTab.Count(plays, names, of)
            .Where(row => row.Tally.Plays >= FewestPlays)
            .GroupBy(row => string.Join('\n', row.By), StringComparer.Ordinal)
            .SelectMany(Told)
            .OrderByDescending(row => row.Tally.Plays).Take(MostFollowed)
            .Select(row => (Row: row, Steady: SteadyHabits.Follow(plays, HabitOf(names.Zip(row.By), of, row.Outcome), seed, Draws)))
            .Where(share => share.Steady is not null)
            .ToArray();
        if (followed.Length == 0)
        {
            return "";
        }

        var moved = followed.Where(share => share.Steady!.Moved).OrderBy(share => Math.Min(share.Steady!.SpreadP, share.Steady.ChangeP ?? 1)).ToArray();
        var text = new StringBuilder();
        foreach (var (row, steady) in moved.Take(MostShown))
        {
            _ = text.Append($"{SituationWords.Of(names.Zip(row.By, (name, value) => new TellCondition(name, value)))}: {SituationWords.Outcome(of, row.Outcome)} {steady!.Verdict}\n");
        }

        return text.Append(moved.Length > MostShown ? $"and {moved.Length - MostShown} more moved\n" : "")
            .Append($"{followed.Length} {(followed.Length == 1 ? "share" : "shares")} followed over {games} games: {(moved.Length == 0 ? "none moved farther than luck moves it" : $"{moved.Length} moved, and luck alone moves about one in twenty")}.")
            .Append(games == FewestGames ? " Three games can not show when.\n" : "\n")
            .ToString();
    }

    /// <summary>"changed after game 3: 90% before, 50% since (1% by luck alone)" when a tell did; "" when it held or can not be followed.</summary>
    public static string Of(PlayLog plays, Tell tell, string of, int seed)
    {
        var steady = SteadyHabits.Follow(plays, HabitOf(tell.Conditions.Select(condition => (condition.Name, condition.Value)), of, tell.Outcome), seed, Draws);
        return steady is { Moved: true } ? steady.Verdict : "";
    }

    /// <summary>Of two outcomes one says it all.</summary>
    private static IEnumerable<CrossTabRow> Told(IEnumerable<CrossTabRow> combination) => combination.ToArray() is [var one, _] ? [one] : combination;

    private static Habit HabitOf(IEnumerable<(string Name, string Value)> when, string of, string outcome) =>
        new(outcome, [.. when.Select(condition => new Condition(condition.Name, [condition.Value]))], of, outcome);
}
