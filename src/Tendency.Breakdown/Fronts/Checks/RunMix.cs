using Tendency.Breakdown.Fronts.Ledgers;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>One part of their run game: a scheme to one side of the back.</summary>
/// <param name="Count">Charted runs; one whose side is unknown counts half to each side.</param>
/// <param name="Surface">The surface it was run from most often; null when that is not charted.</param>
public sealed record MixCell(RunScheme Scheme, RunTo Side, double Count, Surface? Surface, Tag Tag);

/// <summary>The opponent's run mix with its uncertainty: a Dirichlet over scheme and side.</summary>
public sealed record RunMix(IReadOnlyList<MixCell> Cells, double Runs, DirichletPosterior Posterior)
{
    /// <summary>The mix of some runs; every scheme seen in <paramref name="among"/> has a cell on both sides.</summary>
    /// <param name="runs">Runs to count.</param>
    /// <param name="among">The runs that decide which cells there are; a situation is a part of them.</param>
    /// <param name="priorPlays">Plays the prior is worth: spread evenly over the cells, or by the shares of <paramref name="parent"/>.</param>
    /// <param name="parent">The mix a thin situation leans on; null = the even spread.</param>
    public static RunMix Of(IReadOnlyList<ChartedRun> runs, IReadOnlyList<ChartedRun> among, double priorPlays, RunMix? parent = null)
    {
        var schemes = among.Select(r => r.Scheme).Distinct().ToArray();
        var cells = new List<MixCell>();
        foreach (var scheme in schemes)
        {
            var mine = runs.Where(r => r.Scheme == scheme).ToArray();
            var without = mine.Count(r => r.RunTo is null);
            foreach (var side in (RunTo[])[RunTo.ToBack, RunTo.Away])
            {
                var (surface, tag) = Usual(among, scheme, side);
                cells.Add(new MixCell(scheme, side, mine.Count(r => r.RunTo == side) + (0.5 * without), surface, tag));
            }
        }

        var prior = parent is null
            ? cells.Select(_ => priorPlays / cells.Count)
            : Enumerable.Range(0, cells.Count).Select(i => priorPlays * parent.Posterior.Mean(i));
        return new RunMix(cells, runs.Count, new DirichletPosterior([.. cells.Select(c => c.Count)], [.. prior]));
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
