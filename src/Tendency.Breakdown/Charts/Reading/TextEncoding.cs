using System.Text;
using System.Text.Unicode;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The encoding of a chart, told by its bytes.</summary>
internal static class TextEncoding
{
    // So many bytes show whether every second one is zero.
    private const int Looked = 4096;

    /// <summary>The text as UTF-8 without a byte order mark.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="name">The encoding it was in; empty when it was UTF-8.</param>
    public static ReadOnlyMemory<byte> ToUtf8(ReadOnlyMemory<byte> bytes, out string name)
    {
        name = "";
        var span = bytes.Span;
        if (span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
        {
            return Valid(bytes[3..], out name);
        }

        if (span.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE, 0, 0]))
        {
            name = "UTF-32";
            return Encoding.Convert(Encoding.UTF32, Encoding.UTF8, span[4..].ToArray());
        }

        if (span.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]))
        {
            name = "UTF-16";
            return Encoding.Convert(Encoding.Unicode, Encoding.UTF8, span[2..].ToArray());
        }

        if (span.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
        {
            name = "UTF-16 (big-endian)";
            return Encoding.Convert(Encoding.BigEndianUnicode, Encoding.UTF8, span[2..].ToArray());
        }

        if (ZeroBytes(span) is { } wide)
        {
            name = wide is UnicodeEncoding && ReferenceEquals(wide, Encoding.Unicode) ? "UTF-16 without a byte order mark" : "UTF-16 (big-endian) without a byte order mark";
            return Encoding.Convert(wide, Encoding.UTF8, span.ToArray());
        }

        return Valid(bytes, out name);
    }

    private static ReadOnlyMemory<byte> Valid(ReadOnlyMemory<byte> bytes, out string name)
    {
        name = "";
        if (Utf8.IsValid(bytes.Span))
        {
            return bytes;
        }

        // A file pasted together from both: where most of the accented letters are UTF-8, the few others are lost rather than all the rest.
        if (MostlyUtf8(bytes.Span))
        {
            name = "UTF-8 with some broken characters";
            return Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(bytes.Span));
        }

        name = "Windows-1252";
        return Encoding.Convert(CodePagesEncodingProvider.Instance.GetEncoding(1252)!, Encoding.UTF8, bytes.ToArray());
    }

    private static bool MostlyUtf8(ReadOnlySpan<byte> bytes)
    {
        var (good, bad) = (0, 0);
        while (!bytes.IsEmpty)
        {
            var next = bytes.IndexOfAnyInRange((byte)0x80, (byte)0xFF);
            if (next < 0)
            {
                break;
            }

            bytes = bytes[next..];
            var status = Rune.DecodeFromUtf8(bytes, out _, out var length);
            good += status == System.Buffers.OperationStatus.Done ? 1 : 0;
            bad += status == System.Buffers.OperationStatus.Done ? 0 : 1;
            bytes = bytes[Math.Max(1, length)..];
        }

        return good > bad;
    }

    // Text of Latin letters in UTF-16 has a zero in nearly every second byte and hardly any in the others.
    private static Encoding? ZeroBytes(ReadOnlySpan<byte> bytes)
    {
        var head = bytes[..Math.Min(Looked, bytes.Length & ~1)];
        var (even, odd) = (0, 0);
        for (var i = 0; i < head.Length; i++)
        {
            if (head[i] == 0)
            {
                (even, odd) = i % 2 == 0 ? (even + 1, odd) : (even, odd + 1);
            }
        }

        var pairs = head.Length / 2;
        return pairs < 4 ? null
            : odd > pairs * 0.6 && even < pairs * 0.1 ? Encoding.Unicode
            : even > pairs * 0.6 && odd < pairs * 0.1 ? Encoding.BigEndianUnicode
            : null;
    }
}
