namespace Tendency.Breakdown.Charts.Reading;

/// <summary>One row of cells as written.</summary>
/// <param name="Line">Physical line (or spreadsheet row) where the row begins, from 1.</param>
public sealed record SheetRow(int Line, IReadOnlyList<string> Cells)
{
    public bool IsBlank => Cells.All(string.IsNullOrWhiteSpace);
}

/// <summary>The cells of one chart file, before anything is understood.</summary>
/// <param name="File">The file's name without its folder.</param>
public sealed record Sheet(string File, IReadOnlyList<SheetRow> Rows);
