using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
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
    /// <param name="compact">One line a row, without what they call most.</param>
    public static Table Of(Study study, string head, string outcome, string column, PlayLog whole, IEnumerable<Situation> rows, bool compact = false)
    {
        var charted = whole.IsCharted(column);
        var rate = study.Of(whole, column, "yes").Value;
        var called = !compact && (whole.IsCharted(ColumnNames.RunScheme) || whole.IsCharted(ColumnNames.PassConcept));
        var wide = compact ? 112 : 72;
        var second = compact ? 322 : 262;

        // The weighted run share takes the room of its strip; a compact table has none to give.
        var weighted = study.Weights.IsOn && !compact;
        var columns = new List<Column> { new(head, 0, 74), new("Plays", 74, 24, Align.Right) };
        columns.AddRange(weighted
            ? [new Column("Runs, likely", 104, 78), new Column(Weighing.Head, 186, 72)]
            :
            [
                new Column("Runs", 110, 62) { Axis = StripAxis.Shares($"team {Figures.Percent(study.Runs.Share ?? 0)}", study.Runs.Share) },
                new Column("", compact ? 186 : 180, wide),
            ]);
        if (charted)
        {
            columns.Add(new Column(outcome, second, 62) { Axis = StripAxis.Shares(rate is { } line ? $"all {Figures.Percent(line)}" : "", rate) });
            columns.Add(new Column("", second + (compact ? 76 : 70), wide));
        }

        if (called)
        {
            columns.Add(new Column("Most called", charted ? 414 : 300, charted ? 102 : 140));
        }

        return new Table(columns, [.. rows.Select(row => RowOf(study, weighted, compact && !row.IsGroup ? row with { Remark = "" } : row, column, rate, charted, called, compact ? ShareForm.OneLine : ShareForm.Stacked))]) { Caption = $"Runs and {outcome}" };
    }

    private static TableRow RowOf(Study study, bool weighted, Situation row, string column, double? rate, bool charted, bool called, ShareForm form)
    {
        if (row.IsGroup)
        {
            return TableRow.GroupHead(row.Name, row.Remark);
        }

        var runs = study.RunShare(row.Plays);
        var cells = new List<Cell> { Cells.Name(row.Name, row.Remark), Cells.Count(runs.Plays) };
        cells.AddRange(weighted
            ? [Cells.Share(runs), Weighing.Cell(study.Weighted(row.Plays, ColumnNames.Call, "run"), study.WeightedRuns.Share)]
            : [Cells.Strip(runs), new ShareCell(runs) { Form = form }]);
        if (charted)
        {
            var worked = study.Of(row.Plays, column, "yes", rate);
            cells.AddRange([Cells.Strip(worked), new ShareCell(worked) { Form = form }]);
        }

        if (called)
        {
            cells.Add(Cells.Counts(Frequent.Calls(row.Plays)));
        }

        return new TableRow(cells) { Kind = row.IsTotal ? RowKind.Total : RowKind.Plain, Plays = row.IsTotal ? null : study.ListOf(row.Plays) };
    }
}
