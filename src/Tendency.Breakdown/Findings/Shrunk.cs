using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Situations;
using Tendency.Inference.Intervals;
using Tendency.Inference.Shrinkage;

namespace Tendency.Breakdown.Findings;

/// <summary>A share that leans on its parents. The plain count is always printed beside it.</summary>
/// <param name="Tally">Plain count of the situation itself.</param>
/// <param name="Share">Expected share, strictly inside (0, 1).</param>
/// <param name="Likely">Posterior range.</param>
/// <param name="Parent">What the share would be without the situation's own plays.</param>
public sealed record ShrunkShare(Tally Tally, double Share, Interval Likely, double Parent);

/// <summary>Estimates for situations with few plays: for ranking and recommending, where a raw 4 of 4 would beat an 18 of 20.</summary>
public static class Shrunk
{
    /// <summary>
    /// Backs off along all plays → first condition → first and second → ...; a level's strength is fitted to its siblings (the other values
    /// of its dimension under the same parent) when there are enough, else it is worth 12 plays.
    /// </summary>
    /// <param name="plays">Plays to count; those without the outcome column are left out.</param>
    /// <param name="of">Column or dimension of the outcome.</param>
    /// <param name="outcome">The value counted.</param>
    /// <param name="path">Conditions, the widest first; none = the share of all plays.</param>
    /// <param name="level">Level of the range, in (0, 1).</param>
    public static ShrunkShare Share(PlayLog plays, string of, string outcome, IReadOnlyList<Condition> path, double level)
    {
        var (levels, strength) = (new List<PlayLog> { plays }, new List<double>());
        foreach (var condition in path)
        {
            var siblings = CrossTab.Values(levels[^1], condition.Name).Select(value => CrossTab.Share(levels[^1].Where(condition.Name, value.Value), of, outcome));
            strength.Add(PriorStrength.OfSiblings([.. siblings.Select(sibling => (IReadOnlyList<int>)[sibling.Count, sibling.Plays - sibling.Count])]));
            var holds = condition.Rows(levels[^1]);
            levels.Add(levels[^1].Where(row => holds[row]));
        }

        return Share(levels, of, outcome, level, strength);
    }

    /// <summary>The same along situations given by their plays; each is worth 12 plays to the next.</summary>
    /// <param name="path">Plays of every level, the widest first, each a part of the one before; at least one.</param>
    public static ShrunkShare Share(IReadOnlyList<PlayLog> path, string of, string outcome, double level)
    {
        return Share(path, of, outcome, level, [.. path.Skip(1).Select(_ => BackOff.UsualStrength)]);
    }

    private static ShrunkShare Share(IReadOnlyList<PlayLog> levels, string of, string outcome, double level, IReadOnlyList<double> strength)
    {
        // A level that takes no play away is no other situation: leaning on it would count an even split as plays.
        var tallies = levels.Select(plays => CrossTab.Share(plays, of, outcome)).ToArray();
        var kept = tallies.Index().Where(tally => tally.Index == 0 || tally.Item.Plays < tallies[tally.Index - 1].Plays).ToArray();
        var share = BackOff.Share(
            [.. kept.Select(tally => (double)tally.Item.Count)], [.. kept.Select(tally => (double)tally.Item.Plays)], [.. kept.Skip(1).Select(tally => strength[tally.Index - 1])]);
        return new ShrunkShare(tallies[^1], share.Mean, share.Interval(level), kept.Length == 1 ? 0.5 : share.PathMeans[^2]);
    }
}
