using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>The front check's cells pooled for print: by scheme over both sides, and by the share of one family.</summary>
internal static class FrontMix
{
    /// <summary>Success a front allows on one scheme, both sides in their charted proportion, with half the width of its range.</summary>
    /// <remarks>The two sides' cells are independent, so their half widths add in squares; a scheme never charted pools evenly.</remarks>
    public static (double Allowed, double Half) OfScheme(FrontMatrix matrix, int front, string scheme)
    {
        var cells = Enumerable.Range(0, matrix.Mix.Cells.Count).Where(cell => matrix.Mix.Cells[cell].Scheme.Name == scheme).ToArray();
        var total = cells.Sum(cell => matrix.Mix.Cells[cell].EffectiveCount);
        double Weight(int cell) => total > 0 ? matrix.Mix.Cells[cell].EffectiveCount / total : 1.0 / cells.Length;
        var allowed = cells.Sum(cell => Weight(cell) * matrix[front, cell].SuccessAllowed);
        var squares = cells.Sum(cell => Math.Pow(Weight(cell) * (matrix[front, cell].High - matrix[front, cell].Low) / 2, 2));
        return (allowed, Math.Sqrt(squares));
    }

    /// <summary>Share of their runs with a rated scheme that are of a kind, with some games counted more where they do.</summary>
    public static WeightedShare OfRuns(this Study study, FrontCheck check, Func<ChartedRun, bool> kind)
    {
        var runs = check.Sample.Runs;
        return study.Ranges.Weighted(study.Plays.Take([.. runs.Select(run => run.Row)]), row => kind(runs[row]), ColumnNames.RunScheme, null, study.Weights);
    }

    /// <summary>Schemes by charted runs, most first.</summary>
    public static IReadOnlyList<(string Scheme, double Runs)> Schemes(RunMix mix) =>
    [
        .. mix.Cells.GroupBy(cell => cell.Scheme.Name).Select(group => (group.Key, group.Sum(cell => cell.Count)))
            .Where(scheme => scheme.Item2 > 0).OrderByDescending(scheme => scheme.Item2),
    ];

    /// <summary>Runs a scheme counts like in the mix: its weighted share of the effective runs.</summary>
    public static double Effective(RunMix mix, string scheme) => mix.Cells.Where(cell => cell.Scheme.Name == scheme).Sum(cell => cell.EffectiveCount);

    /// <summary>Success a front allows on a family's runs and on all others, each in their present proportion; null where either is not charted.</summary>
    public static (double With, double Without)? OfFamily(FrontMatrix matrix, int front, RunFamily family)
    {
        var cells = Enumerable.Range(0, matrix.Mix.Cells.Count).ToLookup(cell => family.Holds(matrix.Mix.Cells[cell].Scheme));
        return matrix.Allowed(front, [.. cells[true]]) is { } with && matrix.Allowed(front, [.. cells[false]]) is { } without ? (with, without) : null;
    }
}
