using Tendency.Inference.Comparisons;

namespace Tendency.Inference.Clusters;

/// <summary>
/// One change point over groups in time order: the split whose two sides differ most. Source: likelihood ratio over all splits, Hinkley
/// and Hinkley 1970, doi:10.1093/biomet/57.3.477 [from memory].
/// </summary>
/// <param name="After">Number of groups before the change; the first on ties.</param>
/// <param name="G">G of the groups up to there against the rest.</param>
public sealed record ChangePoint(int After, double G)
{
    private const double TieTolerance = 1e-9;

    /// <summary>Most groups for which <see cref="PermutationP"/> is computed.</summary>
    public const int MostGroups = 20;

    /// <summary>
    /// The split with the largest G over a table of groups (rows, in time order) by categories; null with fewer than two groups. A table
    /// without observations, or of one category, splits after the first group with G = 0.
    /// </summary>
    /// <param name="groups">Counts, a row per group in time order.</param>
    public static ChangePoint? Find(CountTable groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        if (groups.Rows < 2)
        {
            return null;
        }

        var all = groups.ColumnTotals();
        var before = new int[groups.Columns];
        var best = new ChangePoint(0, double.NegativeInfinity);
        for (var k = 1; k < groups.Rows; k++)
        {
            for (var c = 0; c < before.Length; c++)
            {
                before[c] += groups[k - 1, c];
            }

            var g = TwoSampleG(before, all);
            best = best.After == 0 || g > best.G + (TieTolerance * Math.Abs(best.G)) ? new ChangePoint(k, g) : best;
        }

        return best;
    }

    /// <summary>
    /// Share of all orders of the groups whose largest G reaches the observed one (relative tie tolerance 1e-9). Whole groups move, so
    /// clustering is respected, but p cannot fall below 2/C(K, k): confirmation only from K = 8. Null below 2 or above
    /// <see cref="MostGroups"/> groups. Orders are counted over sets of groups, 2^K steps, not K!.
    /// </summary>
    /// <param name="groups">Counts, a row per group in time order.</param>
    public static double? PermutationP(CountTable groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        var observed = Find(groups);
        if (observed is null || groups.Rows > MostGroups)
        {
            return null;
        }

        var all = groups.ColumnTotals();
        var threshold = observed.G * (1 - TieTolerance);
        var full = (1 << groups.Rows) - 1;

        // reached[s]: share of the orders of set s in which some proper beginning, or s itself, reaches the threshold.
        var reached = new double[full + 1];
        var members = new int[groups.Columns];
        for (var s = 1; s <= full; s++)
        {
            Array.Clear(members);
            double sum = 0, size = 0;
            for (var g = 0; g < groups.Rows; g++)
            {
                if ((s >> g & 1) == 0)
                {
                    continue;
                }

                size++;
                sum += reached[s & ~(1 << g)];
                for (var c = 0; c < members.Length; c++)
                {
                    members[c] += groups[g, c];
                }
            }

            reached[s] = s != full && TwoSampleG(members, all) >= threshold ? 1 : sum / size;
        }

        return reached[full];
    }

    /// <summary>G of one sample against the rest of a total, per category.</summary>
    private static double TwoSampleG(int[] part, int[] all)
    {
        int n = 0, total = 0;
        for (var c = 0; c < all.Length; c++)
        {
            n += part[c];
            total += all[c];
        }

        if (n == 0 || n == total)
        {
            return 0;
        }

        var g = 0.0;
        for (var c = 0; c < all.Length; c++)
        {
            if (all[c] > 0)
            {
                g += HomogeneityTest.Term(part[c], n, all[c], total) + HomogeneityTest.Term(all[c] - part[c], total - n, all[c], total);
            }
        }

        return g;
    }
}
