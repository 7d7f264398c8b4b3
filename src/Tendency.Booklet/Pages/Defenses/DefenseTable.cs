using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>Situations with how often five or more rush against the usual rate, and the fronts and coverages called there.</summary>
internal static class DefenseTable
{
    public const string Deck = "Dot: share of plays with five or more rushers. Bar: likely range. Line: usual rate. Solid dot, bold percent: differs from it.";

    /// <param name="study">Gives the line and the level.</param>
    /// <param name="firstHead">Head of the first column.</param>
    /// <param name="rows">In printing order; their plays hold <see cref="OwnColumns.ExtraRush"/>.</param>
    public static Table Of(Study study, string firstHead, IEnumerable<Situation> rows)
    {
        var usual = ExtraRush.Usual(study);
        return new Table(
            [
                new Column(firstHead, 0, 78),
                new Column("Plays", 78, 24, Align.Right),
                new Column("Five or more rush", 120, 92) { Axis = StripAxis.Shares(usual is { } line ? $"usual {Figures.Percent(line)}" : "", usual) },
                new Column("Share, likely", 224, 84),
                new Column("Top fronts", 318, 86),
                new Column("Top coverages", 414, 102),
            ],
            [.. rows.Select(row => RowOf(study, row))])
        { Caption = "Rush, front and coverage by situation" };
    }

    private static TableRow RowOf(Study study, Situation row)
    {
        if (row.IsGroup)
        {
            return TableRow.GroupHead(row.Name, row.Remark);
        }

        var share = ExtraRush.Of(study, row.Plays);
        return new TableRow(
            Cells.Name(row.Name, row.Remark),
            Cells.Count(row.Plays.Rows),
            Cells.Strip(share),
            Cells.Share(share),
            Cells.Counts(Frequent.Values(row.Plays, ColumnNames.Front)),
            Cells.Counts(Frequent.Values(row.Plays, ColumnNames.Coverage)))
        {
            Kind = row.IsTotal ? RowKind.Total : RowKind.Plain,
            Plays = row.IsTotal ? null : study.ListOf(row.Plays),
        };
    }
}
