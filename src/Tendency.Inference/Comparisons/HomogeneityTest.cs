using Tendency.Inference.Functions;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// G-test and Pearson's chi-square: do the rows of a table share one mix? Empty rows and columns are dropped first; with no degree of
/// freedom left G = X² = 0 and p = 1. The p-values need expected counts of about 5 and independent observations. Source: Sokal and
/// Rohlf, Biometry; Williams 1976, doi:10.1093/biomet/63.1.33.
/// </summary>
/// <param name="G">2 sum O ln(O/E), with 0 ln 0 = 0.</param>
/// <param name="Freedom">(rows - 1)(columns - 1) of the rows and columns that hold anything.</param>
/// <param name="PearsonX2">Sum (O - E)²/E.</param>
/// <param name="WilliamsQ">Williams' divisor of G for small samples; 1 without freedom.</param>
/// <param name="CramersV">Strength of association, 0 to 1, from Pearson's chi-square; null without freedom.</param>
/// <param name="SmallestExpected">Smallest expected count; null for an empty table.</param>
public sealed record HomogeneityTest(
    double G,
    int Freedom,
    double PearsonX2,
    double WilliamsQ,
    double? CramersV,
    double? SmallestExpected)
{
    /// <summary>Chi-square tail beyond G; 1 without freedom.</summary>
    public double P => Tail(G);

    /// <summary>Chi-square tail beyond Pearson's.</summary>
    public double PearsonP => Tail(PearsonX2);

    /// <summary>G after Williams' correction.</summary>
    public double WilliamsG => G / WilliamsQ;

    /// <summary>Chi-square tail beyond G after Williams' correction.</summary>
    public double WilliamsP => Tail(WilliamsG);

    /// <param name="table">Samples by categories; it may be empty.</param>
    public static HomogeneityTest Run(CountTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var full = table.WithoutEmpty();
        int[] rows = full.RowTotals(), columns = full.ColumnTotals();
        double n = full.Total;
        double g = 0, x2 = 0, smallest = double.PositiveInfinity;
        for (var r = 0; r < full.Rows; r++)
        {
            for (var c = 0; c < full.Columns; c++)
            {
                var expected = rows[r] * (double)columns[c] / n;
                var gap = Gap(full[r, c], rows[r], columns[c], full.Total);
                smallest = Math.Min(smallest, expected);
                g += Term(full[r, c], rows[r], columns[c], full.Total);
                x2 += gap * gap / expected;
            }
        }

        var freedom = Math.Max(0, full.Rows - 1) * Math.Max(0, full.Columns - 1);
        double? least = n == 0 ? null : smallest;
        if (freedom == 0)
        {
            return new HomogeneityTest(0, 0, 0, 1, null, least);
        }

        var q = 1 + (((n * rows.Sum(t => 1.0 / t)) - 1) * ((n * columns.Sum(t => 1.0 / t)) - 1) / (6 * n * freedom));
        var v = Math.Sqrt(x2 / (n * (Math.Min(full.Rows, full.Columns) - 1)));
        return new HomogeneityTest(g, freedom, x2, q, v, least);
    }

    /// <summary>
    /// One cell's part of G, 2 (O ln(O/E) - O + E), 0 or more: over a table O - E adds up to nothing, and near independence, where the
    /// plain terms cancel, these keep their digits.
    /// </summary>
    internal static double Term(int observed, int row, int column, int total) =>
        2 * GammaFunction.Deviance(observed, row * (double)column / total, Gap(observed, row, column, total));

    // O - E, its numerator exact in integers.
    private static double Gap(int observed, int row, int column, int total) =>
        (((long)observed * total) - ((long)row * column)) / (double)total;

    /// <summary>
    /// P by shuffling observations among the rows: (1 + #{G* &gt;= G}) / (draws + 1), both margins fixed. For tables whose smallest expected
    /// count is below 5; the observations must still be independent. 1 for a table with one row or column left.
    /// </summary>
    /// <param name="table">Samples by categories.</param>
    /// <param name="draws">Number of shuffles, at least 1.</param>
    /// <param name="seed">The same seed gives the same p.</param>
    /// <exception cref="ArgumentOutOfRangeException">No draw.</exception>
    public static double PermutationP(CountTable table, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        var full = table.WithoutEmpty();
        if (full.Rows < 2 || full.Columns < 2)
        {
            return 1;
        }

        // One label per observation, row after row; a shuffle deals them to the rows anew.
        int[] labels = [.. Enumerable.Range(0, full.Columns).SelectMany(c => Enumerable.Repeat(c, full.ColumnTotals()[c]))];
        int[] sizes = full.RowTotals();
        var random = new Random(seed);
        var cells = new int[full.Rows, full.Columns];
        var observed = 0.0;
        for (var r = 0; r < full.Rows; r++)
        {
            for (var c = 0; c < full.Columns; c++)
            {
                observed += XLogX(full[r, c]);
            }
        }

        var reached = 0;
        for (var b = 0; b < draws; b++)
        {
            random.Shuffle(labels);
            Array.Clear(cells);
            var next = 0;
            for (var r = 0; r < sizes.Length; r++)
            {
                for (var i = 0; i < sizes[r]; i++)
                {
                    cells[r, labels[next++]]++;
                }
            }

            // G rises with the sum of n ln n over the cells; the margins are the same.
            var sum = 0.0;
            foreach (var count in cells)
            {
                sum += XLogX(count);
            }

            reached += sum >= observed - 1e-9 ? 1 : 0;
        }

        return (1.0 + reached) / (draws + 1);
    }

    private static double XLogX(int count) => count == 0 ? 0 : count * Math.Log(count);

    private double Tail(double statistic) => Freedom == 0 ? 1 : ChiSquared.Upper(Freedom, statistic);
}
