using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Options;

/// <summary>How often their runs ask for an extra fitter in a situation.</summary>
/// <param name="Runs">Runs of the situation whose scheme is charted.</param>
/// <param name="Range">Range of the share.</param>
public sealed record OptionShare(string Situation, OptionKind Kind, int Runs, int Count, Interval Range)
{
    // A column of ours: the kind of every run that has a rated scheme.
    private const string Asked = "option_kind";

    public double Share => (double)Count / Runs;

    /// <summary>Every situation of the front card with a run, each kind.</summary>
    public static IReadOnlyList<OptionShare> Of(PlayLog log, RunSample sample, double level)
    {
        var runs = log.Take([.. sample.Runs.Select(run => run.Row)]).With(CategoryColumn.FromWords(Asked, sample.Runs.Select(run => OptionKinds.Of(run).Word())));
        var ranges = new LikelyRanges(runs, level);
        var shares = new List<OptionShare>();
        foreach (var situation in CardSituation.Of(log))
        {
            var here = runs.Where(run => situation.Holds(sample.Runs[run].Row));
            if (here.Rows > 0)
            {
                shares.AddRange(OptionKinds.All.Select(kind => new OptionShare(
                    situation.Name, kind, here.Rows, CrossTab.Share(here, Asked, kind.Word()).Count, ranges.Of(here, Asked, kind.Word()))));
            }
        }

        return shares;
    }
}
