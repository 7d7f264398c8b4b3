using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Corrections;

/// <summary>Applies corrections to the cells of a sheet as read; the file stays as it is.</summary>
internal static class CorrectedRows
{
    public static Sheet Apply(Sheet sheet, HeaderMap headers, IReadOnlyList<Correction> corrections, ICollection<Problem> problems)
    {
        var mine = corrections.Where(correction => correction.File == sheet.File).ToArray();
        if (mine.Length == 0)
        {
            return sheet;
        }

        var rows = sheet.Rows.ToArray();
        var byLine = new Dictionary<int, int>();
        for (var i = sheet.HeaderIndex + 1; i < rows.Length; i++)
        {
            _ = byLine.TryAdd(rows[i].Line, i);
        }

        foreach (var correction in mine)
        {
            var place = new Place(sheet.File, correction.Line, CellText.Shown(correction.Column));
            if (!byLine.TryGetValue(correction.Line, out var row))
            {
                Refuse(correction, place, "the chart has no row there", problems);
            }
            else if (headers.CellOf(correction.Column) is not (>= 0 and var cell))
            {
                Refuse(correction, place, $"the chart has no column '{CellText.Shown(correction.Column)}'", problems);
            }
            else if (Text(rows[row], cell) is var found && found != correction.Old)
            {
                Refuse(correction, place, $"the cell holds '{CellText.Shown(found)}'", problems);
            }
            else
            {
                rows[row] = Changed(rows[row], cell, correction.New);
                problems.Add(new Problem(ReadingRules.CorrectionApplied, place, CellText.Shown(correction.Old), $"'{CellText.Shown(correction.Old)}' is read as '{CellText.Shown(correction.New)}'.", CellText.Shown(correction.New)));
            }
        }

        return sheet with { Rows = rows };
    }

    /// <summary>Reports corrections of files that were not read.</summary>
    public static void ReportOtherFiles(IReadOnlyList<Correction> corrections, IEnumerable<string> files, ICollection<Problem> problems)
    {
        var known = files.ToHashSet(StringComparer.Ordinal);
        foreach (var correction in corrections.Where(correction => !known.Contains(correction.File)))
        {
            Refuse(correction, new Place(correction.File, correction.Line, correction.Column), "no chart of that name is read", problems);
        }
    }

    private static void Refuse(Correction correction, Place place, string why, ICollection<Problem> problems) =>
        problems.Add(new Problem(ReadingRules.CorrectionDoesNotFit, place, CellText.Shown(correction.Old), $"'{CellText.Shown(correction.Old)}' to '{CellText.Shown(correction.New)}' is not applied: {why}."));

    private static string Text(SheetRow row, int cell) => cell < row.Cells.Count ? CellText.Clean(row.Cells[cell], out _) : "";

    private static SheetRow Changed(SheetRow row, int cell, string text)
    {
        var cells = new string[Math.Max(row.Cells.Count, cell + 1)];
        for (var i = 0; i < cells.Length; i++)
        {
            cells[i] = i == cell ? text : i < row.Cells.Count ? row.Cells[i] : "";
        }

        return row with { Cells = cells };
    }
}
