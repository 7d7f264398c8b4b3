using System.Text;
using CsvHelper;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Delimited text to cells: quoted line breaks, unclosed quotes, physical line numbers kept.</summary>
internal static class CsvSheetReader
{
    // Each unclosed quote costs a look at the rest of the file; past so many, line breaks in quotes are no longer believed.
    private const int MostUnclosed = 20;

    /// <param name="file">The file's name, for problems.</param>
    /// <param name="utf8">The text as UTF-8 without a byte order mark.</param>
    /// <param name="separator">What separates the cells.</param>
    /// <param name="problems">Takes unclosed quotes.</param>
    public static List<SheetRow> Read(string file, ReadOnlyMemory<byte> utf8, char separator, ICollection<Problem> problems)
    {
        var rows = new List<SheetRow>();
        var (at, line, unclosed) = (0, 1, 0);
        while (ReadRun(utf8[at..], line, separator, unclosed < MostUnclosed, rows) is { } stop)
        {
            // The run ended before a record whose quote swallows rows: that one line is read by itself.
            unclosed++;
            var start = at + stop.Offset;
            var length = LineLength(utf8.Span[start..], out var breakLength);
            var text = Encoding.UTF8.GetString(utf8.Span.Slice(start, length));
            rows.Add(new SheetRow(stop.Line, Cells(WithoutUnclosedQuote(text), separator)));
            problems.Add(new Problem(ReadingRules.UnclosedQuote, new Place(file, stop.Line, ""), "", "A quotation mark on this line is not closed; the line is read as if it were not there."));
            (at, line) = (start + length + breakLength, stop.Line + 1);
        }

        return rows;
    }

    private static (int Offset, int Line)? ReadRun(ReadOnlyMemory<byte> utf8, int firstLine, char separator, bool lineBreaks, List<SheetRow> rows)
    {
        var unterminated = false;
        var options = Options(separator) with
        {
            AllowLineBreaksInQuotes = lineBreaks,
            OnMalformedRecord = malformed => unterminated |= malformed.Reason == CsvMalformedReason.UnterminatedQuote,
        };
        using var csv = CsvReader.Create(utf8, options);
        while (csv.Read())
        {
            var line = firstLine + (int)csv.LineNumber - 1;
            var cells = new string[csv.FieldCount];
            for (var i = 0; i < cells.Length; i++)
            {
                cells[i] = csv.GetString(i);
            }

            if (lineBreaks && csv.RawRecord.ContainsAny((byte)'\n', (byte)'\r') && (unterminated || SwallowsRows(cells, separator, rows)))
            {
                return ((int)csv.ByteOffset, line);
            }

            rows.Add(new SheetRow(line, cells));
        }

        return null;
    }

    private static CsvReaderOptions Options(char separator) => new()
    {
        HasHeader = false,
        Separator = separator,
        DetectSeparatorHint = false,
        TrackLineNumbers = true,
        PoolStrings = true,
        FieldCountMismatch = CsvFieldCountHandling.Allow,
    };

    // A cell with line breaks that holds nearly a row's worth of separators is no note of two lines.
    private static bool SwallowsRows(string[] cells, char separator, List<SheetRow> rows)
    {
        var usual = rows.Count == 0 ? cells.Length : Math.Max(rows[0].Cells.Count, rows[^1].Cells.Count);
        return Array.Exists(cells, cell => cell.AsSpan().ContainsAny('\n', '\r') && cell.AsSpan().Count(separator) >= Math.Max(4, (usual - 1) * 0.8));
    }

    /// <summary>The line with its last opening quotation mark taken away, when that one is never closed.</summary>
    private static string WithoutUnclosedQuote(string line)
    {
        var open = -1;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
            {
                open = open < 0 ? i : -1;
            }
        }

        return open < 0 ? line : line.Remove(open, 1);
    }

    /// <summary>The cells of one line.</summary>
    public static string[] Cells(string line, char separator)
    {
        using var csv = CsvReader.FromText(line, Options(separator) with { AllowLineBreaksInQuotes = false });
        return csv.Read() ? [.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)] : [line];
    }

    private static int LineLength(ReadOnlySpan<byte> text, out int breakLength)
    {
        var length = text.IndexOfAny((byte)'\n', (byte)'\r');
        breakLength = length < 0 ? 0 : text[length] == '\r' && length + 1 < text.Length && text[length + 1] == '\n' ? 2 : 1;
        return length < 0 ? text.Length : length;
    }
}
