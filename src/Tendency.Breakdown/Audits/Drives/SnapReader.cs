using System.Globalization;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Takes what the drive walk needs from a row of the play log.</summary>
internal static class SnapReader
{
    public static WalkedSnap Read(AuditedCharts charts, int row)
    {
        var log = charts.Log;
        var gain = log.Number(ColumnNames.Gain)[row];
        var scores = gain is not null && gain == log.Number(ColumnNames.YardsToGoal)[row] && log.Category(ColumnNames.Result)[row] is "rush" or "complete" or "scramble";
        var isGoal = charts.Raw(row, ColumnNames.Distance) is ['g' or 'G', ..];
        return new WalkedSnap(
            row,
            log.Number(ColumnNames.Play)[row] ?? 0,
            int.TryParse(log.Category(ColumnNames.Down)[row], NumberStyles.None, CultureInfo.InvariantCulture, out var down) ? down : null,
            log.Number(ColumnNames.Distance)[row],
            isGoal,
            log.Number(ColumnNames.YardsToGoal)[row],
            gain)
        {
            Offense = log.Category(ColumnNames.Offense)[row],
            Series = log.Number(ColumnNames.Series)[row],
            Quarter = log.Number(ColumnNames.Quarter)[row],
            Clock = log.Number(ColumnNames.Clock)[row],
            Call = charts.Calls[row],
            Result = log.Category(ColumnNames.Result)[row],

            // Where touchdowns are not charted the gain tells of them.
            Touchdown = log.Category(ColumnNames.Touchdown)[row] == "yes" || (scores && !log.Has(ColumnNames.Touchdown)),
            PenaltyOn = log.Category(ColumnNames.PenaltyOn)[row],
            PenaltyYards = log.Number(ColumnNames.PenaltyYards)[row],
            Effect = log.Category(ColumnNames.PenaltyEffect)[row],
        };
    }
}
