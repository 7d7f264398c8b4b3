using System.Globalization;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Charts.Corrections;

/// <summary>Accepted corrections from a table with the columns file, line, column, old, new and, if wanted, accepted.</summary>
public static class CorrectionsReader
{
    private static readonly string[] s_columns = ["file", "line", "column", "old", "new"];
    private static readonly HashSet<string> s_yes = new(StringComparer.OrdinalIgnoreCase) { "yes", "y", "x", "1", "true", "ok", "accepted" };

    /// <summary>Reads the corrections that apply: with a column <c>accepted</c> those that say yes, without one all.</summary>
    /// <param name="source">The table, in any of the forms a chart may have.</param>
    /// <param name="problems">Takes rows that say no place.</param>
    public static IReadOnlyList<Correction> Read(ChartSource source, ICollection<Problem> problems)
    {
        // The table's own headers stand in for ours, so that the same reader finds separator and header.
        var week = WeekPlan.Default with { Headers = new Dictionary<string, string> { ["game"] = "file", ["play"] = "line", ["series"] = "column", ["note"] = "old", ["clip"] = "new" } };
        if (SheetReader.Read(source, new ReadingOptions(), week, problems) is not { Header: { } header } sheet)
        {
            return [];
        }

        var keys = header.Cells.Select(cell => ColumnCatalogue.Key(CellText.Clean(cell, out _))).ToList();
        var at = s_columns.Select(name => keys.IndexOf(name)).ToArray();
        if (Array.IndexOf(at, -1) is >= 0 and var missing)
        {
            problems.Add(new Problem(ReadingRules.UnreadableCorrections, new Place(source.Name, header.Line, s_columns[missing]), "", $"The corrections have no column '{s_columns[missing]}'; none is applied.", string.Join(',', s_columns)));
            return [];
        }

        var accepted = keys.IndexOf("accepted");
        var corrections = new List<Correction>();
        foreach (var row in sheet.RowsBelow.Where(row => accepted < 0 || s_yes.Contains(Cell(row, accepted))))
        {
            if (int.TryParse(Cell(row, at[1]), NumberStyles.None, CultureInfo.InvariantCulture, out var line) && line > 0)
            {
                corrections.Add(new Correction(Cell(row, at[0]), line, Cell(row, at[2]), Cell(row, at[3]), Cell(row, at[4])));
            }
            else
            {
                problems.Add(new Problem(ReadingRules.UnreadableCorrections, new Place(source.Name, row.Line, "line"), CellText.Shown(Cell(row, at[1])), $"line is '{CellText.Shown(Cell(row, at[1]))}'; it takes the line's number in the chart. The correction is not applied."));
            }
        }

        return corrections;
    }

    // Our own lists put an apostrophe before text that a spreadsheet would run as a formula.
    private static string Cell(SheetRow row, int index)
    {
        var text = index < row.Cells.Count ? CellText.Clean(row.Cells[index], out _) : "";
        return text.Length > 1 && text[0] == '\'' && FormulaText.Safe(text[1..]) == text ? text[1..] : text;
    }
}
