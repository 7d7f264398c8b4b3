using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Charts to plays: every file, every row, and a problem for each cell that could not be read.</summary>
public static class ChartReader
{
    /// <param name="sources">Charts in the order of the games.</param>
    /// <param name="week">Header mapping and labels of games.</param>
    /// <param name="glossary">Joins the spellings of a word.</param>
    public static ReadLog Read(IReadOnlyList<ChartSource> sources, WeekPlan week, Glossary glossary)
    {
        var problems = new List<Problem>();
        var builder = new PlayLogBuilder(glossary);
        var sheets = new List<Sheet>();
        var (read, leftOut, setAside) = (0, 0, 0);
        foreach (var source in sources)
        {
            var sheet = ReadSheet(source);
            sheets.Add(sheet);
            var header = sheet.Rows.FirstOrDefault(row => !row.IsBlank);
            if (header is null)
            {
                problems.Add(new Problem(ReadingRules.UnreadableFile, new Place(source.Name, 0, ""), "", $"{source.Name} has no header."));
                continue;
            }

            var map = HeaderMap.Read(source.Name, header, week, problems);
            ReportMissing(source.Name, header, map, problems);
            var label = week.Charts.FirstOrDefault(chart => chart.File == source.Name)?.Game ?? "";
            foreach (var row in sheet.Rows.SkipWhile(row => !ReferenceEquals(row, header)).Skip(1).Where(row => !row.IsBlank))
            {
                read++;
                if (IsHeader(row, map))
                {
                    leftOut++;
                    problems.Add(new Problem(ReadingRules.RepeatedHeader, new Place(source.Name, row.Line, ""), "", "The header is repeated here; the row is left out."));
                }
                else if (!builder.Add(source.Name, row, map, label, problems))
                {
                    setAside++;
                }
            }
        }

        return new ReadLog(builder.Build(), problems, read, leftOut, setAside, sheets);
    }

    private static Sheet ReadSheet(ChartSource source)
    {
        using var stream = source.Open();
        return CsvSheetReader.Read(source.Name, stream);
    }

    private static void ReportMissing(string file, SheetRow header, HeaderMap map, List<Problem> problems)
    {
        foreach (var column in ColumnCatalogue.All.Where(c => c.Required && !map.Has(c.Name)))
        {
            problems.Add(new Problem(ReadingRules.MissingRequiredColumn, new Place(file, header.Line, column.Name), "", $"The chart has no column '{column.Name}'."));
        }
    }

    private static bool IsHeader(SheetRow row, HeaderMap map) =>
        row.Cells.Zip(map.Headers).Where(pair => !string.IsNullOrWhiteSpace(pair.First))
            .All(pair => ColumnCatalogue.Key(pair.First) == ColumnCatalogue.Key(pair.Second));
}
