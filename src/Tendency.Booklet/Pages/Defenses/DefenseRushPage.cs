using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>How many come on a pass, from where, and does it help them?</summary>
internal static class DefenseRushPage
{
    private const int FourRush = 4;

    public static Page? Compose(Study study)
    {
        var passes = ExtraRush.Plays(study).Where(ColumnNames.Call, "pass");
        var rushers = passes.Number(ColumnNames.Rushers);
        PlayLog Rush(Func<int, bool> wanted) => passes.Where(row => rushers[row] is int men && wanted(men));
        var charted = Rush(_ => true);
        if (charted.Rows == 0)
        {
            return null;
        }

        var five = study.Of(charted, ExtraRush.Name, "yes");
        Situation[] rows =
        [
            Situation.Total(charted, "All passes"),
            new("3 or fewer", "rushers", Rush(men => men < FourRush)),
            new("4", "rushers", Rush(men => men == FourRush)),
            new("5 or more", "rushers", Rush(men => men > FourRush)),
        ];
        return new Page("rush", "Rush", five.TooFew
            ? $"Too few passes to read a rush: {Figures.CountOf(five)} met five or more."
            : $"Five or more rush on {Figures.Percent(five)} of passes: {Figures.CountOf(five)}, likely {Figures.Range(five)}.")
        {
            Deck = "Dot: share of passes that gained enough against the rush. Bar: likely range. Line: all passes. Solid dot, bold percent: differs from it.",
            Blocks = [Outcomes(study, rows), .. From(study)],
        };
    }

    private static Table Outcomes(Study study, Situation[] rows)
    {
        var line = study.Of(rows[0].Plays, ColumnNames.Success, "yes").Value;
        return new Table(
            [
                new Column("Rush", 0, 82),
                new Column("Passes", 82, 32, Align.Right),
                new Column("Gained enough", 130, 106) { Axis = StripAxis.Shares(line is { } rate ? $"all {Figures.Percent(rate)}" : "", line) },
                new Column("Share, likely", 250, 84),
                new Column("Yards", 336, 60, Align.Right),
                new Column("Top coverages", 416, 100),
            ],
            [.. rows.Select(row =>
            {
                var enough = study.Of(row.Plays, ColumnNames.Success, "yes", line);
                return new TableRow(
                    Cells.Name(row.Name, row.Remark), Cells.Count(row.Plays.Rows), Cells.Strip(enough), Cells.Share(enough),
                    Cells.Figure(Yards.Of(study, row.Plays).Printed), Cells.Counts(Frequent.Values(row.Plays, ColumnNames.Coverage)))
                { Kind = row.IsTotal ? RowKind.Total : RowKind.Plain, Plays = row.IsTotal ? null : study.ListOf(row.Plays) };
            })])
        { Caption = "Passes by rush" };
    }

    private static IEnumerable<Block> From(Study study)
    {
        var sided = study.Plays.Where(ColumnNames.PressureTo, "to back", "away");
        if (sided.Rows < Share.FewestPlays)
        {
            yield break;
        }

        yield return new Heading("Where the extra rusher comes from", $"{Words.Figured(sided.Rows, "play")} with the back offset");
        yield return DirectionTable.Of(study, "Plays", "From the back's side", ColumnNames.PressureTo, "to back",
            ((string Name, PlayLog Plays)[])[("1st down", sided.Where(ColumnNames.Down, "1")), ("2nd down", sided.Where(ColumnNames.Down, "2")), ("3rd down", sided.Where(ColumnNames.Down, "3"))] is var downs
                ? downs.Select(down => new Situation(down.Name, "", down.Plays)).Concat(DirectionTable.By(sided, ColumnNames.Front, 4)).Prepend(Situation.Total(sided, "All"))
                : [], 516);
    }
}
