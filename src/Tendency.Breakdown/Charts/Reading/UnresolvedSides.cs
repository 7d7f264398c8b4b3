using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Backs charted left or right on snaps that do not say which side is strong: they stand somewhere, but neither strong nor weak.</summary>
internal static class UnresolvedSides
{
    public static void Report(PlayLog plays, ICollection<Problem> problems)
    {
        var backs = plays.Category(ColumnNames.BackSide);
        var strengths = plays.Category(ColumnNames.Strength);
        var files = plays.Category(ColumnNames.SourceFile);
        var rows = Enumerable.Range(0, plays.Rows).Where(row => backs[row] is "L" or "R" && strengths.Codes[row] == 0);
        foreach (var file in rows.GroupBy(row => files[row], StringComparer.Ordinal))
        {
            problems.Add(new Problem(
                ReadingRules.UnresolvedSide,
                new Place(file.Key, plays.Number(ColumnNames.SourceLine)[file.First()] ?? 0, ColumnNames.BackSide),
                $"{file.Count()}",
                $"{file.Count()} snaps chart the back's side as L or R without a strength; whether it is strong or weak stays not charted."));
        }
    }
}
