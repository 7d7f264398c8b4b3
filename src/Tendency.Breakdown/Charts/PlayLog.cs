using System.Globalization;
using Microsoft.Data.Analysis;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts;

/// <summary>The charted plays, column by column, one row a snap in film order.</summary>
/// <remarks>
/// The columns live in a <see cref="DataFrame"/>: words as 16-bit codes with their levels beside the frame, numbers as nullable 32-bit integers,
/// free text as strings. A column that no chart has is not there; ask <see cref="Has"/> or <see cref="IsCharted"/>.
/// </remarks>
public sealed class PlayLog
{
    // A selection copies a column when it is first asked for: pages make hundreds of selections and read three or four columns of each.
    private readonly OrderedDictionary<string, Lazy<CategoryColumn>> _categories = new(StringComparer.Ordinal);
    private readonly OrderedDictionary<string, Lazy<NumberColumn>> _numbers = new(StringComparer.Ordinal);
    private readonly OrderedDictionary<string, Lazy<StringDataFrameColumn>> _texts = new(StringComparer.Ordinal);
    private readonly Lazy<DataFrame> _frame;

    // Asked for again and again in loops, so made once.
    private CategoryColumn? _absentCategory;
    private NumberColumn? _absentNumber;

    /// <param name="rows">Number of plays; every column must have as many cells.</param>
    public PlayLog(int rows, IEnumerable<CategoryColumn> categories, IEnumerable<NumberColumn> numbers, IEnumerable<StringDataFrameColumn> texts)
        : this(
            rows,
            categories.Select(column => (column.Name, new Lazy<CategoryColumn>(column))),
            numbers.Select(column => (column.Name, new Lazy<NumberColumn>(column))),
            texts.Select(column => (column.Name, new Lazy<StringDataFrameColumn>(column))))
    {
    }

    private PlayLog(
        int rows,
        IEnumerable<(string Name, Lazy<CategoryColumn> Column)> categories,
        IEnumerable<(string Name, Lazy<NumberColumn> Column)> numbers,
        IEnumerable<(string Name, Lazy<StringDataFrameColumn> Column)> texts)
    {
        Rows = rows;
        Fill(_categories, categories);
        Fill(_numbers, numbers);
        Fill(_texts, texts);
        _frame = new Lazy<DataFrame>(() => new DataFrame(
            _categories.Values.Select(column => (DataFrameColumn)column.Value.Column)
                .Concat(_numbers.Values.Select(column => column.Value.Column))
                .Concat(_texts.Values.Select(column => column.Value))));
    }

    public int Rows { get; }

    public DataFrame Frame => _frame.Value;

    /// <summary>Names of all columns, in the frame's order.</summary>
    public IEnumerable<string> Names => _categories.Keys.Concat(_numbers.Keys).Concat(_texts.Keys);

    public bool Has(string name) => _categories.ContainsKey(name) || _numbers.ContainsKey(name) || _texts.ContainsKey(name);

    /// <summary>Whether the column is there and at least one of its cells is filled.</summary>
    public bool IsCharted(string name) =>
        (_categories.TryGetValue(name, out var category) && category.Value.IsCharted)
        || (_numbers.TryGetValue(name, out var number) && number.Value.IsCharted)
        || (_texts.TryGetValue(name, out var text) && text.Value.Any(t => !string.IsNullOrEmpty(t)));

    /// <summary>A column of words; a nameless one without a charted cell when the log does not have it.</summary>
    public CategoryColumn Category(string name) =>
        _categories.TryGetValue(name, out var column) ? column.Value : _absentCategory ??= CategoryColumn.Create("", [""], new ushort[Rows]);

    /// <summary>A column of numbers; a nameless one without a charted cell when the log does not have it.</summary>
    public NumberColumn Number(string name) =>
        _numbers.TryGetValue(name, out var column) ? column.Value : _absentNumber ??= NumberColumn.Create("", new int?[Rows]);

