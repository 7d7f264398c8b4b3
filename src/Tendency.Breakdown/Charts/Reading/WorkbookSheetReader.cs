using System.Text;
using ExcelDataReader;
using ExcelDataReader.Exceptions;
using Tendency.Breakdown.Charts.Workbooks;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>A workbook's sheet to cells: numbers, dates and times as the text a coach means, formulas as their last value. Links to other files are never followed.</summary>
internal static class WorkbookSheetReader
{
    // A sheet formatted to its last row and column would take minutes to walk.
    private const long MostCells = 60_000_000;

    // The standard's widest sheet ends at XFD; a cell that claims to stand beyond would cost memory for all before it.
    private const int MostColumns = 16_384;

    // The sheets of our own workbook that are no charts.
    private static readonly string[] s_ownSheets = [WorkbookWriter.ColumnsSheet, WorkbookWriter.WordsSheet, WorkbookWriter.ListsSheet];

    /// <returns>The rows that hold something; null when the workbook can not be read, which has then been reported.</returns>
    public static List<SheetRow>? Read(string file, byte[] bytes, string sheetName, ICollection<Problem> problems)
    {
        try
        {
            var failed = 0;
            if (bytes[0] == 'P' && WorkbookGuard.Refusal(bytes, out failed) is { } refusal)
            {
                return Refuse(file, refusal, problems);
            }

            if (failed > 0)
            {
                problems.Add(new Problem(ReadingRules.SpreadsheetDamage, new Place(file, 0, ""), $"{failed}", $"{failed} cells of the workbook hold an error such as #REF! or #N/A; they count as not charted."));
            }

            Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
            using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(bytes, writable: false));
            return ReadSheet(file, reader, sheetName, problems);
        }
        catch (InvalidPasswordException)
        {
            return Refuse(file, "The workbook is locked with a password; save it without one.", problems);
        }
        catch (Exception broken)
        {
            // The library throws whatever its parsers throw on a damaged file, "out of memory" for an impossible size included;
            // none of it is worth more to a coach than this.
            return Refuse(file, $"The workbook is damaged ({CellText.Shown(broken.Message.TrimEnd('.'))}).", problems);
        }
    }

    private static List<SheetRow>? ReadSheet(string file, IExcelDataReader reader, string sheetName, ICollection<Problem> problems)
    {
        var names = new List<string>();
        do
        {
            names.Add(reader.Name);
        }
        while (reader.NextResult());
        reader.Reset();

        var wanted = sheetName.Length == 0 ? 0 : names.FindIndex(name => string.Equals(name.Trim(), sheetName.Trim(), StringComparison.OrdinalIgnoreCase));
        if (wanted < 0)
        {
            return Refuse(file, $"The workbook has no sheet '{CellText.Shown(sheetName)}'; its sheets are {Listed(names)}.", problems);
        }

        for (var i = 0; i < wanted; i++)
        {
            _ = reader.NextResult();
        }

        if (reader.FieldCount > MostColumns || (long)reader.RowCount * reader.FieldCount > MostCells)
        {
            return Refuse(file, $"The sheet '{reader.Name}' spans {reader.RowCount} rows and {reader.FieldCount} columns; delete the empty formatted ones.", problems);
        }

        if (names.Skip(1).Except(s_ownSheets, StringComparer.Ordinal).Any() && sheetName.Length == 0)
        {
            problems.Add(new Problem(ReadingRules.OtherSheets, new Place(file, 0, ""), "", $"Sheet '{CellText.Shown(names[0])}' is read; not read: {Listed(names.Skip(1))}."));
        }

        var merged = reader.MergeCells ?? [];
        var rows = Rows(reader);
        return merged.Length == 0 ? rows : Unmerged(file, rows, merged, problems);
    }

    private static List<SheetRow> Rows(IExcelDataReader reader)
    {
        var rows = new List<SheetRow>();
        var pool = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var line = 1; reader.Read(); line++)
        {
            var width = reader.FieldCount;
            while (width > 0 && reader.GetValue(width - 1) is null)
            {
                width--;
            }

            if (width == 0)
            {
                continue;
            }

            var cells = new string[width];
            for (var cell = 0; cell < width; cell++)
            {
                var text = WorkbookCell.Text(reader, cell);
                if (!pool.TryGetValue(text, out cells[cell]!))
                {
                    pool.Add(text, text);
                    cells[cell] = text;
                }
            }

            rows.Add(new SheetRow(line, cells));
        }

        return rows;
    }

    // A game label merged down its rows belongs to each of them; only the first holds it in the file.
    private static List<SheetRow> Unmerged(string file, List<SheetRow> rows, CellRange[] merged, ICollection<Problem> problems)
    {
        var down = merged.Where(range => range.ToRow > range.FromRow && range.FromColumn == range.ToColumn).ToArray();
        var byLine = new Dictionary<int, int>();
        for (var i = 0; i < rows.Count; i++)
        {
            byLine.Add(rows[i].Line, i);
        }

        var filled = 0;
        foreach (var range in down)
        {
            if (!byLine.TryGetValue(range.FromRow + 1, out var first) || range.FromColumn >= rows[first].Cells.Count)
            {
                continue;
            }

            var value = rows[first].Cells[range.FromColumn];
            for (var i = first + 1; i < rows.Count && rows[i].Line <= range.ToRow + 1; i++)
            {
                var cells = new string[Math.Max(rows[i].Cells.Count, range.FromColumn + 1)];
                Array.Fill(cells, "");
                rows[i].Cells.ToArray().CopyTo(cells, 0);
                cells[range.FromColumn] = value;
                rows[i] = rows[i] with { Cells = cells };
                filled++;
            }
        }

        problems.Add(new Problem(ReadingRules.MergedCells, new Place(file, merged[0].FromRow + 1, ""), "", filled > 0
            ? $"{merged.Length} merged ranges; the value of those that run down a column was read in {filled} more rows."
            : $"{merged.Length} merged ranges; a value counts for the first cell of each."));
        return rows;
    }

    private static string Listed(IEnumerable<string> names)
    {
        var all = names.Select(CellText.Shown).ToArray();
        return string.Join(", ", all.Take(10)) + (all.Length > 10 ? $" and {all.Length - 10} more" : "");
    }

    private static List<SheetRow>? Refuse(string file, string why, ICollection<Problem> problems)
    {
        problems.Add(new Problem(ReadingRules.UnreadableFile, new Place(file, 0, ""), "", why));
        return null;
    }
}
