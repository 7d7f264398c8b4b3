using System.Text;

namespace Tendency.SampleCharts.Charts;

/// <summary>A chart as text cells: one header row, one row a snap, in the order of <see cref="ChartColumns.All"/>.</summary>
public sealed record ChartSheet(string FileName, IReadOnlyList<string> Headers, IReadOnlyList<string[]> Rows)
{
    public static ChartSheet Of(string fileName, IEnumerable<ChartedSnap> snaps) => new(
        fileName,
        [.. ChartColumns.All.Select(column => column.Header)],
        [.. snaps.Select(snap => ChartColumns.All.Select(column => column.Write(snap)).ToArray())]);

    /// <summary>The sheet as delimited text with line feeds; a cell is quoted where it must be.</summary>
    public string ToText(char delimiter = ',')
    {
        var text = new StringBuilder();
        AppendRow(text, Headers, delimiter);
        foreach (var row in Rows)
        {
            AppendRow(text, row, delimiter);
        }

        return text.ToString();
    }

    internal static void AppendRow(StringBuilder text, IReadOnlyList<string> cells, char delimiter)
    {
        for (var i = 0; i < cells.Count; i++)
        {
            var cell = cells[i];
            var quoted = cell.Contains(delimiter) || cell.Contains('"') || cell.Contains('\n');
            text.Append(i == 0 ? "" : delimiter).Append(quoted ? $"\"{cell.Replace("\"", "\"\"")}\"" : cell);
        }

        text.Append('\n');
    }
}
