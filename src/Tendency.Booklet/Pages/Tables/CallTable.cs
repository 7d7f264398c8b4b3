using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>Situations with their run share against the team's, and what they call there: the table most pages are made of.</summary>
internal static class CallTable
{
    public const string Deck = "Dot: share of plays that were runs. Bar: likely range. Line: team rate. Solid dot, bold percent: differs from it.";

    /// <param name="study">Gives the line and the level.</param>
    /// <param name="firstHead">Head of the first column: "Situation".</param>
    /// <param name="rows">In printing order.</param>
    public static Table Of(Study study, string firstHead, IEnumerable<Situation> rows)
    {
        var schemes = study.Plays.IsCharted(ColumnNames.RunScheme);
        var concepts = study.Plays.IsCharted(ColumnNames.PassConcept);
        var enough = !(schemes && concepts) && study.Plays.IsCharted(ColumnNames.Success);
        var columns = Columns(study, firstHead, schemes, concepts, enough);
        return new Table(columns, [.. rows.Select(row => RowOf(study, row, schemes, concepts, enough))]) { Caption = "Run share by situation" };
    }

    // Without the scheme columns the strip takes their room, and how often plays gained enough stands last.
    private static List<Column> Columns(Study study, string firstHead, bool schemes, bool concepts, bool enough)
    {
        var weighted = study.Weights.IsOn;
        var line = $"team {Figures.Percent(study.Runs.Share ?? 0)}";
        var wide = !schemes && !concepts;
        // The weighted share stands beside the plain one; the strip gives up its room.
        var strip = (wide ? 160 : 106) - (weighted ? 42 : 0);
        var left = weighted ? 110 : 120;
        var columns = new List<Column>
        {
            new(firstHead, 0, 78),
            new("Plays", 78, 24, Align.Right),
            new("Run share", left, strip) { Axis = StripAxis.Shares(line, study.Runs.Share) },
            new("Runs, likely", left + strip + (weighted ? 10 : 14), 84),
        };
        if (weighted)
        {
            columns.Add(new Column(Weighing.Head, left + strip + 98, 52));
        }

        var next = 120d + (wide ? 160 : 106) + 110;
        if (schemes)
        {
            columns.Add(new Column("Top runs", 336, 80));
            next = 430;
        }

        if (concepts)
        {
            columns.Add(new Column("Top passes", schemes ? 430 : 336, schemes ? 86 : 80));
            next = 430;
        }

        if (enough)
        {
            columns.Add(new Column("Gained enough", next, 516 - next));
        }

        return columns;
    }

    private static TableRow RowOf(Study study, Situation row, bool schemes, bool concepts, bool enough)
    {
        if (row.IsGroup)
        {
            return TableRow.GroupHead(row.Name, row.Remark);
        }

        var share = study.RunShare(row.Plays);
        var cells = new List<Cell> { Cells.Name(row.Name, row.Remark), Cells.Count(share.Plays), Cells.Strip(share), Cells.Share(share) };
        if (study.Weights.IsOn)
        {
            cells.Add(Weighing.Cell(study.Weighted(row.Plays, ColumnNames.Call, "run"), study.WeightedRuns.Share));
        }

        if (schemes)
        {
            cells.Add(TopCell(row.Plays, ColumnNames.RunScheme));
        }

        if (concepts)
        {
            cells.Add(TopCell(row.Plays, ColumnNames.PassConcept));
        }

        if (enough)
        {
            cells.Add(Cells.Share(study.Of(row.Plays, ColumnNames.Success, "yes")));
        }

        return new TableRow(cells) { Kind = row.IsTotal ? RowKind.Total : RowKind.Plain, Plays = row.IsTotal ? null : study.ListOf(row.Plays) };
    }

    private static Cell TopCell(PlayLog plays, string column) => Cells.Counts(Frequent.Values(plays, column));
}
