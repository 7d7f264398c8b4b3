using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Corrections;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Charts to plays: every file, every row, and a problem for each cell that could not be read.</summary>
/// <remarks>
/// Memory: the cells as written stay in <see cref="ReadLog.Sheets"/>, each different text once a file. A chart of usual cells keeps three to thirty
/// times its size; the worst case, rows of a byte or two, a hundred times. Workbooks that unpack to more than 200 times their size are refused.
/// </remarks>
public static class ChartReader
{
    /// <param name="sources">Charts in the order of the games.</param>
    /// <param name="week">Header mapping and labels of games.</param>
    /// <param name="glossary">Joins the spellings of a word.</param>
    /// <param name="options">Which sheet of a workbook, and corrections to apply.</param>
    public static ReadLog Read(IReadOnlyList<ChartSource> sources, WeekPlan week, Glossary glossary, ReadingOptions? options = null)
    {
        options ??= new ReadingOptions();
        var problems = new ProblemLog();
        var builder = new PlayLogBuilder(glossary);
        var sheets = new List<Sheet>();
        var tally = default(RowTally);
        foreach (var source in sources)
        {
            if (ReadSheet(source, options, week, problems) is not { Header: { } header } sheet)
            {
                continue;
            }

            var map = HeaderMap.Read(source.Name, header, week, problems);
            sheet = CorrectedRows.Apply(sheet, map, options.Corrections, problems);
            sheets.Add(sheet);
            var file = ChartFile.Of(sheet, map, week, problems);
            ReportMissing(file, header, problems);
            tally = AddRows(sheet, file, builder, tally, problems);
        }

        CorrectedRows.ReportOtherFiles(options.Corrections, sources.Select(source => source.Name), problems);
        var plays = builder.Build(problems);
        GamesInSeveralFiles.Report(plays, problems);
        UnresolvedSides.Report(plays, problems);
        problems.Close();
        return new ReadLog(plays, problems, tally.Read, tally.LeftOut, tally.SetAside, sheets);
    }

    private static Sheet? ReadSheet(ChartSource source, ReadingOptions options, WeekPlan week, ProblemLog problems)
    {
        try
        {
            var sheet = SheetReader.Read(source, options, week, problems);
            if (sheet is { Header: null })
            {
                problems.Add(new Problem(ReadingRules.UnreadableFile, new Place(source.Name, 0, ""), "", $"{source.Name} holds no filled cell."));
            }

            return sheet;
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            // One file that can not be opened does not cost the others.
            problems.Add(new Problem(ReadingRules.UnreadableFile, new Place(source.Name, 0, ""), "", $"{source.Name} can not be opened: {closed.Message}"));
            return null;
        }
    }

    private static RowTally AddRows(Sheet sheet, ChartFile file, PlayLogBuilder builder, RowTally tally, ProblemLog problems)
    {
        var (read, used, leftOut, setAside) = (tally.Read, tally.Used, tally.LeftOut, tally.SetAside);
        var kinds = new SheetRowKinds(file.Headers);
        var ragged = new RaggedRows(file, sheet.IsWorkbook);
        foreach (var written in sheet.RowsBelow)
        {
            read++;
            var row = ragged.Mend(written, problems);
            switch (kinds.Of(row))
            {
                case SheetRowKind.RepeatedHeader:
                    leftOut++;
                    problems.Add(new Problem(ReadingRules.RepeatedHeader, new Place(file.Name, row.Line, ""), "", "The header is repeated here; the row is left out."));
                    break;
                case SheetRowKind.Totals:
                    leftOut++;
                    problems.Add(new Problem(ReadingRules.TotalsRow, new Place(file.Name, row.Line, ""), CellText.Shown(row.Cells.First(cell => !string.IsNullOrWhiteSpace(cell))), "This is a row of totals, not a snap; it is left out."));
                    break;
                case SheetRowKind.NotCharted:
                    setAside++;
                    problems.Add(new Problem(ReadingRules.NothingCharted, new Place(file.Name, row.Line, file.Headers.Written(ColumnNames.Down)), "", "The row is numbered, but down, distance and call are blank; it is set aside."));
                    break;
                default:
                    var isPlay = builder.Add(row, file, problems);
                    (used, setAside) = isPlay ? (used + 1, setAside) : (used, setAside + 1);
                    break;
            }
        }

        ragged.Report(problems);
        return new RowTally(read, used, leftOut, setAside);
    }

    private static void ReportMissing(ChartFile file, SheetRow header, ProblemLog problems)
    {
        foreach (var column in ColumnCatalogue.All.Where(c => c.Required && !file.Headers.Has(c.Name)))
        {
            if (column.Name == ColumnNames.Game && file.GameLabel.Length > 0)
            {
                continue;
            }

            var advice = column.Name == ColumnNames.Game ? " Add it, or name the game of this file in week.toml." : "";
            problems.Add(new Problem(ReadingRules.MissingRequiredColumn, new Place(file.Name, header.Line, column.Name), "", $"The chart has no column '{column.Name}'.{advice}"));
        }
    }
}
