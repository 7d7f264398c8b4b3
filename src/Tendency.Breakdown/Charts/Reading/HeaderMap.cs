using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Which cell of a row belongs to which column of ours.</summary>
internal sealed class HeaderMap
{
    private readonly Dictionary<string, int> _cells = new(StringComparer.Ordinal);

    private HeaderMap(IReadOnlyList<string> headers) => Headers = headers;

    /// <summary>The headers as written.</summary>
    public IReadOnlyList<string> Headers { get; }

    public bool Has(string column) => _cells.ContainsKey(column);

    /// <summary>The header as the file writes it; our own name when the file lacks the column.</summary>
    public string Written(string column) => _cells.TryGetValue(column, out var cell) ? Headers[cell].Trim() : column;

    /// <summary>The cell of a row, trimmed; empty when the column or the cell is missing.</summary>
    public string Cell(SheetRow row, string column) =>
        _cells.TryGetValue(column, out var cell) && cell < row.Cells.Count ? row.Cells[cell].Trim() : "";

    /// <summary>Maps a header row. A staff's own headers come first, then our names.</summary>
    public static HeaderMap Read(string file, SheetRow header, WeekPlan week, List<Problem> problems)
    {
        var map = new HeaderMap(header.Cells);
        var staff = week.Headers.ToDictionary(pair => ColumnCatalogue.Key(pair.Value), pair => pair.Key);
        for (var cell = 0; cell < header.Cells.Count; cell++)
        {
            var written = header.Cells[cell].Trim();
            if (written.Length == 0)
            {
                continue;
            }

            var name = staff.GetValueOrDefault(ColumnCatalogue.Key(written)) ?? ColumnCatalogue.Find(written)?.Name;
            if (name is null)
            {
                problems.Add(new Problem(ReadingRules.UnknownHeader, new Place(file, header.Line, written), written, $"'{written}' is not a column of the chart; it is not read."));
            }
            else if (!map._cells.TryAdd(name, cell))
            {
                problems.Add(new Problem(ReadingRules.DuplicateHeader, new Place(file, header.Line, written), written, $"'{written}' occurs twice; only the first is read."));
            }
        }

        return map;
    }
}
