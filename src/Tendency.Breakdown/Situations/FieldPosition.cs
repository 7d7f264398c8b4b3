using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Zones of the field by yards to the goal line.</summary>
internal static class FieldPosition
{
    public static CategoryColumn[] Zones(PlayLog log, Boundaries boundaries)
    {
        var toGoal = log.Number(YardsToGoal);
        return
        [
            DimensionColumn.Create(
                FieldZone,
                log.Rows,
                ["backed up", "coming out", "open field", "fringe", "red zone", "tight red", "goal line"],
                row => toGoal[row] is int yards ? Zone(yards, boundaries) : ""),
        ];
    }

    public static string Zone(int yards, Boundaries boundaries) =>
        yards <= boundaries.GoalLineMost ? "goal line" :
        yards <= boundaries.TightRedMost ? "tight red" :
        yards <= boundaries.RedZoneMost ? "red zone" :
        yards <= boundaries.FringeMost ? "fringe" :
        yards <= boundaries.OpenFieldMost ? "open field" :
        yards <= boundaries.ComingOutMost ? "coming out" : "backed up";
}
