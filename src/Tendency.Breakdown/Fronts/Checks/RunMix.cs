using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Ledgers;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>One part of their run game: a scheme to one side of the back.</summary>
/// <param name="Count">Charted runs; one whose side is unknown counts half to each side.</param>
/// <param name="Surface">The surface it was run from most often; null when that is not charted.</param>
public sealed record MixCell(RunScheme Scheme, RunTo Side, double Count, Surface? Surface, Tag Tag)
{
    /// <summary>Runs it counts like when some games count more: its weighted share of the effective runs. Otherwise the count.</summary>
    public double EffectiveCount { get; init; } = Count;
}

/// <summary>The opponent's run mix with its uncertainty: a Dirichlet over scheme and side.</summary>
/// <param name="Runs">Charted runs, each counted once.</param>
public sealed record RunMix(IReadOnlyList<MixCell> Cells, double Runs, DirichletPosterior Posterior)
{
    /// <summary>Runs of equal weight that all of them count like; <see cref="Runs"/> when every game counts the same.</summary>
    public double EffectiveRuns { get; init; } = Runs;

    /// <summary>The mix of some runs; every scheme seen in <paramref name="among"/> has a cell on both sides.</summary>
    /// <param name="runs">Runs to count.</param>
    /// <param name="among">The runs that decide which cells there are; a situation is a part of them.</param>
    /// <param name="priorPlays">Plays the prior is worth: spread evenly over the cells, or by the shares of <paramref name="parent"/>.</param>
    /// <param name="parent">The mix a thin situation leans on; null = the even spread.</param>
    /// <param name="weights">How much each game counts; null = all the same. Weighted counts are scaled to the effective runs, so the mix is no surer than they are.</param>
    public static RunMix Of(IReadOnlyList<ChartedRun> runs, IReadOnlyList<ChartedRun> among, double priorPlays, RunMix? parent = null, GameWeights? weights = null)
    {
        var games = weights ?? GameWeights.Equal;
        var effective = games.EffectivePlays(runs.Select(r => r.Game));
        var scale = runs.Count == 0 ? 1 : effective / runs.Sum(Weight);
        double Weight(ChartedRun run) => games.Of(run.Game);

        var schemes = among.Select(r => r.Scheme).Distinct().ToArray();
        var cells = new List<MixCell>();
        foreach (var scheme in schemes)
        {
            var mine = runs.Where(r => r.Scheme == scheme).ToArray();
            var without = mine.Where(r => r.RunTo is null).ToArray();
            foreach (var side in (RunTo[])[RunTo.ToBack, RunTo.Away])
            {
                var (surface, tag) = Usual(among, scheme, side);
                var here = mine.Where(r => r.RunTo == side).ToArray();
                cells.Add(new MixCell(scheme, side, here.Length + (0.5 * without.Length), surface, tag)
                {
                    EffectiveCount = scale * (here.Sum(Weight) + (0.5 * without.Sum(Weight))),
                });
            }
        }

        var prior = parent is null
            ? cells.Select(_ => priorPlays / cells.Count)
            : Enumerable.Range(0, cells.Count).Select(i => priorPlays * parent.Posterior.Mean(i));
        return new RunMix(cells, runs.Count, new DirichletPosterior([.. cells.Select(c => c.EffectiveCount)], [.. prior])) { EffectiveRuns = effective };
    }

    /// <summary>Cells that were charted at all, the commonest first.</summary>
    public IEnumerable<MixCell> Charted => Cells.Where(c => c.Count > 0).OrderByDescending(c => c.Count);

    /// <summary>The surface and tag a scheme was run with most often to a side, else where the back gave no side; the earliest among equals.</summary>
    private static (Surface? Surface, Tag Tag) Usual(IReadOnlyList<ChartedRun> runs, RunScheme scheme, RunTo side)
    {
        var charted = runs.Where(r => r.Scheme == scheme && r.Surface is not null).ToLookup(r => r.RunTo);
        var seen = charted.Contains(side) ? charted[side] : charted[null];
        var most = seen.GroupBy(r => (r.Surface, r.Tag)).MaxBy(g => g.Count());
        return most is null ? (null, Tag.None) : most.Key;
    }
}
