using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>Passes by the number of men who rush: how often they gained enough, yards, and a last column of the page's own.</summary>
internal static class RushTable
{
    private const int FourRush = 4;

    /// <summary>Passes with charted rushers: all, then three or fewer, four, five or more.</summary>
    public static Situation[] Rows(PlayLog passes)
    {
        var rushers = passes.Number(ColumnNames.Rushers);
        PlayLog Rush(Func<int, bool> wanted) => passes.Where(row => rushers[row] is int men && wanted(men));
        return
        [
            Situation.Total(Rush(_ => true), "All passes"),
            new("3 or fewer", "rushers", Rush(men => men < FourRush)) { Spoken = "against three rushers" },
            new("4", "rushers", Rush(men => men == FourRush)) { Spoken = "against four" },
            new("5 or more", "rushers", Rush(men => men > FourRush)) { Spoken = "against five or more" },
        ];
    }

    /// <param name="study">Gives the level.</param>
    /// <param name="rows">The first is the total, whose rate is the line.</param>
    /// <param name="lastHead">Head of the last column.</param>
    /// <param name="last">Its cell for a row.</param>
    public static Table Of(Study study, IReadOnlyList<Situation> rows, string lastHead, Func<Situation, Cell> last)
    {
        var line = study.Of(rows[0].Plays, ColumnNames.Success, "yes").Value;
        return new Table(
            [
                new Column("Rush", 0, 82),
                new Column("Passes", 82, 32, Align.Right),
                new Column("Gained enough", 130, 106) { Axis = StripAxis.Shares(line is { } rate ? $"all {Figures.Percent(rate)}" : "", line) },
                new Column("Share, likely", 250, 84),
                new Column("Yards", 336, 60, Align.Right),
                new Column(lastHead, 416, 100),
            ],
            [.. rows.Select(row => RowOf(study, row, line, last))])
        { Caption = "Passes by rush" };
    }

    private static TableRow RowOf(Study study, Situation row, double? line, Func<Situation, Cell> last)
    {
        if (row.IsGroup)
        {
            return TableRow.GroupHead(row.Name, row.Remark);
        }

        var enough = study.Of(row.Plays, ColumnNames.Success, "yes", line);
        return new TableRow(
            Cells.Name(row.Name, row.Remark), Cells.Count(row.Plays.Rows), Cells.Strip(enough), Cells.Share(enough), Cells.Figure(Yards.Of(study, row.Plays).Printed), last(row))
        {
            Kind = row.IsTotal ? RowKind.Total : RowKind.Plain,
            Plays = row.IsTotal ? null : study.ListOf(row.Plays),
        };
    }
}
