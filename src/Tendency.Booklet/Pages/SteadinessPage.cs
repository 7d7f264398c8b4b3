using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages;

/// <summary>Which habits held from game to game, and which moved?</summary>
internal static class SteadinessPage
{
    private const int MostPanels = 15;
    private const int MostLabelled = 5;

    public static Page? Compose(Study study)
    {
        var habits = study.Steadiness.OrderByDescending(habit => habit.Moved).ThenBy(LuckOf).Take(MostPanels).ToArray();
        if (habits.Length == 0)
        {
            return null;
        }

        return new Page("steadiness", "Steadiness", Finding(habits))
        {
            Deck = "Dot and bar: each game's rate and likely range, in order. Gray band: all games together. Moved: luck alone spreads a steady habit this far less than one time in twenty.",
            Blocks =
            [
                new SmallMultiples([.. habits.Select(habit => PanelOf(study, habit))]),
                Paragraph.Note(Words.Sentences(
                    $"Games left to right: {string.Join(", ", study.Games.Select(game => $"{study.ShortGames[game]} {game}"))}.",
                    study.Games.Count <= MostLabelled ? "Counts under each dot; no dot under 5 plays." : "No dot under 5 plays.",
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

        var names = moved.Take(3).Select(habit => habit is { Changed: true, ChangeAfter: int after } ? $"{habit.Habit.Name}: changed after game {after}" : $"{habit.Habit.Name}: moved").ToArray();
        var rest = habits.Length - moved.Length;
        return Headline.First(
            $"{string.Join("; ", names)}. The other {Words.Number(rest)} held.",
            $"{names[0]}. {Words.Capital(Words.Number(rest))} of {Words.Number(habits.Length)} habits held.",
            $"{Words.Capital(Words.Counted(moved.Length, "habit"))} moved; the other {Words.Number(rest)} held.");
    }

    private static Panel PanelOf(Study study, Steadiness habit)
    {
        var all = study.Of(habit.Total);
        var names = habit.Games.Select(game => game.Game).ToArray();
        var games = habit.Games.Select(game => study.Of(game.Tally, all.Value)).ToArray();
        return new Panel(habit.Habit.Name, Figures.Percent(all), [GamePlot.Of(study, all, games, names, names.Length <= MostLabelled)])
        {
            Subtitle = $"{Verdict(habit)}, {Luck(LuckOf(habit))} by luck alone",
            Marked = habit.Moved,
        };
    }

    private static string Verdict(Steadiness habit) => habit switch
    {
        { Changed: true, ChangeAfter: int after } => $"changed after game {after}",
        { Moved: true } => "moved",
        _ => "steady",
    };

    /// <summary>The chance the verdict was reached by: the one printed and sorted by.</summary>
    private static double LuckOf(Steadiness habit) => habit.Changed ? habit.ChangeP ?? 1 : habit.SpreadP;

    private static string Luck(double chance) => chance < .01 ? "under 1%" : Figures.Percent(chance);
}
