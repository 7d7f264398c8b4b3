using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>Which of two ways something goes, row by row, against an even split.</summary>
internal static class DirectionTable
{
    /// <param name="study">Gives the level.</param>
    /// <param name="head">Head of the first column.</param>
    /// <param name="question">Head of the strip: "Runs away from him".</param>
    /// <param name="column">A column of two ways: run_to.</param>
    /// <param name="value">The way asked about: away.</param>
    /// <param name="rows">Plays in which the way is charted count.</param>
    /// <param name="width">252 for half the page, 516 for the whole.</param>
    public static Table Of(Study study, string head, string question, string column, string value, IEnumerable<Situation> rows, double width)
    {
        var half = width < 400;
        Column[] columns = half
            ?
            [
                new(head, 0, 78),
                new(question, 84, 76) { Axis = StripAxis.Shares("even", .5) },
                new("Share, likely", 172, 80),
            ]
            :
            [
                new(head, 0, 120),
                new("", 128, 40, Align.Right),
                new(question, 190, 160) { Axis = StripAxis.Shares("even split", .5) },
                new("Share, likely", 368, 148),
            ];
        return new Table(columns, [.. rows.Select(row => RowOf(study, row, column, value, half))]) { Caption = question };
    }

    private static TableRow RowOf(Study study, Situation row, string column, string value, bool half)
    {
        if (row.IsGroup)
        {
            return TableRow.GroupHead(row.Name, row.Remark);
        }

        var share = study.Of(row.Plays, column, value, .5);
        var figures = new ShareCell(share) { Form = half ? ShareForm.Stacked : ShareForm.OneLine };
        Cell[] cells = half
            ? [Cells.Name(row.Name, row.Remark), Cells.Strip(share), figures]
            : [Cells.Name(row.Name, row.Remark), Cells.Count(share.Plays), Cells.Strip(share), figures];
        return new TableRow(cells) { Kind = row.IsTotal ? RowKind.Total : RowKind.Plain, Plays = study.ListOf(row.Plays.Where(column, value)) };
    }

    /// <summary>The rows of one column's most frequent values, those with at least five plays.</summary>
    public static IEnumerable<Situation> By(PlayLog plays, string column, int most, Func<string, string>? name = null) =>
        Breakdown.Counts.CrossTab.Values(plays, column).Where(value => value.Count >= Share.FewestPlays).Take(most)
            .Select(value => new Situation((name ?? Words.Title)(value.Value), "", plays.Where(column, value.Value)));
}
