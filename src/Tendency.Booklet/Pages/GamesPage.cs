using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>Is it the same offense every week?</summary>
internal static class GamesPage
{
    public static Page? Compose(Study study)
    {
        var games = study.Games.Select(game => (Game: game, Plays: study.Plays.Where(ColumnNames.Game, game))).ToArray();
        return new Page("games", "Game by game", Finding(study, games))
        {
            Deck = "Dot and bar: each game's rate and the likely range of that game alone. Line: all games together. Solid dot, bold percent: that game differs.",
            Blocks = [Table(study, games), .. OneGame(study), .. Calls(study, games)],
        };
    }

    private static string Finding(Study study, (string Game, PlayLog Plays)[] games)
    {
        if (games.Length == 1)
        {
            return "One game, no spread to show.";
        }

        var apart = games.Where(game => Runs(study, game.Plays).Differs).Select(game => game.Game).ToArray();
        var rates = games.Select(game => Runs(study, game.Plays)).Where(run => run.Plays >= Share.FewestPlays).Select(run => run.Value!.Value).ToArray();
        var span = rates.Length < 2 ? "" : $"They ran on {Figures.Range(new Inference.Intervals.Interval(rates.Min(), rates.Max()))} of plays a game.";
        if (apart.Length == 0)
        {
            return Headline.Of(span, "No game's run share stands apart from the rest.");
        }

        // Where most games stand apart there is no rest to name them against.
        return apart.Length == games.Length ? Headline.Of(span, "Every game stands apart: no one run share speaks for them all.")
            : apart.Length * 2 > games.Length ? Headline.Of(span, $"{Words.Capital(Words.Number(apart.Length))} of {Words.Counted(games.Length, "game")} stand apart from the share of all.")
            : Headline.First($"{span} Apart from the rest: {Words.Join(apart)}.", $"Run share stood apart in {Words.Counted(apart.Length, "game")}.");
    }

    private static Share Runs(Study study, PlayLog game) => study.InGame(CrossTab.Share(game, ColumnNames.Call, "run"), study.Runs.Share);

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
        var worked = CrossTab.Share(study.Plays, ColumnNames.Success, "yes").Share;
        if (enough)
        {
            columns.Add(new Column("Gained enough", 336, 84) { Axis = StripAxis.Shares(worked is { } line ? $"all {Figures.Percent(line)}" : "", worked) });
            columns.Add(new Column("Share, likely", 430, 86));
        }

        var rows = games.Select(game =>
        {
            var run = Runs(study, game.Plays);
            var gained = study.InGame(CrossTab.Share(game.Plays, ColumnNames.Success, "yes"), worked);
            Cell[] cells = [Cells.Name($"{study.ShortGames[game.Game]} {game.Game}", Dated(study, game.Game)), Cells.Count(run.Plays), Cells.Strip(run), Cells.Share(run)];
            return new TableRow(enough ? [.. cells, Cells.Strip(gained), Cells.Share(gained)] : cells);
        });
        return new Table(columns, [.. rows]) { Caption = "Game by game" };
    }

    internal static string Dated(Study study, string game) => study.Week.Charts.FirstOrDefault(chart => chart.Game == game) is { } chart
        ? string.Join(", ", chart.Tags.Prepend(chart.Date is { } date ? Footprint.Day(date) : "").Where(word => word.Length > 0))
        : "";

    private static IEnumerable<Block> OneGame(Study study)
    {
        if (study.Games.Count < 2)
        {
            yield return new Paragraph(RichText.Strong("One game, no spread to show.") + " Every range in this booklet speaks of this one game plan; another plan would not show up in it.");
        }
    }

    // What changes from plan to plan: looks, calls, and what they were answering.
    private static IEnumerable<Block> Calls(Study study, (string Game, PlayLog Plays)[] games)
    {
        (string Head, string Column)[] kinds =
            [("Formations", ColumnNames.Formation), ("Runs", ColumnNames.RunScheme), ("Passes", ColumnNames.PassConcept), ("Fronts they met", ColumnNames.Front)];
        var charted = kinds.Where(kind => study.Plays.IsCharted(kind.Column)).ToArray();
        if (charted.Length == 0)
        {
            yield break;
        }

        const double First = 104;
        var width = (516 - First) / charted.Length;
        yield return new Heading("What they called, and against what", "the three most frequent, counts of plays");
        yield return new Table(
            [new Column("Game", 0, First - 8), .. charted.Select((kind, i) => new Column(kind.Head, First + (i * width), width - 14))],
            [.. games.Select(game => new TableRow([Cells.Name($"{study.ShortGames[game.Game]} {game.Game}"), .. charted.Select(kind => Cells.Counts(Frequent.Values(game.Plays, kind.Column)))]))])
        { Caption = "Calls by game" };
    }
}
