using Tendency.Inference.Functions;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// A table of counts &gt;= 0, rows by columns; rows are samples or situations, columns categories. It may be empty; the counts add up to
/// at most <see cref="int.MaxValue"/>.
/// </summary>
public sealed class CountTable
{
    private readonly int[] counts;

    /// <param name="rows">Number of rows.</param>
    /// <param name="columns">Number of columns.</param>
    /// <param name="rowMajor">The counts, row after row.</param>
    /// <exception cref="ArgumentException">The number of counts does not fit, one is negative, or their sum too large.</exception>
    public CountTable(int rows, int columns, IEnumerable<int> rowMajor)
    {
        ArgumentNullException.ThrowIfNull(rowMajor);
        counts = [.. rowMajor];
        if (rows < 0 || columns < 0 || counts.Length != (long)rows * columns || counts.Any(count => count < 0))
        {
            throw new ArgumentException($"A table of {rows} by {columns} needs as many counts, none negative.", nameof(rowMajor));
        }

        if (counts.Sum(count => (long)count) > int.MaxValue)
        {
            throw new ArgumentException($"The counts of a table add up to at most {int.MaxValue}.", nameof(rowMajor));
        }

        Rows = rows;
        Columns = columns;
    }

    /// <param name="rows">One list of counts per row, all of one length.</param>
    /// <exception cref="ArgumentException">The rows differ in length, a count is negative, or their sum too large.</exception>
    public CountTable(IReadOnlyList<IReadOnlyList<int>> rows)
        : this(rows?.Count ?? 0, rows is null or [] ? 0 : rows[0].Count, Flat(rows))
    {
    }

    /// <summary>Number of rows, 0 or more.</summary>
    public int Rows { get; }

    /// <summary>Number of columns, 0 or more.</summary>
    public int Columns { get; }

    /// <summary>Sum of all counts.</summary>
    public int Total => counts.Sum();

    /// <exception cref="ArgumentOutOfRangeException">There is no such row or column.</exception>
    public int this[int row, int column]
    {
        get
        {
            Domain.Position(row, Rows);
            Domain.Position(column, Columns);
            return counts[(row * Columns) + column];
        }
    }

    /// <summary>Sum of each row.</summary>
    public int[] RowTotals() => [.. Enumerable.Range(0, Rows).Select(r => Enumerable.Range(0, Columns).Sum(c => this[r, c]))];

    /// <summary>Sum of each column.</summary>
    public int[] ColumnTotals() => [.. Enumerable.Range(0, Columns).Select(c => Enumerable.Range(0, Rows).Sum(r => this[r, c]))];

    /// <summary>The same table without rows and columns that hold nothing.</summary>
    public CountTable WithoutEmpty()
    {
        int[] rowTotals = RowTotals(), columnTotals = ColumnTotals();
        int[] rows = [.. Enumerable.Range(0, Rows).Where(r => rowTotals[r] > 0)];
        int[] columns = [.. Enumerable.Range(0, Columns).Where(c => columnTotals[c] > 0)];
        return new CountTable(rows.Length, columns.Length, rows.SelectMany(r => columns.Select(c => this[r, c])));
    }

    /// <summary>Rows and columns exchanged.</summary>
    public CountTable Transposed() =>
        new(Columns, Rows, Enumerable.Range(0, Columns).SelectMany(c => Enumerable.Range(0, Rows).Select(r => this[r, c])));

    private static IEnumerable<int> Flat(IReadOnlyList<IReadOnlyList<int>>? rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        return rows.All(row => row is not null && row.Count == rows[0].Count)
            ? rows.SelectMany(row => row)
            : throw new ArgumentException("The rows of a table are of one length.", nameof(rows));
    }
}