    /// <summary>Free text of a row; empty when not charted.</summary>
    public string Text(string name, int row) => _texts.TryGetValue(name, out var column) ? column.Value[row] ?? "" : "";

    /// <summary>Any column as words to count by: a column of words as it is, numbers in rising order, the clock as m:ss.</summary>
    public CategoryColumn Dimension(string name)
    {
        if (_numbers.TryGetValue(name, out var column))
        {
            var numbers = column.Value;
            var values = Enumerable.Range(0, Rows).Select(row => numbers[row]).ToArray();
            var rising = values.OfType<int>().Distinct().Order().Select(v => Written(name, v));
            var builder = new CategoryBuilder(name, rising);
            foreach (var value in values)
            {
                _ = builder.Add(value is int v ? Written(name, v) : "");
            }

            return builder.Build();
        }

        return _texts.TryGetValue(name, out var texts) ? CategoryColumn.FromWords(name, texts.Value) : Category(name);
    }

    /// <summary>The plays at the given rows, in that order; levels stay the same, so codes stay comparable.</summary>
    public PlayLog Take(ReadOnlySpan<int> rows)
    {
        var kept = rows.ToArray();
        return new PlayLog(
            kept.Length,
            _categories.Select(pair => (pair.Key, new Lazy<CategoryColumn>(() => pair.Value.Value.Take(kept)))),
            _numbers.Select(pair => (pair.Key, new Lazy<NumberColumn>(() => pair.Value.Value.Take(kept)))),
            _texts.Select(pair => (pair.Key, new Lazy<StringDataFrameColumn>(() => new StringDataFrameColumn(pair.Key, kept.Select(row => pair.Value.Value[row]))))));
    }

    /// <summary>The plays that <paramref name="keep"/> accepts by row number.</summary>
    public PlayLog Where(Func<int, bool> keep)
    {
        var rows = Enumerable.Range(0, Rows).Where(keep).ToArray();
        return rows.Length == Rows ? this : Take(rows);
    }

    /// <summary>The plays whose column holds one of the given words.</summary>
    public PlayLog Where(string name, params string[] values)
    {
        var column = Dimension(name);
        var wanted = values.Select(column.CodeOf).Where(code => code > 0).Select(code => (ushort)code).ToHashSet();
        return Where(row => wanted.Contains(column.Codes[row]));
    }

    /// <summary>This log with columns of words added, or replaced where the name is taken.</summary>
    public PlayLog With(params IEnumerable<CategoryColumn> columns)
    {
        var added = columns.ToArray();
        var names = added.Select(c => c.Name).ToHashSet(StringComparer.Ordinal);
        return new PlayLog(
            Rows,
            Pairs(_categories).Where(c => !names.Contains(c.Name)).Concat(added.Select(c => (c.Name, new Lazy<CategoryColumn>(c)))),
            Pairs(_numbers),
            Pairs(_texts));
    }

    /// <summary>This log with columns of numbers added, or replaced where the name is taken.</summary>
    public PlayLog With(params IEnumerable<NumberColumn> columns)
    {
        var added = columns.ToArray();
        var names = added.Select(c => c.Name).ToHashSet(StringComparer.Ordinal);
        return new PlayLog(
            Rows,
            Pairs(_categories),
            Pairs(_numbers).Where(c => !names.Contains(c.Name)).Concat(added.Select(c => (c.Name, new Lazy<NumberColumn>(c)))),
            Pairs(_texts));
    }

    private static IEnumerable<(string Name, Lazy<T> Column)> Pairs<T>(OrderedDictionary<string, Lazy<T>> columns) =>
        columns.Select(pair => (pair.Key, pair.Value));

    private static void Fill<T>(OrderedDictionary<string, Lazy<T>> columns, IEnumerable<(string Name, Lazy<T> Column)> pairs)
    {
        foreach (var (name, column) in pairs)
        {
            columns.Add(name, column);
        }
    }

    private static string Written(string name, int value) =>
        name == ColumnNames.Clock ? $"{value / 60}:{value % 60:00}" : value.ToString(CultureInfo.InvariantCulture);
}
