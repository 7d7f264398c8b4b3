using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Down and distance in the words a staff meets over.</summary>
internal static class DownAndDistance
{
    public static readonly IReadOnlyList<string> DistanceBands = ["short", "medium", "long", "extra long"];

    /// <summary>First and ten and first and goal stand alone; every other down carries its distance band. Second to fourth and goal keep their band.</summary>
    public static CategoryColumn[] Bands(PlayLog log, Boundaries boundaries)
    {
        var downs = log.Category(Down);
        var distances = log.Number(Distance);
        var toGoal = log.Number(YardsToGoal);
        string Group(int row) => downs[row] is "" or "try" || distances[row] is not int yards
            ? ""
            : $"{downs[row]} & {Situation(downs[row], yards, toGoal[row], boundaries)}";
        return
        [
            DimensionColumn.Create(DistanceBand, log.Rows, DistanceBands, row => distances[row] is int yards ? Band(yards, boundaries) : ""),
            DimensionColumn.Create(DownDistance, log.Rows, Levels(), Group),
        ];
    }

    public static string Band(int yards, Boundaries boundaries) =>
        yards <= boundaries.ShortMost ? "short" :
        yards <= boundaries.MediumMost ? "medium" :
        yards <= boundaries.LongMost ? "long" : "extra long";

    private static string Situation(string down, int yards, int? toGoal, Boundaries boundaries) =>
        down == "1" && yards >= toGoal ? "goal" :
        down == "1" && yards == 10 ? "10" :
        Band(yards, boundaries);

    private static List<string> Levels() =>
    [
        "1 & 10", "1 & goal",
        .. from down in (int[])[1, 2, 3, 4] from band in DistanceBands select $"{down} & {band}",
    ];
}
