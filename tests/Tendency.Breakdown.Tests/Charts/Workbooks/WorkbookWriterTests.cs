using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Charts.Workbooks;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Charts.Workbooks;

public class WorkbookWriterTests
{
    private static readonly byte[] s_workbook = WorkbookWriter.Write(Glossary.BuiltIn);

    [Fact]
    public void Write_Twice_GivesTheSameBytes() => Assert.Equal(s_workbook, WorkbookWriter.Write(Glossary.BuiltIn));

    [Fact]
    public void Write_Workbook_IsValidByItsStandard()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(s_workbook), false);
        Assert.Empty(new OpenXmlValidator().Validate(document).Select(error => $"{error.Part?.Uri} {error.Path?.XPath}: {error.Description}"));
    }

    [Fact]
    public void Write_Workbook_FreezesTheHeaderAndChecksEveryColumn()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(s_workbook), false);
        var chart = Chart(document);
        Assert.Equal((1.0, PaneStateValues.Frozen), (chart.Descendants<Pane>().Single().VerticalSplit!.Value, chart.Descendants<Pane>().Single().State!.Value));
        Assert.Equal(ColumnCatalogue.All.Select(column => column.Name), chart.Descendants<Row>().Single().Elements<Cell>().Select(cell => cell.InnerText));
        Assert.Equal(ColumnCatalogue.All.Count, chart.Descendants<DataValidation>().Count());
        Assert.Equal(["chart", "columns", "words", "lists"], document.WorkbookPart!.Workbook.Descendants<DocumentFormat.OpenXml.Spreadsheet.Sheet>().Select(sheet => sheet.Name!.Value));
    }

    [Fact]
    public void Write_DropDowns_PointAtTheirOwnListAndEveryValueReadsBack()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(s_workbook), false);
        var lists = ((WorksheetPart)document.WorkbookPart!.GetPartById("rId4")).Worksheet.Descendants<Row>()
            .SelectMany(row => row.Elements<Cell>()).ToDictionary(cell => cell.CellReference!.Value!, cell => cell.InnerText);
        var checks = Chart(document).Descendants<DataValidation>().Where(check => check.Type?.Value == DataValidationValues.List).ToArray();
        Assert.Equal(ColumnCatalogue.All.Count(column => column.Kind is CellKind.Choice or CellKind.YardLine or CellKind.Personnel || column.GlossaryKind.Length > 0), checks.Length);
        foreach (var check in checks)
        {
            var column = ColumnCatalogue.Find(check.PromptTitle!)!;
            var ends = check.Formula1!.Text.Replace("'lists'!$", "", StringComparison.Ordinal).Replace("$", "", StringComparison.Ordinal).Split(':');
            var letters = ends[0][..^1];
            Assert.Equal(column.Name, lists[letters + "1"]);
            for (var row = 2; row <= int.Parse(ends[1][letters.Length..]); row++)
            {
                var value = lists[letters + row];
                Assert.True(Reads(column, value), $"{column.Name}: {value}");
            }
        }
    }

    [Fact]
    public void Write_ChartedThenRead_LosesNothing()
    {
        var snaps = Snaps();
        var read = ChartReader.Read([new ChartSource("chart.xlsx", () => new MemoryStream(Charted(snaps)))], WeekPlan.Default, Glossary.BuiltIn);

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

    private static bool Reads(ChartColumn column, string value) => column.Kind switch
    {
        CellKind.Choice => CellReader.TryChoice(column, value, out var choice) && choice == value,
        CellKind.YardLine => CellReader.TryYardLine(value, out var yards) && CellReader.YardLine(yards) == value,
        CellKind.Personnel => CellReader.TryPersonnel(value, out var personnel) && personnel == value,
        _ => value.Length > 0,
    };

    // Every choice of every column at least once, every kind of cell filled in every row.
    private static List<Dictionary<string, string>> Snaps()
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

    private static Worksheet Chart(SpreadsheetDocument document) => ((WorksheetPart)document.WorkbookPart!.GetPartById("rId1")).Worksheet;

    // As a spreadsheet would: numbers as numbers where the column is not text, all else as text.
    private static byte[] Charted(List<Dictionary<string, string>> snaps)
    {
        using var stream = new MemoryStream();
        stream.Write(s_workbook);
        using (var document = SpreadsheetDocument.Open(stream, true))
        {
            var cells = Chart(document).Descendants<SheetData>().Single();
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
