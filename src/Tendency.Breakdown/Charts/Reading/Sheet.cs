namespace Tendency.Breakdown.Charts.Reading;

/// <summary>One row of cells as written.</summary>
/// <param name="Line">Physical line (or spreadsheet row) where the row begins, from 1.</param>
public sealed record SheetRow(int Line, IReadOnlyList<string> Cells)
{
    public bool IsBlank
    {
        get
        {
            // Asked once for every row of every file.
            for (var i = 0; i < Cells.Count; i++)
            {
                if (!string.IsNullOrWhiteSpace(Cells[i]))
                {
                    return false;
                }
            }

            return true;
        }
    }
}

/// <summary>The cells of one chart file, before anything is understood.</summary>
/// <param name="File">The file's name without its folder.</param>
public sealed record Sheet(string File, IReadOnlyList<SheetRow> Rows)
{
    /// <summary>Where the header stands among the rows; -1 when every row is blank. Rows above it are titles.</summary>
    public int HeaderIndex { get; init; } = -1;

    /// <summary>Whether it comes from a workbook, whose rows end with their last filled cell.</summary>
    public bool IsWorkbook { get; init; }

    /// <summary>The header; null when every row is blank.</summary>
    public SheetRow? Header => HeaderIndex < 0 ? null : Rows[HeaderIndex];

    /// <summary>The rows below the header that are not blank.</summary>
    public IEnumerable<SheetRow> RowsBelow => Rows.Skip(HeaderIndex + 1).Where(row => !row.IsBlank);
}
