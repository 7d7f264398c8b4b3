using Tendency.Inference.Comparisons;

namespace Tendency.Inference.Information;

/// <summary>
/// How much the row of a table (a situation) tells about its column (the call), in bits. The plug-in value of a useless attribute grows
/// with its number of levels: rank attributes on <see cref="Corrected"/>, and show a negative one as 0.
/// </summary>
/// <param name="Observations">Number of observations, at least 1.</param>
/// <param name="RowBits">Plug-in entropy of the rows.</param>
/// <param name="ColumnBits">Plug-in entropy of the columns.</param>
/// <param name="JointBits">Plug-in entropy of the cells.</param>
/// <param name="PlugIn">Plug-in mutual information, 0 or more.</param>
/// <param name="RowCorrected">Row entropy after Miller and Madow.</param>
/// <param name="ColumnCorrected">Column entropy after Miller and Madow.</param>
/// <param name="JointCorrected">Joint entropy after Miller and Madow.</param>
/// <param name="IndependenceBias">(R - 1)(C - 1)/(2 n ln 2), the plug-in value expected of independent rows and columns.</param>
public sealed record MutualInformation(
    int Observations,
    double RowBits,
    double ColumnBits,
    double JointBits,
    double PlugIn,
    double RowCorrected,
    double ColumnCorrected,
    double JointCorrected,
    double IndependenceBias)
{
    /// <summary>Miller and Madow's correction on all three entropies; may be negative.</summary>
    public double Corrected => RowCorrected + ColumnCorrected - JointCorrected;

    /// <summary>PlugIn less the bias under independence; may be negative.</summary>
    public double BeyondIndependence => PlugIn - IndependenceBias;

    /// <summary>What of the call stays uncertain once the row is known.</summary>
    public double ColumnGivenRow => JointBits - RowBits;

    /// <summary>The G statistic of the table, 2 n ln 2 times PlugIn.</summary>
    public double G => 2 * Observations * Math.Log(2) * PlugIn;

    /// <summary>Null for a table without observations.</summary>
    public static MutualInformation? OfTable(CountTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var full = table.WithoutEmpty();
        if (full.Rows == 0)
        {
            return null;
        }

        int[] rows = full.RowTotals(), columns = full.ColumnTotals();
        int[] cells = [.. Enumerable.Range(0, full.Rows).SelectMany(r => Enumerable.Range(0, full.Columns).Select(c => full[r, c]))];
        double n = full.Total;

        // As a mean of log ratios: small values keep their digits, unlike the difference of three entropies.
        var information = 0.0;
        for (var r = 0; r < full.Rows; r++)
        {
            for (var c = 0; c < full.Columns; c++)
            {
                information += full[r, c] == 0 ? 0 : full[r, c] / n * Math.Log2(full[r, c] * n / (rows[r] * (double)columns[c]));
            }
        }

        return new MutualInformation(
            full.Total,
            Entropy.Bits(rows)!.Value,
            Entropy.Bits(columns)!.Value,
            Entropy.Bits(cells)!.Value,
            full.Rows == 1 || full.Columns == 1 ? 0 : Math.Max(0, information),
            Entropy.MillerMadow(rows)!.Value,
            Entropy.MillerMadow(columns)!.Value,
            Entropy.MillerMadow(cells)!.Value,
            (full.Rows - 1) * (full.Columns - 1) / (2 * n * Math.Log(2)));
    }
}
