using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
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
internal static class Shrunk
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
    public static ShrunkShare Share(PlayLog plays, string of, string outcome, IReadOnlyList<TellCondition> path, double level)
    {
        var column = plays.Dimension(of);
        var code = column.CodeOf(outcome);
        var inside = Enumerable.Range(0, plays.Rows).Where(row => column.Codes[row] > 0).ToArray();
        var (hits, trials, strength) = (new List<double>(), new List<double>(), new List<double>());
        Add();
        foreach (var condition in path)
        {
            var dimension = plays.Dimension(condition.Name);
            var siblings = inside.Where(row => dimension.Codes[row] > 0)
                .GroupBy(row => dimension.Codes[row])
                .Select(g => (IReadOnlyList<int>)[g.Count(row => column.Codes[row] == code), g.Count(row => column.Codes[row] != code)])
                .ToArray();
            strength.Add(PriorStrength.OfSiblings(siblings));
            var value = dimension.CodeOf(condition.Value);
            inside = [.. inside.Where(row => value > 0 && dimension.Codes[row] == value)];
            Add();
        }

        var share = BackOff.Share([.. hits], [.. trials], [.. strength]);
        return new ShrunkShare(
            new Tally((int)hits[^1], (int)trials[^1]), share.Mean, share.Interval(level), path.Count == 0 ? 0.5 : share.PathMeans[^2]);

        void Add()
        {
            hits.Add(inside.Count(row => column.Codes[row] == code));
            trials.Add(inside.Length);
        }
    }
}
