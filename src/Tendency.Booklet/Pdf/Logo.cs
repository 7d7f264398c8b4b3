using System.Buffers.Binary;
using SkiaSharp;

namespace Tendency.Booklet.Pdf;

/// <summary>A staff's own picture for the cover, checked before it is printed.</summary>
public static class Logo
{
    /// <summary>A booklet is to stay under 2 MB.</summary>
    public const int MostBytes = 500_000;

    /// <summary>Far more than an inch and a half needs at any printer's resolution.</summary>
    public const int MostPixels = 4_000;

    // PNG (ISO/IEC 15948): the signature, then the header chunk with width and height in big-endian order.
    private static readonly byte[] s_signature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];
    private const int HeaderEnd = 24;

    /// <summary>The end of a sentence about a file that is too large to be read at all; null for one that is not.</summary>
    public static string? TooLarge(long bytes) =>
        bytes > MostBytes ? $"is too large: {bytes / 1000} kB, at most {MostBytes / 1000} kB. Save it smaller; it prints under an inch wide." : null;

    /// <summary>Why the bytes cannot be a cover's logo, as the end of a sentence; null when they can.</summary>
    public static string? Problem(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < HeaderEnd || !bytes.StartsWith(s_signature))
        {
            return "is not a PNG. Save the picture as PNG and name that file.";
        }

        if (TooLarge(bytes.Length) is { } large)
        {
            return large;
        }

        var (width, height) = (BinaryPrimitives.ReadUInt32BigEndian(bytes[16..]), BinaryPrimitives.ReadUInt32BigEndian(bytes[20..]));
        if (width is 0 or > MostPixels || height is 0 or > MostPixels)
        {
            return $"is {width} by {height} pixels, at most {MostPixels} either way. Save it smaller; it prints under an inch wide.";
        }

        using var image = SKImage.FromEncodedData(bytes);
        return image is null ? "is a damaged PNG. Save it again and name that file." : null;
    }
}
