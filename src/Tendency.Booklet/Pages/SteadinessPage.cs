using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages;

/// <summary>Which habits held from game to game, and which moved?</summary>
internal static class SteadinessPage
{
    private const int MostPanels = 15;
    private const int MostLabelled = 5;
    private const int FewestForAChange = 4;

    public static Page? Compose(Study study)
    {
        var habits = study.Steadiness.OrderByDescending(habit => habit.Moved).ThenBy(LuckOf).Take(MostPanels).ToArray();
        if (habits.Length == 0)
        {
            return null;
        }

        return new Page("steadiness", "Steadiness", Finding(habits))
        {
            Deck = "Dot and bar: each game's rate and the likely range of that game alone, in order. Gray band: all games together. Moved: luck alone spreads a steady habit this far less than one time in twenty.",
            Blocks =
            [
                new SmallMultiples([.. habits.Select(habit => PanelOf(study, habit))]),
                .. InWords(habits),
                Paragraph.Note(Words.Sentences(
                    $"Games left to right: {string.Join(", ", study.Games.Select(game => $"{study.ShortGames[game]} {game}"))}.",
                    study.Games.Count <= MostLabelled ? "Counts under each dot; no dot under 5 plays." : "No dot under 5 plays.",
                    study.Games.Count < FewestForAChange && !habits.Any(habit => habit.Moved) ? $"It takes {Words.Number(FewestForAChange)} games to say after which one a habit changed." : "",
                    $"{Words.Capital(Words.Number(habits.Length))} habits were checked: expect about one “moved” in twenty by luck.")),
            ],
        };
    }

    private static string Finding(Steadiness[] habits)
    {
        var moved = habits.Where(habit => habit.Moved).ToArray();
        if (moved.Length == 0)
        {
            return $"Every habit held: none of {Words.Number(habits.Length)} moved farther than luck moves it.";
        }

        var names = moved.Take(3).Select(habit => habit is { Changed: true, ChangeAfterGame: int after } ? $"{habit.Habit.Name}: changed after game {after}" : $"{habit.Habit.Name}: moved").ToArray();
        var rest = habits.Length - moved.Length;
        var others = rest == 0 ? "No habit held." : $"The other {Words.Number(rest)} held.";
        var held = rest == 0 ? "No habit held." : $"{Words.Capital(Words.Number(rest))} of {Words.Number(habits.Length)} habits held.";
        return Headline.First(
            Together(moved) is { Length: > 0 } together ? $"{together} {others}" : "",
            $"{string.Join("; ", names)}. {others}",
            $"{names[0]}. {held}",
            $"{Words.Capital(Words.Counted(moved.Length, "habit"))} moved. {others}");
    }

    /// <summary>"They changed after game 3: run share; run, 1st &amp; 10." where several habits changed at once; else empty.</summary>
    private static string Together(Steadiness[] moved)
    {
        const int MostNamed = 3;
        var after = moved.Where(habit => habit.Changed).Select(habit => habit.ChangeAfterGame).Distinct().ToArray();
        if (moved.Length < 2 || moved.Any(habit => !habit.Changed) || after is not [int game])
        {
            return "";
        }

        var named = moved.Take(MostNamed).Select(habit => char.ToLowerInvariant(habit.Habit.Name[0]) + habit.Habit.Name[1..]);
        return $"They changed after game {game}: {string.Join("; ", named)}{(moved.Length > MostNamed ? $" and {moved.Length - MostNamed} more" : "")}.";
    }

    /// <summary>Each habit that moved in words: before, since, and how often luck alone does it.</summary>
    private static IEnumerable<Block> InWords(Steadiness[] habits)
    {
        const int MostSaid = 6;
        var moved = habits.Where(habit => habit.Moved).ToArray();
        if (moved.Length > 0)
        {
            yield return new Paragraph(
                RichText.Strong("What moved. ") + string.Join("; ", moved.Take(MostSaid).Select(habit => $"{habit.Habit.Name}: {habit.Verdict}"))
                + (moved.Length > MostSaid ? $"; and {moved.Length - MostSaid} more." : ".")
                + (habits.All(habit => habit.ChangeAfter is null) ? " Three games can not show when: it takes four." : ""),
                TextStyle.Deck);
        }
    }

    private static Panel PanelOf(Study study, Steadiness habit)
    {
        var all = study.Of(habit.Total, PlaysOf(study, habit), habit.Habit.Column, habit.Habit.Value.TrimStart('!'));
        var names = habit.Games.Select(game => game.Game).ToArray();
        var games = habit.Games.Select(game => study.InGame(game.Tally, all.Value)).ToArray();
        return new Panel(habit.Habit.Name, Figures.Percent(all), [GamePlot.Of(study, all, games, names, names.Length <= MostLabelled)])
        {
            Subtitle = habit.Changed ? $"{Verdict(habit)}, luck {Luck(LuckOf(habit))}" : $"{Verdict(habit)}, {Luck(LuckOf(habit))} by luck alone",
            Marked = habit.Moved,
        };
    }

    private static PlayLog PlaysOf(Study study, Steadiness habit)
    {
        var plays = study.Plays.Where(ColumnNames.Game, [.. habit.Games.Select(game => game.Game)]);
        foreach (var condition in habit.Habit.When)
        {
            var holds = condition.Rows(plays);
            plays = plays.Where(row => holds[row]);
        }

        return plays;
    }

    private static string Verdict(Steadiness habit) => habit switch
    {
        { Changed: true, ChangeAfterGame: int after } => $"changed after game {after}",
        { Moved: true } => "moved",
        _ => "steady",
    };

    /// <summary>The chance the verdict was reached by: the one printed and sorted by.</summary>
    private static double LuckOf(Steadiness habit) => habit.Changed ? habit.ChangeP ?? 1 : habit.SpreadP;

    private static string Luck(double chance) => chance < .01 ? "under 1%" : Figures.Percent(chance);
}
