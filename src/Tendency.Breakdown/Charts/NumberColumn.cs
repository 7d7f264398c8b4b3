using Microsoft.Data.Analysis;

namespace Tendency.Breakdown.Charts;

/// <summary>A column of whole numbers; null means not charted.</summary>
public sealed class NumberColumn
{
    internal NumberColumn(Int32DataFrameColumn column) => Column = column;

    public string Name => Column.Name;

    public int Length => (int)Column.Length;

    public bool IsCharted => Column.NullCount < Column.Length;

    internal Int32DataFrameColumn Column { get; }

    public int? this[int row] => Column[row];

    /// <summary>Builds a column from one number a row.</summary>
    public static NumberColumn Create(string name, IEnumerable<int?> values) => new(new Int32DataFrameColumn(name, values));

    internal NumberColumn Take(ReadOnlySpan<int> rows)
    {
        var taken = new int?[rows.Length];
        for (var i = 0; i < rows.Length; i++)
        {
            taken[i] = Column[rows[i]];
        }

        return Create(Name, taken);
    }
}
