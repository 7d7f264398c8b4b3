using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>What a filled row below the header is.</summary>
internal enum SheetRowKind
{
    Snap,
    RepeatedHeader,
    Totals,

    /// <summary>A row that says which snap it is and nothing about it.</summary>
    NotCharted,
}

/// <summary>Tells snaps from the other rows that stand in a chart.</summary>
internal sealed class SheetRowKinds
{
    private static readonly HashSet<string> s_totals = new(StringComparer.Ordinal)
    {
        "total", "totals", "grandtotal", "subtotal", "sum", "average", "averages", "avg", "mean", "count",
    };

    private static readonly string[] s_identity =
        [ColumnNames.Game, ColumnNames.Play, ColumnNames.Offense, ColumnNames.Defense, ColumnNames.Series, ColumnNames.Quarter, ColumnNames.Clip];

    private static readonly ChartColumn s_down = ColumnCatalogue.Find(ColumnNames.Down)!;
    private static readonly ChartColumn s_call = ColumnCatalogue.Find(ColumnNames.Call)!;

    private readonly HeaderMap _map;
    private readonly string[] _headerKeys;
    private readonly HashSet<int> _identity;

    public SheetRowKinds(HeaderMap map)
    {
        _map = map;
        _headerKeys = [.. map.Headers.Select(header => ColumnCatalogue.Key(CellText.Clean(header, out _)))];
        _identity = [.. s_identity.Select(map.IndexOf).Where(index => index >= 0)];
    }

    public SheetRowKind Of(SheetRow row)
    {
        // A row whose call and down are readable is a snap whatever else it says.
        if (Reads(s_call, row) && (Reads(s_down, row) || _map.Cell(row, ColumnNames.Down).Length == 0))
        {
            return SheetRowKind.Snap;
        }

        return IsHeader(row) ? SheetRowKind.RepeatedHeader
            : row.Cells.Any(IsTotal) ? SheetRowKind.Totals
            : IsNumberedOnly(row) ? SheetRowKind.NotCharted
            : SheetRowKind.Snap;
    }

    private bool Reads(ChartColumn column, SheetRow row) =>
        _map.Cell(row, column.Name) is { Length: > 0 } text && CellReader.TryChoice(column, CellText.Plain(column, text), out _);

    private bool IsHeader(SheetRow row)
    {
        for (var i = 0; i < row.Cells.Count; i++)
        {
            if (!string.IsNullOrWhiteSpace(row.Cells[i]) && (i >= _headerKeys.Length || ColumnCatalogue.Key(CellText.Clean(row.Cells[i], out _)) != _headerKeys[i]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsTotal(string cell) => cell.Length is >= 3 and <= 20 && s_totals.Contains(ColumnCatalogue.Key(cell).TrimEnd(':', '='));

    private bool IsNumberedOnly(SheetRow row)
    {
        for (var i = 0; i < row.Cells.Count; i++)
        {
            if (!_identity.Contains(i) && !string.IsNullOrWhiteSpace(row.Cells[i]))
            {
                return false;
            }
        }

        return true;
    }
}
