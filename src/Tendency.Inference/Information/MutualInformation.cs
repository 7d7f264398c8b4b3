using Tendency.Inference.Comparisons;

namespace Tendency.Inference.Information;

/// <summary>
/// How much the row of a table (a situation) tells about its column (the call), in bits. The plug-in value of a useless attribute grows
/// with its number of levels: rank attributes on <see cref="Corrected"/>, and show a negative one as 0. Source: Shannon 1948,
/// doi:10.1002/j.1538-7305.1948.tb01338.x; bias Miller 1955, Paninski 2003, doi:10.1162/089976603321780272 [from memory].
/// </summary>
/// <param name="Observations">Number of observations, at least 1.</param>
/// <param name="Rows">Rows that hold anything.</param>
/// <param name="Columns">Columns that hold anything.</param>
/// <param name="Cells">Cells that hold anything.</param>
/// <param name="RowBits">Plug-in entropy of the rows.</param>
/// <param name="ColumnBits">Plug-in entropy of the columns.</param>
/// <param name="JointBits">Plug-in entropy of the cells.</param>
/// <param name="ColumnGivenRow">What of the call stays uncertain once the row is known, JointBits - RowBits.</param>
/// <param name="PlugIn">Plug-in mutual information, 0 or more.</param>
public sealed record MutualInformation(
    int Observations,
    int Rows,
    int Columns,
    int Cells,
    double RowBits,
    double ColumnBits,
    double JointBits,
    double ColumnGivenRow,
    double PlugIn)
{
    /// <summary>Row entropy after Miller and Madow.</summary>
    public double RowCorrected => RowBits + Bias(Rows - 1);

    /// <summary>Column entropy after Miller and Madow.</summary>
    public double ColumnCorrected => ColumnBits + Bias(Columns - 1);

    /// <summary>Joint entropy after Miller and Madow.</summary>
    public double JointCorrected => JointBits + Bias(Cells - 1);

    /// <summary>Miller and Madow's correction on all three entropies; may be negative.</summary>
    public double Corrected => PlugIn + Bias(Rows + Columns - Cells - 1);

    /// <summary>(R - 1)(C - 1)/(2 n ln 2), the plug-in value expected of independent rows and columns.</summary>
    public double IndependenceBias => Bias((Rows - 1) * (Columns - 1));

    /// <summary>PlugIn less the bias under independence; may be negative.</summary>
    public double BeyondIndependence => PlugIn - IndependenceBias;

    /// <summary>The G statistic of the table, 2 n ln 2 times PlugIn.</summary>
    public double G => 2 * Observations * Math.Log(2) * PlugIn;

    /// <summary>Null for a table without observations; 0 bits where a row or column holds everything.</summary>
    /// <param name="table">Counts, situations by calls.</param>
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
        return new MutualInformation(
            full.Total,
            full.Rows,
            full.Columns,
            cells.Count(count => count > 0),
            Entropy.Bits(rows)!.Value,
            Entropy.Bits(columns)!.Value,
            Entropy.Bits(cells)!.Value,
            cells.Select((count, i) => Entropy.Part(count, rows[i / full.Columns])).Sum() / n,
            HomogeneityTest.Run(full).G / (2 * n * Math.Log(2)));
    }

    // Of so many more degrees of freedom, in bits.
    private double Bias(int freedom) => freedom / (2 * Observations * Math.Log(2));
}
