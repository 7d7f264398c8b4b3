using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Tendency.Breakdown.Charts.Workbooks;

/// <summary>The looks of the workbook's cells, by their number in its style sheet.</summary>
internal static class WorkbookStyles
{
    public const uint Plain = 0;

    /// <summary>Kept as typed: 00, -35 and 12-11 stay what they are.</summary>
    public const uint Text = 1;
    public const uint Header = 2;
    public const uint RequiredHeader = 3;
    public const uint Wrapped = 4;

    // Number format 49 of the standard is "@", text.
    private const uint TextFormat = 49;

    public static Stylesheet Sheet() => new(
        new Fonts(
            new Font(new FontSize { Val = 11 }, new FontName { Val = "Calibri" }),
            new Font(new Bold(), new FontSize { Val = 11 }, new FontName { Val = "Calibri" })),
        new Fills(
            new Fill(new PatternFill { PatternType = PatternValues.None }),
            new Fill(new PatternFill { PatternType = PatternValues.Gray125 }),
            Solid("FFE6E6E6"),
            Solid("FFFFE3B3")),
        new Borders(
            new Border(new LeftBorder(), new RightBorder(), new TopBorder(), new BottomBorder(), new DiagonalBorder()),
            new Border(new LeftBorder(), new RightBorder(), new TopBorder(), new BottomBorder { Style = BorderStyleValues.Thin }, new DiagonalBorder())),
        new CellStyleFormats(new CellFormat()),
        new CellFormats(
            new CellFormat { FormatId = 0 },
            new CellFormat { FormatId = 0, NumberFormatId = TextFormat, ApplyNumberFormat = true },
            new CellFormat { FormatId = 0, NumberFormatId = TextFormat, ApplyNumberFormat = true, FontId = 1, ApplyFont = true, FillId = 2, ApplyFill = true, BorderId = 1, ApplyBorder = true },
            new CellFormat { FormatId = 0, NumberFormatId = TextFormat, ApplyNumberFormat = true, FontId = 1, ApplyFont = true, FillId = 3, ApplyFill = true, BorderId = 1, ApplyBorder = true },
            new CellFormat(new Alignment { WrapText = true, Vertical = VerticalAlignmentValues.Top }) { FormatId = 0, NumberFormatId = TextFormat, ApplyNumberFormat = true, ApplyAlignment = true }));

    private static Fill Solid(string color) => new(new PatternFill(new ForegroundColor { Rgb = color }, new BackgroundColor { Indexed = 64 }) { PatternType = PatternValues.Solid });

    /// <summary>A cell of text, in the sheet itself and not in a table of shared strings.</summary>
    public static Cell TextCell(int column, uint row, string text, uint style) => new(new InlineString(new Text(text) { Space = SpaceProcessingModeValues.Preserve }))
    {
        CellReference = $"{ColumnLetters(column)}{row}",
        DataType = CellValues.InlineString,
        StyleIndex = style,
    };

    /// <summary>A, B … Z, AA for 1, 2 … 26, 27.</summary>
    public static string ColumnLetters(int column) =>
        column <= 26 ? $"{(char)('A' + column - 1)}" : ColumnLetters((column - 1) / 26) + (char)('A' + ((column - 1) % 26));
}
