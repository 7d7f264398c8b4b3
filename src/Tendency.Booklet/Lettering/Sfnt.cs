using System.Buffers.Binary;
using System.Text;

namespace Tendency.Booklet.Lettering;

/// <summary>The tables of a TrueType file, taken apart and put together again (OpenType 1.9, "Organization of an OpenType font").</summary>
internal sealed class Sfnt
{
    private readonly SortedDictionary<string, ReadOnlyMemory<byte>> tables = new(StringComparer.Ordinal);

    public Sfnt(ReadOnlyMemory<byte> file)
    {
        var span = file.Span;
        var count = BinaryPrimitives.ReadUInt16BigEndian(span[4..]);
        for (var i = 0; i < count; i++)
        {
            var entry = span[(12 + (16 * i))..];
            var offset = (int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]);
            var length = (int)BinaryPrimitives.ReadUInt32BigEndian(entry[12..]);
            tables[Encoding.ASCII.GetString(entry[..4])] = file.Slice(offset, length);
        }
    }

    public ReadOnlyMemory<byte> this[string tag]
    {
        get => tables[tag];
        set => tables[tag] = value;
    }

    public void Remove(params ReadOnlySpan<string> tags)
    {
        foreach (var tag in tags)
        {
            tables.Remove(tag);
        }
    }

    /// <summary>The file anew: tables in order of their tags, each on a four-byte boundary, with checksums.</summary>
    public byte[] ToBytes()
    {
        var header = 12 + (16 * tables.Count);
        var file = new byte[header + tables.Values.Sum(table => Padded(table.Length))];
        BinaryPrimitives.WriteUInt32BigEndian(file, 0x00010000);
        var power = System.Numerics.BitOperations.Log2((uint)tables.Count);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(4), (ushort)tables.Count);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(6), (ushort)(16 << power));
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(8), (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(10), (ushort)((16 * tables.Count) - (16 << power)));
        var at = header;
        var entry = 12;
        foreach (var (tag, table) in tables)
        {
            table.Span.CopyTo(file.AsSpan(at));
            Encoding.ASCII.GetBytes(tag, file.AsSpan(entry, 4));
            BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(entry + 4), Sum(file.AsSpan(at, Padded(table.Length))));
            BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(entry + 8), (uint)at);
            BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(entry + 12), (uint)table.Length);
            at += Padded(table.Length);
            entry += 16;
        }

        return file;
    }

    private static int Padded(int length) => (length + 3) & ~3;

    private static uint Sum(ReadOnlySpan<byte> padded)
    {
        var sum = 0u;
        for (var i = 0; i < padded.Length; i += 4)
        {
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(padded[i..]));
        }

        return sum;
    }
}
