using CsvHelper;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>What separates the cells of a text: of the rows, and of the header should it differ.</summary>
internal readonly record struct SeparatorGuess(char Rows, char Header)
{
    private const int SampleBytes = 64 * 1024;
    private const int SampleRows = 60;

    private static readonly char[] s_candidates = [',', ';', '\t', '|'];

    /// <param name="utf8">The text.</param>
    /// <param name="isOurs">Whether a header is known.</param>
    public static SeparatorGuess Of(ReadOnlyMemory<byte> utf8, Func<string, bool> isOurs)
    {
        var sample = utf8[..Math.Min(SampleBytes, utf8.Length)];
        var tries = s_candidates.Select(separator => Try(sample, separator, isOurs)).ToArray();

        // The header tells best: the separator that shows most of our names. Without any, the one that cuts rows alike.
        var header = tries.MaxBy(t => (t.Known, t.Alike, t.Cells))!;
        var rows = tries.MaxBy(t => (t.Alike, t.Known))!;
        return header.Known >= 2 && header.Body >= Math.Min(3, rows.Body) ? new SeparatorGuess(header.Separator, header.Separator)
            : header.Known >= 2 ? new SeparatorGuess(rows.Separator, header.Separator)
            : new SeparatorGuess(rows.Separator, rows.Separator);
    }

    private static Sample Try(ReadOnlyMemory<byte> sample, char separator, Func<string, bool> isOurs)
    {
        using var csv = CsvReader.Create(sample, new CsvReaderOptions { HasHeader = false, Separator = separator, DetectSeparatorHint = false, AllowLineBreaksInQuotes = false });
        var counts = new List<int>();
        var (known, headerAt) = (0, 0);
        while (counts.Count < SampleRows && csv.Read())
        {
            var ours = 0;
            for (var i = 0; i < Math.Min(csv.FieldCount, HeaderMap.MostColumns); i++)
            {
                ours += isOurs(csv.GetString(i)) ? 1 : 0;
            }

            (known, headerAt) = ours > known ? (ours, counts.Count) : (known, headerAt);
            counts.Add(csv.FieldCount);
        }

        var body = counts.Skip(headerAt + 1).Order().ToArray();
        var usual = body.Length == 0 ? counts.DefaultIfEmpty(0).Max() : body[body.Length / 2];
        var alike = usual < 2 ? 0 : body.Length == 0 ? 1 : body.Count(n => n == usual);
        return new Sample(separator, known, usual, alike, counts.DefaultIfEmpty(0).Max());
    }

    /// <param name="Known">Most of our names in one row.</param>
    /// <param name="Body">Median number of cells below that row.</param>
    /// <param name="Alike">Rows with that many cells.</param>
    private sealed record Sample(char Separator, int Known, int Body, int Alike, int Cells);
}
