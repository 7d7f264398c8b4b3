namespace Tendency.Inference.Comparisons;

/// <summary>A table of counts &gt;= 0, rows by columns; rows are samples or situations, columns categories.</summary>
public sealed class CountTable
{
    private readonly int[] counts;

    /// <param name="rows">Number of rows.</param>
    /// <param name="columns">Number of columns.</param>
    /// <param name="rowMajor">The counts, row after row.</param>
    /// <exception cref="ArgumentException">The number of counts does not fit, or one is negative.</exception>
    public CountTable(int rows, int columns, IEnumerable<int> rowMajor)
    {
        counts = [.. rowMajor];
        if (rows < 0 || columns < 0 || counts.Length != (long)rows * columns || counts.Any(count => count < 0))
        {
            throw new ArgumentException($"A table of {rows} by {columns} needs as many counts, none negative.", nameof(rowMajor));
        }

        Rows = rows;
        Columns = columns;
    }

    public CountTable(IReadOnlyList<IReadOnlyList<int>> rows)
        : this(rows.Count, rows.Count == 0 ? 0 : rows[0].Count, rows.SelectMany(row => row))
    {
    }

    public int Rows { get; }

    public int Columns { get; }

    public int Total => counts.Sum();

    public int this[int row, int column] => counts[(row * Columns) + column];

    public int[] RowTotals() => [.. Enumerable.Range(0, Rows).Select(r => Enumerable.Range(0, Columns).Sum(c => this[r, c]))];

    public int[] ColumnTotals() => [.. Enumerable.Range(0, Columns).Select(c => Enumerable.Range(0, Rows).Sum(r => this[r, c]))];

    /// <summary>The same table without rows and columns that hold nothing.</summary>
    public CountTable WithoutEmpty()
    {
        int[] rowTotals = RowTotals(), columnTotals = ColumnTotals();
        int[] rows = [.. Enumerable.Range(0, Rows).Where(r => rowTotals[r] > 0)];
        int[] columns = [.. Enumerable.Range(0, Columns).Where(c => columnTotals[c] > 0)];
        return new CountTable(rows.Length, columns.Length, rows.SelectMany(r => columns.Select(c => this[r, c])));
    }

    public CountTable Transposed() =>
        new(Columns, Rows, Enumerable.Range(0, Columns).SelectMany(c => Enumerable.Range(0, Rows).Select(r => this[r, c])));
}
