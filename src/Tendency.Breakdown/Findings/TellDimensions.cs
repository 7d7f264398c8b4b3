using Tendency.Breakdown.Charts;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings;

/// <summary>The dimensions a tell may be made of: what a defense can know of the offense before the snap.</summary>
internal static class TellDimensions
{
    /// <summary>Charted columns and the situations a staff meets over.</summary>
    /// <remarks>
    /// Every dimension more costs each true tell some of its certainty, so what another one nearly says is left out: distance_band (in
    /// down_distance), field_side (mirrors hash), strength (back, tight end and wing carry it), quarter, clock_state and opener (the score says
    /// most of it), sudden_change (too few snaps), formation_family unless the formations are too many to look at one by one. What the
    /// defense shows is no dimension: it may be disguised.
    /// </remarks>
    public static IReadOnlyList<string> Default { get; } =
    [
        Down, DownDistance, Personnel, Formation, BackSet, BackSide, Attached, Wing, Motion, Tempo, Hash, FieldZone, ScoreState, FirstOfSeries, PreviousCall,
    ];

    /// <summary>Plays below which a formation is too rare to be searched with any hope.</summary>
    private const int FewPlays = 20;

    /// <summary>The default dimensions for a chart: with formation families where a third of the plays come from rarely used formations.</summary>
    internal static IReadOnlyList<string> For(PlayLog plays)
    {
        var column = plays.Category(Formation);
        var counts = new int[column.Levels.Count];
        foreach (var code in column.Codes)
        {
            counts[code]++;
        }

        var rare = counts.Skip(1).Where(n => n < FewPlays).Sum();
        return 3 * rare > column.ChartedCount ? [.. Default, FormationFamily] : Default;
    }

    // One of each pair says all the other does, so crossing them would look at the same plays twice; and neither is a tell of the other.
    private static readonly (string, string)[] s_nested =
    [
        (Down, DownDistance), (DistanceBand, DownDistance), (Down, DistanceBand), (Distance, DistanceBand), (Distance, DownDistance),
        (Formation, FormationFamily), (Hash, FieldSide), (RunScheme, RunFamily), (BackSide, BackAt), (YardsToGoal, FieldZone),
        (YardsToGoal, BallOn), (BallOn, FieldZone), (Margin, ScoreState), (Called, Call),
    ];

    /// <summary>Whether the two are the same, or one follows from the other.</summary>
    public static bool AreNested(string a, string b) =>
        a == b || Array.Exists(s_nested, pair => (pair.Item1 == a && pair.Item2 == b) || (pair.Item1 == b && pair.Item2 == a));
}
