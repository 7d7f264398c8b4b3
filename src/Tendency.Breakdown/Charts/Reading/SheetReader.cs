using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>A file's bytes to its cells, whatever kind of file it is; what it is, is told by its content and not by its name.</summary>
internal static class SheetReader
{
    private const int MostRowsAboveHeader = 30;

    // Half a gigabyte of text is some three million snaps.
    private const long MostBytes = 512L * 1024 * 1024;

    /// <returns>The cells; null when the file can not be read at all, which has then been reported.</returns>
    public static Sheet? Read(ChartSource source, ReadingOptions options, WeekPlan week, ICollection<Problem> problems)
    {
        var bytes = Bytes(source);
        if (bytes is null)
        {
            return Refuse(source, $"The file is larger than {MostBytes / 1024 / 1024} MB.", problems);
        }

        var kind = FileKinds.Of(bytes);
        if (kind == FileKind.Workbook)
        {
            var rows = WorkbookSheetReader.Read(source.Name, bytes, options.SheetName, problems);
            return rows is null ? null : WithHeader(source.Name, rows, week, problems) with { IsWorkbook = true };
        }

        return kind == FileKind.Text ? ReadText(source.Name, bytes, week, problems) : Refuse(source, FileKinds.Said(kind), problems);
    }

    private static Sheet? ReadText(string file, ReadOnlyMemory<byte> bytes, WeekPlan week, ICollection<Problem> problems)
    {
        var utf8 = TextEncoding.ToUtf8(bytes, out var encoding);
        if (encoding.Length > 0)
        {
            problems.Add(new Problem(ReadingRules.Encoding, new Place(file, 0, ""), encoding, $"The text was read as {encoding}."));
        }

        var separators = SeparatorGuess.Of(utf8, HeaderMap.Knows(week));
        var rows = CsvSheetReader.Read(file, utf8, separators.Rows, problems);
        if (separators.Header != separators.Rows)
        {
            var known = HeaderMap.Knows(week);
            var at = HeaderAt(rows, row => row.Cells.Count(cell => CsvSheetReader.Cells(cell, separators.Header).Any(known)));
            rows[at] = rows[at] with { Cells = CsvSheetReader.Cells(string.Join(separators.Rows, rows[at].Cells), separators.Header) };
            problems.Add(new Problem(ReadingRules.OddSeparator, new Place(file, rows[at].Line, ""), "", $"The header is separated by {Named(separators.Header)}, the rows by {Named(separators.Rows)}; both are read so."));
        }

        return WithHeader(file, rows, week, problems);
    }

    private static Sheet WithHeader(string file, List<SheetRow> rows, WeekPlan week, ICollection<Problem> problems)
    {
        var known = HeaderMap.Knows(week);
        var header = HeaderAt(rows, row => row.Cells.Take(HeaderMap.MostColumns).Count(known));
        var above = rows.Take(Math.Max(0, header)).Where(row => !row.IsBlank).ToArray();
        if (above.Length > 0)
        {
            var lines = above.Length == 1 ? $"Line {above[0].Line} stands" : $"{above.Length} lines stand";
            var text = string.Join(' ', above[0].Cells.Where(cell => !string.IsNullOrWhiteSpace(cell)).Take(8));
            problems.Add(new Problem(ReadingRules.RowsAboveHeader, new Place(file, above[0].Line, ""), CellText.Shown(text), $"{lines} above the header in line {rows[header].Line} and is not read as a snap."));
        }

        return new Sheet(file, rows) { HeaderIndex = header };
    }

    // The row that names most of our columns; of equals the first. Without any, the first filled row.
    private static int HeaderAt(List<SheetRow> rows, Func<SheetRow, int> known)
    {
        var (header, most, filled) = (-1, -1, 0);
        for (var i = 0; i < rows.Count && filled < MostRowsAboveHeader; i++)
        {
            if (rows[i].IsBlank)
            {
                continue;
            }

            filled++;
            var count = known(rows[i]);
            (header, most) = count > most ? (i, count) : (header, most);
        }

        return header;
    }

    private static byte[]? Bytes(ChartSource source)
    {
        using var stream = source.Open();
        using var copy = new MemoryStream(stream.CanSeek ? (int)Math.Min(stream.Length, MostBytes) : 0);
        var buffer = new byte[81920];
        for (int read; (read = stream.Read(buffer)) > 0;)
        {
            if (copy.Length + read > MostBytes)
            {
                return null;
            }

            copy.Write(buffer, 0, read);
        }

        return copy.Length == copy.Capacity ? copy.GetBuffer() : copy.ToArray();
    }

    private static Sheet? Refuse(ChartSource source, string why, ICollection<Problem> problems)
    {
        problems.Add(new Problem(ReadingRules.UnreadableFile, new Place(source.Name, 0, ""), "", why));
        return null;
    }

    private static string Named(char separator) => separator switch { ',' => "commas", ';' => "semicolons", '\t' => "tabs", _ => $"'{separator}'" };
}
