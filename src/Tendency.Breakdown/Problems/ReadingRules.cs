namespace Tendency.Breakdown.Problems;

/// <summary>The rules that reading a file can break: T0xx about the file, T1xx about a cell.</summary>
public static class ReadingRules
{
    public static readonly Rule UnreadableFile = new("T001", Severity.Error, "the file can not be read as a chart",
        "Save it again as CSV (UTF-8) or xlsx.", "The bytes are neither text with a delimiter nor a workbook.");

    public static readonly Rule MissingRequiredColumn = new("T002", Severity.Error, "a required column is missing",
        "Add the column, or map your own header to it in week.toml under [headers].",
        "The header row lacks game, play, down, distance or call.");

    public static readonly Rule UnknownHeader = new("T003", Severity.Note, "a header is none of ours",
        "Ignore it, rename it, or map it in week.toml under [headers].", "Headers are compared without case, spaces, _ and -.");

    public static readonly Rule DuplicateHeader = new("T004", Severity.Warning, "a header occurs twice",
        "Keep one of the columns.", "The first column of that name is read, the others are not.");

    public static readonly Rule RaggedRow = new("T005", Severity.Note, "a row has more or fewer cells than the header",
        "Check that no comma stands unquoted in a cell.", "Cells beyond the header must be blank; missing cells count as blank.");

    public static readonly Rule RepeatedHeader = new("T006", Severity.Note, "the header is repeated",
        "Delete the row.", "Every cell that is filled equals its column's header.");

    public static readonly Rule UnreadableCell = new("T101", Severity.Warning, "a cell can not be read",
        "Correct the cell; until then it counts as not charted.", "The value is not one the column takes.");

    public static readonly Rule UnreadableRequiredCell = new("T102", Severity.Error, "a required cell is blank or can not be read",
        "Fill the cell; until then the row is set aside.", "game, play, down, distance and call must be readable for a row to count.");

    public static readonly Rule TooManyWords = new("T103", Severity.Warning, "a column holds too many different words",
        "Move free text to the note column.", "A category column keeps 65,534 different words; further ones count as not charted.");

    public static readonly Rule UnresolvedSide = new("T104", Severity.Note, "the back's side can not be resolved",
        "Chart strength, or write strong or weak.", "back_side is L or R and strength is blank.");

    /// <summary>All of them, in the order of their codes.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        UnreadableFile, MissingRequiredColumn, UnknownHeader, DuplicateHeader, RaggedRow, RepeatedHeader,
        UnreadableCell, UnreadableRequiredCell, TooManyWords, UnresolvedSide,
    ];
}
