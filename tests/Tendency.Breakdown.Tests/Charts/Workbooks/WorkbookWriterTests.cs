using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
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
        var snaps = ChartedWorkbook.Snaps();
        var read = ChartReader.Read([new ChartSource("chart.xlsx", () => new MemoryStream(ChartedWorkbook.Of(s_workbook, snaps)))], WeekPlan.Default, Glossary.BuiltIn);

        ChartedWorkbook.AssertReadBack(snaps, read);
    }

    private static bool Reads(ChartColumn column, string value) => column.Kind switch
    {
        CellKind.Choice => CellReader.TryChoice(column, value, out var choice) && choice == value,
        CellKind.YardLine => CellReader.TryYardLine(value, out var yards) && CellReader.YardLine(yards) == value,
        CellKind.Personnel => CellReader.TryPersonnel(value, out var personnel) && personnel == value,
        _ => value.Length > 0,
    };

    private static Worksheet Chart(SpreadsheetDocument document) => ((WorksheetPart)document.WorkbookPart!.GetPartById("rId1")).Worksheet;
}
