using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Workbooks;

namespace Tendency.Breakdown.Tests.Charts.Workbooks;

/// <summary>A workbook with snaps charted into it, as a spreadsheet program would write them.</summary>
internal static class ChartedWorkbook
{
    /// <summary>Every cell of every snap is what was charted, and nothing was said about any.</summary>
    public static void AssertReadBack(List<Dictionary<string, string>> snaps, ReadLog read)
    {
        Assert.Empty(read.Problems);
        Assert.Equal((snaps.Count, snaps.Count, 0), (read.RowsRead, read.Plays.Rows, read.RowsSetAside));
        for (var row = 0; row < snaps.Count; row++)
        {
            foreach (var column in ColumnCatalogue.All)
            {
                Assert.Equal($"{column.Name}={Expected(column, snaps[row])}", $"{column.Name}={Cell(read.Plays, column, row)}");
            }
        }
    }

    // Every choice of every column at least once, every kind of cell filled in every row.
    public static List<Dictionary<string, string>> Snaps()
    {
        var most = ColumnCatalogue.All.Max(column => column.Choices.Count);
        return [.. Enumerable.Range(0, most).Select(row => ColumnCatalogue.All.ToDictionary(column => column.Name, column => Value(column, row)))];
    }

    private static string Value(ChartColumn column, int row) => column.Kind switch
    {
        CellKind.Choice when column.Name == ColumnNames.Down => column.Choices[row % 4],
        CellKind.Choice when column.Name == ColumnNames.BackSide => column.Choices[row % 4],
        CellKind.Choice => column.Choices[row % column.Choices.Count],
        CellKind.Number => $"{Math.Max(column.Least, Math.Min(column.Most, row - 3))}",
        CellKind.Distance => row == 2 ? "goal" : $"{row + 1}",
        CellKind.YardLine => row == 2 ? "opp 4" : $"own {20 + row}",
        CellKind.Personnel => row == 0 ? "00" : "12",
        CellKind.Clock => $"{row}:0{row}",
        CellKind.Word when column.Name == ColumnNames.RunScheme => "inside zone",
        CellKind.Word when column.Name == ColumnNames.Formation => "doubles",
        CellKind.Text => row == 1 ? "two\nlines, \"said\" =1+1 é" : $"CB-00{row}",
        _ => "word " + column.Name,
    };

    private static string Expected(ChartColumn column, Dictionary<string, string> snap) =>
        column.Kind == CellKind.Distance && snap[column.Name] == "goal" ? "4" : snap[column.Name];

    private static string Cell(PlayLog log, ChartColumn column, int row) => column.Kind switch
    {
        CellKind.Text => log.Text(column.Name, row),
        CellKind.Clock => log.Dimension(column.Name)[row],
        CellKind.Number or CellKind.Distance => $"{log.Number(column.Name)[row]}",
        _ => log.Category(column.Name)[row],
    };

    // As a spreadsheet would: numbers as numbers where the column is not text, all else as text.
    public static byte[] Of(byte[] workbook, List<Dictionary<string, string>> snaps)
    {
        using var stream = new MemoryStream();
        stream.Write(workbook);
        using (var document = SpreadsheetDocument.Open(stream, true))
        {
            var cells = ((WorksheetPart)document.WorkbookPart!.GetPartById("rId1")).Worksheet.Descendants<SheetData>().Single();
            for (var i = 0; i < snaps.Count; i++)
            {
                var row = (uint)i + 2;
                cells.Append(new Row(ColumnCatalogue.All.Select((column, at) => column.Kind is CellKind.Number or CellKind.Distance && int.TryParse(snaps[i][column.Name], out _)
                    ? new Cell(new CellValue(snaps[i][column.Name])) { CellReference = $"{WorkbookStyles.ColumnLetters(at + 1)}{row}" }
                    : WorkbookStyles.TextCell(at + 1, row, snaps[i][column.Name], WorkbookStyles.Text)))
                { RowIndex = row });
            }
        }

        return stream.ToArray();
    }
}
