using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>What holds for all rows of a file and is known only when all have been seen.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Headers">Its columns.</param>
/// <param name="GameLabel">The week file's label of its game; empty = the chart's own.</param>
/// <param name="LabelReplaces">Whether the label stands for the chart's own too, because the file holds one game.</param>
/// <param name="BareYardLinesAreOpponents">Whether a yard line without a sign is the opponent's.</param>
internal sealed record ChartFile(string Name, HeaderMap Headers, string GameLabel, bool LabelReplaces, bool BareYardLinesAreOpponents)
{
    public static ChartFile Of(Sheet sheet, HeaderMap headers, WeekPlan week, ICollection<Problem> problems)
    {
        var label = week.Charts.FirstOrDefault(chart => chart.File == sheet.File)?.Game ?? "";
        var games = headers.Has(ColumnNames.Game) && label.Length > 0
            ? sheet.RowsBelow.Select(row => headers.Cell(row, ColumnNames.Game)).Where(game => game.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase).Take(2).Count()
            : 0;
        return new ChartFile(sheet.File, headers, label, label.Length > 0 && games <= 1, BareLines(sheet, headers, problems));
    }

    // -35 and 35 in one column: the charter wrote -35 and +35, and a spreadsheet dropped the plus.
    private static bool BareLines(Sheet sheet, HeaderMap headers, ICollection<Problem> problems)
    {
        if (!headers.Has(ColumnNames.BallOn))
        {
            return false;
        }

        var column = ColumnCatalogue.Find(ColumnNames.BallOn)!;
        var (minus, bare, other) = (0, 0, 0);
        var first = 0;
        foreach (var row in sheet.RowsBelow)
        {
            var text = CellText.Plain(column, headers.Cell(row, ColumnNames.BallOn));
            if (text.Length == 0 || text == "50")
            {
                continue;
            }

            var isBare = text.Length <= 2 && text.All(char.IsAsciiDigit);
            first = isBare && first == 0 ? row.Line : first;
            bare += isBare ? 1 : 0;
            minus += text[0] is '-' or '\u2212' or '\u2013' ? 1 : 0;
            other += !isBare && char.IsAsciiLetter(text[0]) ? 1 : 0;
        }

        var opponents = bare > 0 && minus > 0 && minus >= other;
        if (opponents)
        {
            problems.Add(new Problem(ReadingRules.BareYardLines, new Place(sheet.File, first, headers.Written(ColumnNames.BallOn)), "", $"{bare} yard lines have no sign while {minus} have a minus; those without are read as the opponent's side."));
        }

        return opponents;
    }
}
