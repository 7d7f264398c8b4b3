using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>One front against one of their runs, to the side of the back they call it to most.</summary>
/// <param name="Cell">What rating and film say of the two.</param>
/// <param name="Runs">Charted runs of the scheme to that side; those without a side count half.</param>
/// <param name="SurfaceIsCharted">False: one tight end to the play is taken for want of a chart.</param>
internal sealed record FrontCardCell(MixCell Run, MatrixCell Cell, GapLedger Ledger, CardLook Look, double Runs, bool SurfaceIsCharted)
{
    private const int MostRuns = 3;
    private const double FewestRuns = 5;

    /// <summary>The front against their most called runs, the commonest first; empty where no scheme is charted on five runs.</summary>
    public static IReadOnlyList<FrontCardCell> Of(Study study, FrontCheck check, string front)
    {
        var at = check.Matrix.Fronts.Index().First(f => f.Item.Name == front).Index;
        return
        [
            .. check.Matrix.Mix.Cells.Index()
                .GroupBy(cell => cell.Item.Scheme)
                .Select(scheme => (Runs: scheme.Sum(cell => cell.Item.Count), Most: scheme.OrderByDescending(cell => cell.Item.Count).ThenByDescending(cell => cell.Item.Side).First()))
                .Where(scheme => scheme.Runs >= FewestRuns)
                .OrderByDescending(scheme => scheme.Runs)
                .Take(MostRuns)
                .Select(scheme => Of(study, check, at, scheme.Most.Index)),
        ];
    }

    private static FrontCardCell Of(Study study, FrontCheck check, int front, int index)
    {
        var run = check.Matrix.Mix.Cells[index];
        var hasSide = check.Sample.Runs.Any(other => other.Scheme == run.Scheme && other.RunTo == run.Side);
        RunTo? side = hasSide ? run.Side : null;
        var surface = (run.Surface ?? new Surface { AttachedPlay = 1 }) with { RunTo = side };
        var look = CardLook.Of(study.Plays, check.Sample, run, side);
        return new FrontCardCell(
            run, check.Matrix[front, index], GapLedger.Of(check.Matrix.Fronts[front], run.Scheme, surface, run.Tag), look, run.Count, run.Surface is not null);
    }

    /// <summary>"away from the back", "to the back"; empty where no side is charted.</summary>
    public string Side => Look.BackSide switch { RunTo.Away => "away from the back", RunTo.ToBack => "to the back", _ => "" };

    /// <summary>Runs of the scheme and side in the charts, whatever the front.</summary>
    public IReadOnlyList<ChartedRun> Film(FrontCheck check) =>
        [.. check.Sample.Runs.Where(other => other.Scheme == Run.Scheme && (Look.BackSide is null || other.RunTo == Run.Side))];
}
