using System.Text;
using Tendency.SampleCharts.Charts;

namespace Tendency.SampleCharts.Tired;

/// <summary>A file as the tired assistant sends it, and what is wrong in it, by physical line.</summary>
public sealed record TiredFile(string FileName, byte[] Bytes, IReadOnlyList<Mistake> Mistakes)
{
    internal static TiredFile Write(ChartSheet clean, IReadOnlyList<TiredRow> rows, Trouble trouble)
    {
        var text = new StringBuilder();
        var line = 0;
        var mistakes = new List<Mistake>();
        var headers = clean.Headers.Where(header => header != trouble.LeftOutColumn).ToList();

        void Append(IReadOnlyList<string> cells)
        {
            ChartSheet.AppendRow(text, cells, trouble.Delimiter);
            line += 1 + cells.Sum(cell => cell.Count(letter => letter == '\n'));
        }

        if (trouble.Title is { } title)
        {
            Append([title]);
        }

        Append(headers);
        for (var i = 0; i < rows.Count; i++)
        {
            if (i == trouble.HeaderAgainAfter)
            {
                Append(headers);
            }

            foreach (var slip in rows[i].Slips)
            {
                var wrong = slip.Column.Length == 0 ? "" : rows[i][slip.Column];
                mistakes.Add(new Mistake(clean.FileName, line + 1, slip.Column, wrong, slip.Right, slip.What));
            }

            Append([.. headers.Select(header => rows[i][header])]);
        }

        if (trouble.Total)
        {
            Append([.. headers.Select(header => header switch { "game" => "TOTAL", "gain" => rows.Sum(row => int.TryParse(row["gain"], out var gain) ? gain : 0).ToString(), _ => "" })]);
        }

        return new TiredFile(clean.FileName, Encode(text.ToString(), trouble), mistakes);
    }

    private static byte[] Encode(string text, Trouble trouble)
    {
        var lines = trouble.Crlf ? text.Replace("\n", "\r\n") : text;
        return trouble.Windows1252
            ? [.. lines.Select(letter => letter == '\u2013' ? (byte)0x96 : (byte)letter)] // the one letter here where Windows-1252 parts from Latin-1
            : Encoding.UTF8.GetBytes(lines);
    }
}
