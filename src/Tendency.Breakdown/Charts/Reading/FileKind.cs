namespace Tendency.Breakdown.Charts.Reading;

/// <summary>What a file is, told by its first bytes.</summary>
internal enum FileKind
{
    Text,
    Workbook,
    Empty,
    Pdf,
    Picture,
    OtherZip,
    NotText,
}

internal static class FileKinds
{
    private const int Looked = 16 * 1024;

    public static FileKind Of(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
        {
            return FileKind.Empty;
        }

        if (bytes.StartsWith("PK\u0003\u0004"u8))
        {
            return bytes.IndexOf("xl/"u8) >= 0 ? FileKind.Workbook : FileKind.OtherZip;
        }

        // The container of workbooks before 2007.
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
        {
            return FileKind.Workbook;
        }

        if (bytes.StartsWith("%PDF"u8))
        {
            return FileKind.Pdf;
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]))
        {
            return FileKind.Picture;
        }

        // A byte order mark says text, whatever the zeros and small bytes of UTF-16 look like.
        return bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) || IsText(bytes[..Math.Min(Looked, bytes.Length)]) ? FileKind.Text : FileKind.NotText;
    }

    public static string Said(FileKind kind) => kind switch
    {
        FileKind.Empty => "The file is empty.",
        FileKind.Pdf => "The file is a PDF; a chart is CSV text or an xlsx workbook.",
        FileKind.Picture => "The file is a picture; a chart is CSV text or an xlsx workbook.",
        FileKind.OtherZip => "The file is an archive, but no xlsx workbook; take the chart out of it, or save it as xlsx or CSV.",
        _ => "The file is not text and no workbook.",
    };

    // Control characters other than tab and line ends make up a good part of what is no text. Zeros are let through: UTF-16 is full of them.
    private static bool IsText(ReadOnlySpan<byte> head)
    {
        var controls = 0;
        foreach (var b in head)
        {
            controls += b is > 0 and < 32 and not ((byte)'\t' or (byte)'\n' or (byte)'\r' or 12 or 26) ? 1 : 0;
        }

        return controls <= head.Length * 0.03 && head.ContainsAnyExcept((byte)0);
    }
}
