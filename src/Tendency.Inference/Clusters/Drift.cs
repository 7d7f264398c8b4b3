using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;

namespace Tendency.Inference.Clusters;

/// <summary>
/// Does a mix stay the same from group to group (game to game), in time order? The p-value for print is <see cref="Bootstrap"/>, which
/// allows for ordinary group-to-group variation; the exact tests answer other questions and check the code. Source of these: exact
/// conditional inference, Agresti 1992, doi:10.1214/ss/1177011454 [from memory].
/// </summary>
public static class Drift
{
    private const double LargestEnumeration = 5e7;

    /// <summary>
    /// G-test over groups (rows) by categories, and for two categories the exact conditional probability of a G at least as large (ties
    /// within 1e-9 count): what permuting single observations across groups would give. Null for more categories or too many tables.
    /// </summary>
    /// <param name="groups">Counts, a row per group.</param>
    public static (HomogeneityTest Test, double? ExactP) Homogeneity(CountTable groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        return (HomogeneityTest.Run(groups), groups.Columns == 2 ? ExactP(groups) : null);
    }

    /// <summary>
    /// Parametric bootstrap of both statistics: every group's mix is drawn from Dirichlet(M pooled shares), M = 1/rho - 1, and its counts
    /// from that mix; p = (1 + #{T* &gt;= T}) / (draws + 1). No group-to-group correlation (rho = 0) draws from the pooled shares. Source:
    /// Davison and Hinkley 1997, ch. 4 [from memory]. Both p are 1 without observations.
    /// </summary>
    /// <param name="groups">Counts, a row per group in time order; groups of fewer than 3 should be left out first.</param>
    /// <param name="rho">Within-group correlation, in [0, 1); at least 0.02 is advised.</param>
    /// <param name="draws">9,999 for print; at least 1.</param>
    /// <param name="seed">The same seed gives the same p-values.</param>
    /// <exception cref="ArgumentOutOfRangeException">The correlation is outside [0, 1), or no draw.</exception>
    public static (double HomogeneityP, double ChangeP) Bootstrap(CountTable groups, double rho, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(groups);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        if (!(rho >= 0 && rho < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(rho), rho, "The correlation lies in [0, 1).");
        }

        int[] sizes = groups.RowTotals(), columns = groups.ColumnTotals();
        double n = groups.Total;
        if (n == 0)
        {
            return (1, 1);
        }

        var statistics = new GroupG(sizes, columns.Length);
        var counts = new int[sizes.Length * columns.Length];
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i] = groups[i / columns.Length, i % columns.Length];
        }

        // Ties count; the sums of logarithms are right to about 1e-12.
        var (spread, change) = statistics.Of(counts);
        var mixes = new RandomMix([.. columns.Select(count => count / n)], rho, seed);
        int changes = 0, spreads = 0;
        for (var b = 0; b < draws; b++)
        {
            mixes.Fill(sizes, counts);
            var drawn = statistics.Of(counts);
            spreads += drawn.Spread >= spread - (1e-9 * Math.Max(1, spread)) ? 1 : 0;
            changes += drawn.Change >= change - (1e-9 * Math.Max(1, change)) ? 1 : 0;
        }

        return ((1.0 + spreads) / (draws + 1), (1.0 + changes) / (draws + 1));
    }

    // G adds up over groups, so every table is a path over the groups' hits; probabilities are products of binomial coefficients.
    private static double? ExactP(CountTable groups)
    {
        int[] sizes = groups.RowTotals();
        var hits = groups.ColumnTotals()[0];
        var n = sizes.Sum();
        if (hits == 0 || hits == n)
        {
            return 1;
        }

        if (sizes.Aggregate(1.0, (product, size) => product * (size + 1)) > LargestEnumeration)
        {
            return null;
        }

        double[][] part = [.. sizes.Select(size => Parts(size, (double)hits / n))];
        double[][] ways = [.. sizes.Select(size => Enumerable.Range(0, size + 1).Select(x => Math.Exp(GammaFunction.LogChoose(size, x))).ToArray())];
        var room = new int[sizes.Length + 1];
        for (var g = sizes.Length - 1; g >= 0; g--)
        {
            room[g] = room[g + 1] + sizes[g];
        }

        var observed = Enumerable.Range(0, sizes.Length).Sum(g => part[g][groups[g, 0]]) * (1 - 1e-9);
        double reached = 0, all = 0;
        Visit(0, hits, 0, 1);
        return Math.Min(1, reached / all);

        void Visit(int g, int left, double statistic, double weight)
        {
            if (g == sizes.Length)
            {
                all += weight;
                reached += statistic >= observed ? weight : 0;
                return;
            }

            for (var x = Math.Max(0, left - room[g + 1]); x <= Math.Min(left, sizes[g]); x++)
            {
                Visit(g + 1, left - x, statistic + part[g][x], weight * ways[g][x]);
            }
        }
    }

    private static double[] Parts(int size, double p)
    {
        var parts = new double[size + 1];
        for (var x = 0; x <= size; x++)
        {
            parts[x] = 2 * (Term(x, size * p) + Term(size - x, size * (1 - p)));
        }

        return parts;
    }

    private static double Term(double count, double expected) => count == 0 ? 0 : count * Math.Log(count / expected);
}
