using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Which cell of a row belongs to which column of ours.</summary>
internal sealed class HeaderMap
{
    /// <summary>Columns looked at; a chart has some fifty.</summary>
    public const int MostColumns = 1024;

    // So many unknown headers are told one by one.
    private const int MostTold = 60;

    private readonly Dictionary<string, int> _cells = new(StringComparer.Ordinal);

    private HeaderMap(IReadOnlyList<string> headers) => Headers = headers;

    /// <summary>The headers as written.</summary>
    public IReadOnlyList<string> Headers { get; }

    /// <summary>Columns of ours that the file has, in our order.</summary>
    public IReadOnlyList<ChartColumn> Columns { get; private set; } = [];

    public bool Has(string column) => _cells.ContainsKey(column);

    /// <summary>The header as the file writes it; our own name when the file lacks the column.</summary>
    public string Written(string column) => _cells.TryGetValue(column, out var cell) ? CellText.Clean(Headers[cell], out _) : column;

    /// <summary>Where the column's cell stands in a row; -1 when the file lacks the column.</summary>
    public int IndexOf(string column) => _cells.GetValueOrDefault(column, -1);

    /// <summary>Where the cell of a header stands, given as the file writes it or by our name; -1 when there is none.</summary>
    public int CellOf(string header)
    {
        for (var cell = 0; cell < Headers.Count; cell++)
        {
            if (header.Length > 0 && string.Equals(CellText.Clean(Headers[cell], out _), header, StringComparison.OrdinalIgnoreCase))
            {
                return cell;
            }
        }

        return ColumnCatalogue.Find(header) is { } column ? IndexOf(column.Name) : -1;
    }

    /// <summary>The cell of a row, trimmed; empty when the column or the cell is missing.</summary>
    public string Cell(SheetRow row, string column) =>
        _cells.TryGetValue(column, out var cell) && cell < row.Cells.Count ? row.Cells[cell].Trim() : "";

    /// <summary>Tells a header that is ours or that the week file maps.</summary>
    public static Func<string, bool> Knows(WeekPlan week)
    {
        var staff = week.Headers.Values.Select(ColumnCatalogue.Key).ToHashSet(StringComparer.Ordinal);
        return header => header.Length is > 0 and < 80 && (ColumnCatalogue.Find(header) is not null || staff.Contains(ColumnCatalogue.Key(header)));
    }

    /// <summary>Maps a header row. A staff's own headers come first, then our names.</summary>
    public static HeaderMap Read(string file, SheetRow header, WeekPlan week, ICollection<Problem> problems)
    {
        var map = new HeaderMap(header.Cells);
        var staff = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, written) in week.Headers)
        {
            _ = staff.TryAdd(ColumnCatalogue.Key(written), name);
        }

        var unknown = new List<string>();
        for (var cell = 0; cell < Math.Min(header.Cells.Count, MostColumns); cell++)
        {
            var written = CellText.Clean(header.Cells[cell], out _);
            if (written.Length == 0)
            {
                continue;
            }

            var name = staff.GetValueOrDefault(ColumnCatalogue.Key(written)) ?? ColumnCatalogue.Find(written)?.Name;
            if (name is null)
            {
                unknown.Add(written);
            }
            else if (!map._cells.TryAdd(name, cell))
            {
                var first = map.Written(name);
                var how = ColumnCatalogue.Key(first) == ColumnCatalogue.Key(written) ? "occurs twice" : $"and '{CellText.Shown(first)}' both mean {name}";
                problems.Add(new Problem(ReadingRules.DuplicateHeader, new Place(file, header.Line, CellText.Shown(written)), CellText.Shown(written), $"'{CellText.Shown(written)}' {how}; only the first is read."));
            }
        }

        map.Columns = [.. ColumnCatalogue.All.Where(column => map.Has(column.Name))];
        map.ReportUnknown(file, header, unknown, problems);
        return map;
    }

    private void ReportUnknown(string file, SheetRow header, List<string> unknown, ICollection<Problem> problems)
    {
        var free = ColumnCatalogue.All.Select(column => column.Name).Where(name => !Has(name)).ToArray();
        foreach (var written in unknown.Take(MostTold))
        {
            var nearest = HeaderSuggestion.For(written, free);
            var shown = CellText.Shown(written);
            var hint = nearest.Length == 0 ? "" : $" If it is {nearest}, write {nearest} = \"{shown}\" under [headers] in week.toml.";
            problems.Add(new Problem(ReadingRules.UnknownHeader, new Place(file, header.Line, shown), shown, $"'{shown}' is not a column of the chart; it is not read.{hint}", nearest));
        }

        var more = unknown.Count - MostTold + Math.Max(0, header.Cells.Count - MostColumns);
        if (unknown.Count > MostTold || header.Cells.Count > MostColumns)
        {
            problems.Add(new Problem(ReadingRules.UnknownHeader, new Place(file, header.Line, ""), "", $"{Math.Max(more, header.Cells.Count - MostColumns)} more headers are no columns of the chart or stand beyond column {MostColumns}; they are not read."));
        }
    }
}
