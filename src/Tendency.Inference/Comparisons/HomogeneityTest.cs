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
    public double P => Tail(G);

    public double PearsonP => Tail(PearsonX2);

    /// <summary>G after Williams' correction.</summary>
    public double WilliamsG => G / WilliamsQ;

    public double WilliamsP => Tail(WilliamsG);

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
                var observed = full[r, c];
                smallest = Math.Min(smallest, expected);
                g += observed == 0 ? 0 : 2 * observed * Math.Log(observed / expected);
                x2 += (observed - expected) * (observed - expected) / expected;
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
        return new HomogeneityTest(Math.Max(0, g), freedom, x2, q, v, least);
    }

    private double Tail(double statistic) => Freedom == 0 ? 1 : ChiSquared.Upper(Freedom, statistic);
}
