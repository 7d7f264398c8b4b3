using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Options;

/// <summary>How often their runs ask for an extra fitter in a situation.</summary>
/// <param name="Runs">Runs of the situation whose scheme is charted.</param>
/// <param name="Range">Wilson interval of the share.</param>
public sealed record OptionShare(string Situation, OptionKind Kind, int Runs, int Count, Interval Range)
{
    public double Share => (double)Count / Runs;

    /// <summary>Every situation of the front card with a run, each kind.</summary>
    public static IReadOnlyList<OptionShare> Of(PlayLog log, RunSample sample, double level)
    {
        var shares = new List<OptionShare>();
        foreach (var situation in CardSituation.Of(log))
        {
            var kinds = sample.Runs.Where(r => situation.Holds(r.Row)).Select(OptionKinds.Of).ToArray();
            if (kinds.Length > 0)
            {
                shares.AddRange(OptionKinds.All.Select(kind => Counted(situation.Name, kind, kinds, level)));
            }
        }

        return shares;
    }

    private static OptionShare Counted(string situation, OptionKind kind, OptionKind[] kinds, double level)
    {
        var count = kinds.Count(k => k == kind);
        return new OptionShare(situation, kind, kinds.Length, count, OneProportion.Wilson(count, kinds.Length, level));
    }
}
