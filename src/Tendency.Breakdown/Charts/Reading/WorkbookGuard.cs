using System.IO.Compression;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Refuses a workbook that unpacks to far more than its size, before anything is built from it.</summary>
internal static class WorkbookGuard
{
    /// <summary>Spreadsheets compress well: 10 to 30 times is usual. Small files are given room whatever their ratio.</summary>
    public const int MostRatio = 200;
    public const long AlwaysAllowed = 16L * 1024 * 1024;
    public const long MostUnpacked = 1024L * 1024 * 1024;
    private const int MostEntries = 10_000;

    /// <summary>Why the workbook is refused; null when it may be read.</summary>
    /// <remarks>The sizes an archive states of itself are not believed: each part is unpacked once and counted, up to the limit.</remarks>
    /// <param name="bytes">The workbook.</param>
    /// <param name="failedCells">Cells of its sheets that hold an error such as #REF!; the reading library gives them as blank.</param>
    public static string? Refusal(byte[] bytes, out int failedCells)
    {
        failedCells = 0;
        var most = Math.Min(MostUnpacked, Math.Max(AlwaysAllowed, bytes.LongLength * MostRatio));
        using var archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
        if (archive.Entries.Count > MostEntries)
        {
            return $"The workbook holds {archive.Entries.Count} parts; a chart has a dozen.";
        }

        var buffer = new byte[81920];
        long unpacked = 0;
        foreach (var entry in archive.Entries)
        {
            using var part = entry.Open();
            var isSheet = entry.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal);
            for (int read; (read = part.Read(buffer)) > 0;)
            {
                unpacked += read;
                failedCells += isSheet ? Count(buffer.AsSpan(0, read), " t=\"e\""u8) : 0;
                if (unpacked > most)
                {
                    return $"The workbook unpacks to more than {most / 1024 / 1024} MB from {Math.Max(1, bytes.Length / 1024)} KB; it is not opened.";
                }
            }
        }

        return null;
    }

    // One that lies across two reads is missed; the number only says that there are some.
    private static int Count(ReadOnlySpan<byte> text, ReadOnlySpan<byte> what)
    {
        var count = 0;
        for (int at; (at = text.IndexOf(what)) >= 0; text = text[(at + what.Length)..])
        {
            count++;
        }

        return count;
    }
}
