using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Charts.Workbooks;

/// <summary>A workbook to chart into: our columns with drop-downs and ranges, a sheet that explains them, a sheet of words. The same glossary gives the same bytes.</summary>
public static class WorkbookWriter
{
    /// <summary>Names of the sheets, in order; snaps are charted into the first.</summary>
    public const string ChartSheet = "chart";
    public const string ColumnsSheet = "columns";
    public const string WordsSheet = "words";
    public const string ListsSheet = "lists";

    // Four games of 80 snaps would do; more may be charted below, unchecked.
    private const uint LastCheckedRow = 1001;

    /// <param name="glossary">Whose words the drop-downs offer.</param>
    /// <returns>The xlsx file's bytes.</returns>
    public static byte[] Write(Glossary glossary)
    {
        using var stream = new MemoryStream();
        using (var document = SpreadsheetDocument.Create(stream, SpreadsheetDocumentType.Workbook))
        {
            // Named parts throughout: a part without a name gets a random one.
            var workbook = document.AddWorkbookPart();
            document.ChangeIdOfPart(workbook, "rId1");
            var lists = ColumnCatalogue.All.Select(column => (Column: column, Values: WorkbookLists.Of(column, glossary))).Where(list => list.Values.Count > 0).ToArray();
            AddSheet(workbook, "rId1", Chart(lists));
            AddSheet(workbook, "rId2", Columns());
            AddSheet(workbook, "rId3", Words(glossary));
            AddSheet(workbook, "rId4", Lists(lists));
            workbook.AddNewPart<WorkbookStylesPart>("rId5").Stylesheet = WorkbookStyles.Sheet();
            workbook.Workbook = new Workbook(new BookViews(new WorkbookView()), new Sheets(
                new DocumentFormat.OpenXml.Spreadsheet.Sheet { Name = ChartSheet, SheetId = 1, Id = "rId1" },
                new DocumentFormat.OpenXml.Spreadsheet.Sheet { Name = ColumnsSheet, SheetId = 2, Id = "rId2" },
                new DocumentFormat.OpenXml.Spreadsheet.Sheet { Name = WordsSheet, SheetId = 3, Id = "rId3" },
                new DocumentFormat.OpenXml.Spreadsheet.Sheet { Name = ListsSheet, SheetId = 4, Id = "rId4", State = SheetStateValues.Hidden }));
        }

        return SameBytes.Of(stream.ToArray());
    }

    private static void AddSheet(WorkbookPart workbook, string id, Worksheet sheet) => workbook.AddNewPart<WorksheetPart>(id).Worksheet = sheet;

    private static Worksheet Chart((ChartColumn Column, IReadOnlyList<string> Values)[] lists)
    {
        var columns = new DocumentFormat.OpenXml.Spreadsheet.Columns();
        var header = new Row { RowIndex = 1 };
        var checks = new List<DataValidation>();
        for (var i = 0; i < ColumnCatalogue.All.Count; i++)
        {
            var column = ColumnCatalogue.All[i];
            var letters = WorkbookStyles.ColumnLetters(i + 1);
            columns.Append(Width(i + 1, ChartWidth(column), column.Kind is CellKind.Number or CellKind.Distance ? WorkbookStyles.Plain : WorkbookStyles.Text));
            header.Append(WorkbookStyles.TextCell(i + 1, 1, column.Name, column.Required ? WorkbookStyles.RequiredHeader : WorkbookStyles.Header));
            var list = Array.FindIndex(lists, l => l.Column == column);
            var listLetters = WorkbookStyles.ColumnLetters(list + 1);
            checks.Add(WorkbookValidation.Of(column, letters, LastCheckedRow, list < 0 ? "" : $"'{ListsSheet}'!${listLetters}$2:${listLetters}${lists[list].Values.Count + 1}"));
        }

        return new Worksheet(
            Frozen(columnsKept: 2),
            columns,
            new SheetData(header),
            new DataValidations(checks) { Count = (uint)checks.Count });
    }

    private static Worksheet Columns() => Table(
        [14, 10, 46, 70],
        ["column", "required", "values", "about"],
        ColumnCatalogue.All.Select(column => (string[])[column.Name, column.Required ? "yes" : "", ColumnValues.Of(column), column.About]));

    private static Worksheet Words(Glossary glossary)
    {
        var kinds = ColumnCatalogue.All.Where(column => column.GlossaryKind.Length > 0);
        return Table(
            [16, 26, 60, 60],
            ["column", "word", "also written", "about"],
            kinds.SelectMany(column => glossary.Terms
                .Where(term => term.Kind == column.GlossaryKind || (column.Name == ColumnNames.Formation && term.Kind == "formation"))
                .Select(term => (string[])[column.Name, term.Canonical, string.Join(", ", term.Aliases), term.About])));
    }

    private static Worksheet Lists((ChartColumn Column, IReadOnlyList<string> Values)[] lists)
    {
        var deepest = lists.Max(list => list.Values.Count);
        var rows = Enumerable.Range(0, deepest).Select(row => lists.Select(list => row < list.Values.Count ? list.Values[row] : "").ToArray());
        return Table([.. lists.Select(_ => 16)], [.. lists.Select(list => list.Column.Name)], rows);
    }

    private static Worksheet Table(IReadOnlyList<int> widths, IReadOnlyList<string> headers, IEnumerable<IReadOnlyList<string>> rows)
    {
        var cells = new SheetData(RowOf(1, headers, WorkbookStyles.Header));
        uint at = 1;
        foreach (var row in rows)
        {
            cells.Append(RowOf(++at, row, WorkbookStyles.Wrapped));
        }

        var columns = new DocumentFormat.OpenXml.Spreadsheet.Columns(widths.Select((width, i) => Width(i + 1, width, WorkbookStyles.Text)));
        return new Worksheet(Frozen(columnsKept: 0), columns, cells);
    }

    private static Row RowOf(uint index, IReadOnlyList<string> texts, uint style) =>
        new(texts.Select((text, i) => (text, i)).Where(pair => pair.text.Length > 0).Select(pair => WorkbookStyles.TextCell(pair.i + 1, index, pair.text, style))) { RowIndex = index };

    private static SheetViews Frozen(int columnsKept)
    {
        var pane = new Pane { VerticalSplit = 1, TopLeftCell = $"{WorkbookStyles.ColumnLetters(columnsKept + 1)}2", ActivePane = PaneValues.BottomLeft, State = PaneStateValues.Frozen };
        if (columnsKept > 0)
        {
            pane.HorizontalSplit = columnsKept;
            pane.ActivePane = PaneValues.BottomRight;
        }

        return new SheetViews(new SheetView(pane) { WorkbookViewId = 0 });
    }

    private static Column Width(int column, double width, uint style) =>
        new() { Min = (uint)column, Max = (uint)column, Width = width, CustomWidth = true, Style = style };

    private static double ChartWidth(ChartColumn column) => column.Kind switch
    {
        CellKind.Text => 24,
        CellKind.Word => Math.Max(14, column.Name.Length + 2),
        _ => Math.Max(7, column.Name.Length + 2),
    };
}
