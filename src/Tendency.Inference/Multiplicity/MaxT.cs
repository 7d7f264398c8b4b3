using Tendency.Inference.Functions;

namespace Tendency.Inference.Multiplicity;

/// <summary>
/// Westfall and Young's max-T: how often does the largest statistic over all cells reach a cell's own when hit labels are shuffled within
/// strata? Pays for every cell looked at and uses how they overlap. Statistic |A - E| / sqrt V of the stratified test (0 if V = 0).
/// Source: Westfall and Young 1993, Resampling-Based Multiple Testing, algorithms 2.5 and 4.1 [from memory].
/// </summary>
public static class MaxT
{
    private const double TieTolerance = 1e-9;

    /// <summary>
    /// Shuffles <paramref name="draws"/> times, p = (1 + reached) / (draws + 1); if there are no more than <paramref name="draws"/> distinct
    /// arrangements they are enumerated instead and p = reached / arrangements, without chance.
    /// </summary>
    /// <param name="hit">One label per observation.</param>
    /// <param name="stratum">The stratum of each observation, any numbers; labels move only within one.</param>
    /// <param name="cells">Each cell's observations (positions into <paramref name="hit"/>); overlap is the point.</param>
    /// <param name="draws">Number of shuffles; 9,999 for a p of 0.10 known to 0.003.</param>
    /// <param name="seed">The same seed gives the same p.</param>
    /// <exception cref="ArgumentException">Lengths differ, a cell names no observation, or no draw.</exception>
    public static MaxTResult Run(IReadOnlyList<bool> hit, IReadOnlyList<int> stratum, IReadOnlyList<IReadOnlyList<int>> cells, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(hit);
        ArgumentNullException.ThrowIfNull(stratum);
        ArgumentNullException.ThrowIfNull(cells);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        if (hit.Count != stratum.Count)
        {
            throw new ArgumentException("Every observation needs a stratum.", nameof(stratum));
        }

        foreach (var cell in cells)
        {
            ArgumentNullException.ThrowIfNull(cell, nameof(cells));
            foreach (var observation in cell)
            {
                Domain.Position(observation, hit.Count, nameof(cells));
            }
        }

        var layout = new MaxTLayout(hit, stratum, cells);
        var observed = new double[cells.Count];
        layout.Statistics(layout.Labels, observed);
        var tally = new MaxTTally(observed, TieTolerance);
        var statistics = new double[cells.Count];
        var arrangements = layout.Arrangements();
        if (arrangements <= draws)
        {
            layout.Enumerate(labels =>
            {
                layout.Statistics(labels, statistics);
                tally.Add(statistics);
            });
            return tally.Result(observed, arrangements, observedCounts: false);
        }

        var random = new Random(seed);
        var shuffled = new ulong[layout.Labels.Length];
        for (var b = 0; b < draws; b++)
        {
            layout.Shuffle(random, shuffled);
            layout.Statistics(shuffled, statistics);
            tally.Add(statistics);
        }

        return tally.Result(observed, draws, observedCounts: true);
    }
}
