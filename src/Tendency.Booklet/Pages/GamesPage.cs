using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>Is it the same offense every week?</summary>
internal static class GamesPage
{
    private const int MostPanels = 9;
    private const int MostLabelled = 5;

    public static Page? Compose(Study study)
    {
        var games = study.Games.Select(game => (Game: game, Plays: study.Plays.Where(ColumnNames.Game, game))).ToArray();
        return new Page("games", "Game by game", Finding(study, games))
        {
            Deck = "Dot and bar: each game's rate and likely range. Line: all games together. Solid dot, bold percent: that game differs.",
            Blocks = [Table(study, games), .. Habits(study)],
        };
    }

    private static string Finding(Study study, (string Game, PlayLog Plays)[] games)
    {
        if (games.Length == 1)
        {
            return "One game, no spread to show.";
        }

        var apart = games.Where(game => study.RunShare(game.Plays).Differs).Select(game => game.Game).ToArray();
        var rates = games.Select(game => study.RunShare(game.Plays)).Where(run => run.Plays >= Share.FewestPlays).Select(run => run.Value!.Value).ToArray();
        var span = rates.Length < 2 ? "" : $"They ran on {Figures.Range(new Inference.Intervals.Interval(rates.Min(), rates.Max()))} of plays a game.";
        return apart.Length == 0
            ? Headline.Of(span, $"No game's run share stands apart from the rest.")
            : Headline.First($"{span} Apart from the rest: {Words.Join(apart)}.", $"Run share stood apart in {Words.Counted(apart.Length, "game")}.");
    }

    private static Table Table(Study study, (string Game, PlayLog Plays)[] games)
    {
        var enough = study.Plays.IsCharted(ColumnNames.Success);
        var columns = new List<Column>
        {
            new("Game", 0, 104),
            new("Plays", 104, 28, Align.Right),
            new("Run share", 148, 84) { Axis = StripAxis.Shares($"all {Figures.Percent(study.Runs.Share ?? 0)}", study.Runs.Share) },
            new("Runs, likely", 242, 80),
        };
        var worked = study.Of(study.Plays, ColumnNames.Success, "yes").Value;
        if (enough)
        {
            columns.Add(new Column("Gained enough", 336, 84) { Axis = StripAxis.Shares(worked is { } line ? $"all {Figures.Percent(line)}" : "", worked) });
            columns.Add(new Column("Share, likely", 430, 86));
        }

        var rows = games.Select(game =>
        {
            var run = study.RunShare(game.Plays);
            var gained = study.Of(game.Plays, ColumnNames.Success, "yes", worked);
            Cell[] cells = [Cells.Name($"{study.ShortGames[game.Game]} {game.Game}", Dated(study, game.Game)), Cells.Count(run.Plays), Cells.Strip(run), Cells.Share(run)];
            return new TableRow(enough ? [.. cells, Cells.Strip(gained), Cells.Share(gained)] : cells);
        });
        return new Table(columns, [.. rows]) { Caption = "Game by game" };
    }

    private static string Dated(Study study, string game) => study.Week.Charts.FirstOrDefault(chart => chart.Game == game) is { } chart
        ? string.Join(", ", chart.Tags.Prepend(chart.Date is { } date ? Footprint.Day(date) : "").Where(word => word.Length > 0))
        : "";

    private static IEnumerable<Block> Habits(Study study)
    {
        if (study.Games.Count < 2)
        {
            yield return new Paragraph(RichText.Strong("One game, no spread to show.") + " Every range in this booklet speaks of this one game plan; another plan would not show up in it.");
            yield break;
        }

        var panels = All(study).Where(habit => habit.Plays.Rows >= 2 * Share.FewestPlays).Take(MostPanels).Select(habit => PanelOf(study, habit)).ToArray();
        yield return new Heading("Main habits, game by game", study.Games.Count <= MostLabelled ? "Counts under each dot. Gray band: likely range of all games together." : "Gray band: likely range of all games together.");
        yield return new SmallMultiples(panels);
    }

    private sealed record Habit(string Name, PlayLog Plays, string Column, string Value);

    private static IEnumerable<Habit> All(Study study)
    {
        var plays = study.Plays;
        yield return new Habit("Run, 1st & 10", plays.Where(ColumnNames.DownDistance, "1 & 10"), ColumnNames.Call, "run");
        yield return new Habit("Run, 2nd and long", plays.Where(ColumnNames.DownDistance, "2 & long", "2 & extra long"), ColumnNames.Call, "run");
        yield return new Habit("Run, back weak", plays.Where(ColumnNames.BackSide, "weak"), ColumnNames.Call, "run");
        yield return new Habit("Run, back strong", plays.Where(ColumnNames.BackSide, "strong"), ColumnNames.Call, "run");
        yield return new Habit("Runs away from back", plays.Where(ColumnNames.RunTo, "to back", "away"), ColumnNames.RunTo, "away");
        yield return new Habit("Slide away from back", plays.Where(ColumnNames.SlideTo, "to back", "away"), ColumnNames.SlideTo, "away");
        yield return new Habit("Third downs made", plays.Where(ColumnNames.Down, "3"), ColumnNames.Success, "yes");
        yield return new Habit("Gap schemes", plays.Where(row => plays.Category(ColumnNames.RunFamily)[row].Length > 0), ColumnNames.RunFamily, "gap");
        yield return new Habit("Run share", plays, ColumnNames.Call, "run");
    }

    private static Panel PanelOf(Study study, Habit habit)
    {
        var all = study.Of(habit.Plays, habit.Column, habit.Value);
        var games = study.ByGame(habit.Plays, habit.Column, habit.Value, all.Value);
        return new Panel(habit.Name, $"{Figures.Percent(all)} of {all.Plays}", [GamePlot.Of(study, all, games, study.Games.Count <= MostLabelled)]);
    }
}
