using System.IO.Compression;

namespace Tendency.Breakdown.Charts.Workbooks;

/// <summary>Takes the clock out of an archive, so that the same content is the same file.</summary>
internal static class SameBytes
{
    // The first moment a zip archive can say.
    private static readonly DateTimeOffset s_moment = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Of(byte[] archive)
    {
        using var source = new ZipArchive(new MemoryStream(archive, writable: false), ZipArchiveMode.Read);
        using var stream = new MemoryStream();
        using (var target = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var part in source.Entries.OrderBy(entry => entry.FullName == "[Content_Types].xml" ? "" : entry.FullName, StringComparer.Ordinal))
            {
                var copy = target.CreateEntry(part.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = s_moment;
                using var from = part.Open();
                using var to = copy.Open();
                from.CopyTo(to);
            }
        }

        return stream.ToArray();
    }
}
