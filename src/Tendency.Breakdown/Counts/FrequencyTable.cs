using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Clusters;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Counts;

/// <summary>How a frequency table says how sure it is.</summary>
public sealed record TableOptions
{
    /// <summary>Level of each interval, in (0, 1).</summary>
    public double Level { get; init; } = 0.95;

    public IntervalMethod Method { get; init; } = IntervalMethod.Wilson;

    /// <summary>Whether plays of one game count as alike: the interval then rests on effective plays.</summary>
    public bool Clustered { get; init; }

    /// <summary>Whether the intervals of one combination's outcomes hold all at once (Goodman).</summary>
    public bool Simultaneous { get; init; }

    /// <summary>How much each game counts.</summary>
    public GameWeights Weights { get; init; } = GameWeights.Equal;
}

/// <summary>One row of a frequency table.</summary>
/// <param name="By">Value of each dimension counted by.</param>
/// <param name="Tally">Plain counts, whatever the weights.</param>
/// <param name="Share">Count / plays; weighted when some games count more.</param>
/// <param name="Likely">Range of the share, clipped to 0–1; null when clustering is asked for and there is one game only.</param>
/// <param name="EffectivePlays">How many independent plays of equal weight these plays count like.</param>
public sealed record FrequencyRow(IReadOnlyList<string> By, string Outcome, Tally Tally, double Share, Interval? Likely, double EffectivePlays);

/// <summary>Counts with intervals: plain by default; by games, all at once or with games weighted on request.</summary>
/// <remarks>
/// Effective plays: Kish 1965 and Gabler, Haeder and Lahiri 1999 (from memory), one correlation within games pooled over the disjoint
/// down-and-distance cells, since a single cell of three to five games can not show its own.
/// </remarks>
public static class FrequencyTable
{
    public static IReadOnlyList<FrequencyRow> Of(PlayLog plays, IReadOnlyList<string> by, string of, TableOptions options)
    {
        var rows = CrossTab.Count(plays, by, of);
        var outcomes = rows.Select(row => row.Outcome).Distinct(StringComparer.Ordinal).ToArray();
        var rho = outcomes.ToDictionary(o => o, o => options.Clustered ? WithinGames(plays, of, o) : 0, StringComparer.Ordinal);
        var parts = CrossTab.Count(plays, [.. by, ColumnNames.Game], of).ToLookup(row => string.Join('\n', row.By.SkipLast(1)), StringComparer.Ordinal);
        return [.. rows.GroupBy(row => string.Join('\n', row.By), StringComparer.Ordinal).SelectMany(Combination)];

        IEnumerable<FrequencyRow> Combination(IGrouping<string, CrossTabRow> combination)
        {
            var inGames = parts[combination.Key].GroupBy(row => row.By[^1], StringComparer.Ordinal)
                .Select(game => (Weight: options.Weights.Of(game.Key), Plays: game.First().Tally.Plays, Counts: game.ToDictionary(row => row.Outcome, row => row.Tally.Count)))
                .ToArray();
            var total = inGames.Sum(game => game.Weight * game.Plays);
            var estimates = outcomes.ToDictionary(
                outcome => outcome,
                outcome => (
                    Share: inGames.Sum(game => game.Weight * game.Counts.GetValueOrDefault(outcome)) / total,
                    Plays: EffectiveSize.OfWeightedGroups(inGames.Select(game => ((double)game.Plays, game.Weight)), rho[outcome])));

            // All at once: as many effective plays as the most clustered outcome leaves.
            var fewest = estimates.Values.Min(e => e.Plays);
            var together = options.Simultaneous
                ? outcomes.Zip(Simultaneous.Goodman([.. outcomes.Select(o => estimates[o].Share * fewest)], options.Level)).ToDictionary(p => p.First, p => p.Second)
                : null;
            foreach (var row in combination)
            {
                var (share, effective) = estimates[row.Outcome];
                var likely = together?[row.Outcome] ?? Estimate.IntervalOf(share * effective, effective, options.Level, options.Method);
                yield return new FrequencyRow(
                    row.By, row.Outcome, row.Tally, share, options.Clustered && inGames.Length == 1 ? null : likely.ClippedToShare(), together is null ? effective : fewest);
            }
        }
    }

    /// <summary>Correlation of an outcome within a game, pooled over down and distance; over all plays where that is not charted.</summary>
    private static double WithinGames(PlayLog plays, string of, string outcome)
    {
        string[] cells = plays.IsCharted(ColumnNames.DownDistance) ? [ColumnNames.DownDistance] : [];
        var groups = CrossTab.Count(plays, [.. cells, ColumnNames.Game], of)
            .GroupBy(row => string.Join('\n', row.By.SkipLast(1)), StringComparer.Ordinal)
            .Select(cell => cell.GroupBy(row => row.By[^1], StringComparer.Ordinal)
                .Select(game => new GroupCount(game.FirstOrDefault(row => row.Outcome == outcome)?.Tally.Count ?? 0, game.First().Tally.Plays)));
        return WithinGroupCorrelation.Pooled(groups).Usable;
    }
}
