using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>Situations with two strips: how often they run, and how often it came off; then what they call most.</summary>
internal static class TwoShareTable
{
    /// <param name="study">Gives the run line and the level.</param>
    /// <param name="head">Head of the first column.</param>
    /// <param name="outcome">Head of the second strip: "Converted".</param>
    /// <param name="column">Its column: success.</param>
    /// <param name="whole">The plays whose rate is its line.</param>
    /// <param name="rows">In printing order.</param>
    public static Table Of(Study study, string head, string outcome, string column, PlayLog whole, IEnumerable<Situation> rows)
    {
        var charted = whole.IsCharted(column);
        var rate = study.Of(whole, column, "yes").Value;
        var called = whole.IsCharted(ColumnNames.RunScheme) || whole.IsCharted(ColumnNames.PassConcept);
        var columns = new List<Column>
        {
            new(head, 0, 74),
            new("Plays", 74, 24, Align.Right),
            new("Runs", 110, 62) { Axis = StripAxis.Shares($"team {Figures.Percent(study.Runs.Share ?? 0)}", study.Runs.Share) },
            new("", 180, 72),
        };
        if (charted)
        {
            columns.Add(new Column(outcome, 262, 62) { Axis = StripAxis.Shares(rate is { } line ? $"all {Figures.Percent(line)}" : "", rate) });
            columns.Add(new Column("", 332, 72));
        }

        if (called)
        {
            columns.Add(new Column("Most called", charted ? 414 : 300, charted ? 102 : 140));
        }

        return new Table(columns, [.. rows.Select(row => RowOf(study, row, column, rate, charted, called))]) { Caption = $"Runs and {outcome}" };
    }

    private static TableRow RowOf(Study study, Situation row, string column, double? rate, bool charted, bool called)
    {
        if (row.IsGroup)
        {
            return TableRow.GroupHead(row.Name, row.Remark);
        }

        var runs = study.RunShare(row.Plays);
        var cells = new List<Cell> { Cells.Name(row.Name, row.Remark), Cells.Count(runs.Plays), Cells.Strip(runs), Cells.Share(runs) };
        if (charted)
        {
            var worked = study.Of(row.Plays, column, "yes", rate);
            cells.AddRange([Cells.Strip(worked), Cells.Share(worked)]);
        }

        if (called)
        {
            cells.Add(Cells.Counts(Shares.TopCalls(row.Plays)));
        }

        return new TableRow(cells) { Kind = row.IsTotal ? RowKind.Total : RowKind.Plain, Plays = row.IsTotal ? null : study.ListOf(row.Plays) };
    }
}
