namespace Tendency.Breakdown.Problems;

/// <summary>The rules that reading a file can break: T00x and T01x about the file, T02x about corrections, T1xx about a cell.</summary>
internal static class ReadingRules
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

    public static readonly Rule RaggedRow = new("T005", Severity.Note, "rows have fewer cells than the header",
        "Nothing, if the missing cells were blank.", "Missing cells at the end of a row count as blank; said once a file.");

    public static readonly Rule RepeatedHeader = new("T006", Severity.Note, "the header is repeated",
        "Delete the row.", "Every cell that is filled equals its column's header.");

    public static readonly Rule Encoding = new("T007", Severity.Note, "the text is not UTF-8",
        "Nothing, if accents and dashes look right; else save the chart as UTF-8.",
        "Told by the byte order mark, else by zero bytes (UTF-16), else by bytes that are not valid UTF-8 (Windows-1252).");

    public static readonly Rule RowsAboveHeader = new("T008", Severity.Note, "rows stand above the header",
        "Nothing, if they are a title.", "The header is the row, among the first 30 filled ones, that names the most columns of ours.");

    public static readonly Rule UnclosedQuote = new("T009", Severity.Warning, "a quotation mark is not closed",
        "Delete the quotation mark, or close it.", "A quoted cell that swallows whole rows: its line is read again with the mark taken away.");

    public static readonly Rule TotalsRow = new("T010", Severity.Note, "a row of totals",
        "Nothing; the row is left out.", "A cell says total, sum, average or count, and down or call can not be read.");

    public static readonly Rule CellsBeyondHeader = new("T011", Severity.Warning, "a row has more cells than the header",
        "Check that no comma stands unquoted in a cell; the cells of such a row may have moved.",
        "Filled cells beyond the header are not read; after a last column note they are joined to the note.");

    public static readonly Rule NothingCharted = new("T012", Severity.Warning, "a row is numbered but not charted",
        "Chart the snap or delete the row; until then it is set aside.", "Only game, play, offense, defense, series, quarter or clip are filled.");

    public static readonly Rule OddSeparator = new("T013", Severity.Note, "header and rows are separated differently",
        "Nothing, if the columns look right.", "The rows' separator is the one that gives most rows the same number of cells.");

    public static readonly Rule InvisibleMarks = new("T014", Severity.Note, "cells hold invisible marks",
        "Nothing; the marks are not read.", "Marks of writing direction, zero-width and control characters are taken out of cells.");

    public static readonly Rule OtherSheets = new("T015", Severity.Note, "the workbook has more sheets",
        "Name another with --sheet.", "Without --sheet the first sheet is read.");

    public static readonly Rule MergedCells = new("T016", Severity.Note, "cells are merged",
        "Unmerge them.", "The value of a merged cell counts for each row it spans; other merged cells count as blank.");

    public static readonly Rule BareYardLines = new("T017", Severity.Note, "yard lines without a sign are read as the opponent's side",
        "Nothing, if that is how the charter writes them.", "Some cells of the column carry a minus for the own side; a spreadsheet drops the plus of +35.");

    public static readonly Rule GameInSeveralFiles = new("T018", Severity.Note, "a game stands in more than one file",
        "Nothing, if the files are parts of the game.", "Two files name the same game.");

    public static readonly Rule ManyMore = new("T019", Severity.Warning, "many more of the same",
        "Mend the first ones; the rest is likely the same mistake.", "A file lists at most 20,000 problems of a rule; rows are counted all the same.");

    public static readonly Rule UnreadableCorrections = new("T020", Severity.Error, "the corrections can not be read",
        "Keep the columns file, line, column, old, new.", "The header row of the corrections lacks one of these, or a row has no line number.");

    public static readonly Rule CorrectionDoesNotFit = new("T021", Severity.Warning, "a correction does not fit the chart",
        "Make the list of corrections again from this chart.", "The file, line or column is not there, or the cell does not hold the old value.");

    public static readonly Rule CorrectionApplied = new("T022", Severity.Note, "a correction was applied",
        "Nothing.", "The cell held the old value; the new one is read. The chart itself is not changed.");

    public static readonly Rule UnreadableCell = new("T101", Severity.Warning, "a cell can not be read",
        "Correct the cell; until then it counts as not charted.", "The value is not one the column takes.");

    public static readonly Rule UnreadableRequiredCell = new("T102", Severity.Error, "a required cell is blank or can not be read",
        "Fill the cell; until then the row is set aside.", "game, play, down, distance and call must be readable for a row to count.");

    public static readonly Rule TooManyWords = new("T103", Severity.Warning, "a column holds too many different words",
        "Move free text to the note column.", "A category column keeps 65,534 different words; further ones count as not charted.");

    public static readonly Rule UnresolvedSide = new("T104", Severity.Note, "the back's side can not be resolved",
        "Chart strength, or write strong or weak.", "back_side is L or R and strength is blank.");

    public static readonly Rule SpreadsheetDamage = new("T105", Severity.Error, "a spreadsheet changed the cell",
        "Format the column as text, then write the value again.", "A date where no date belongs (12-11 becomes 11-Dec), or an error such as #REF!.");

    /// <summary>All of them, in the order of their codes.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        UnreadableFile, MissingRequiredColumn, UnknownHeader, DuplicateHeader, RaggedRow, RepeatedHeader, Encoding, RowsAboveHeader, UnclosedQuote, TotalsRow,
        CellsBeyondHeader, NothingCharted, OddSeparator, InvisibleMarks, OtherSheets, MergedCells, BareYardLines, GameInSeveralFiles, ManyMore,
        UnreadableCorrections, CorrectionDoesNotFit, CorrectionApplied,
        UnreadableCell, UnreadableRequiredCell, TooManyWords, UnresolvedSide, SpreadsheetDamage,
    ];
}
