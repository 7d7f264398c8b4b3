using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>How far a column of the chart is filled, among the plays it applies to: run columns among runs, pass columns among passes.</summary>
internal static class Filled
{
    private static readonly HashSet<string> s_ofRuns = [ColumnNames.RunScheme, ColumnNames.RunSide, ColumnNames.Gap, ColumnNames.Read];

    private static readonly HashSet<string> s_ofPasses =
        [ColumnNames.PassConcept, ColumnNames.Drop, ColumnNames.Protection, ColumnNames.SlideSide, ColumnNames.Target];

    // Blank says something here: no touchdown, no penalty, nothing to note.
    private static readonly HashSet<string> s_blankIsValue =
        [ColumnNames.Touchdown, ColumnNames.PenaltyOn, ColumnNames.PenaltyYards, ColumnNames.PenaltyEffect, ColumnNames.Note, ColumnNames.Clip];

    /// <summary>Columns whose blanks are gaps, in the chart's order.</summary>
    public static IEnumerable<string> Columns => ColumnCatalogue.All.Select(column => column.Name).Where(name => !s_blankIsValue.Contains(name));

    public static Tally Of(Study study, string column)
    {
        var plays = s_ofRuns.Contains(column) ? study.Plays.Where(ColumnNames.Call, "run")
            : s_ofPasses.Contains(column) ? study.Plays.Where(ColumnNames.Call, "pass")
            : study.Plays;
        return new Tally(plays.Has(column) ? plays.Dimension(column).ChartedCount : 0, plays.Rows);
    }

    /// <summary>"of runs", "of passes", or nothing.</summary>
    public static string Among(string column) => s_ofRuns.Contains(column) ? "runs" : s_ofPasses.Contains(column) ? "passes" : "plays";
}
