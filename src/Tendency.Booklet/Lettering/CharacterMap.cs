using System.Buffers.Binary;

namespace Tendency.Booklet.Lettering;

/// <summary>A face's map from code points to glyphs (OpenType "cmap"): reads formats 4 and 12, writes 12.</summary>
internal static class CharacterMap
{
    public static Dictionary<int, int> Read(ReadOnlySpan<byte> table)
    {
        var map = new Dictionary<int, int>();
        var count = BinaryPrimitives.ReadUInt16BigEndian(table[2..]);
        for (var i = 0; i < count; i++)
        {
            var subtable = table[(int)BinaryPrimitives.ReadUInt32BigEndian(table[(4 + (8 * i) + 4)..])..];
            switch (BinaryPrimitives.ReadUInt16BigEndian(subtable))
            {
                case 4:
                    ReadSegments(subtable, map);
                    break;
                case 12:
                    ReadGroups(subtable, map);
                    break;
            }
        }

        return map;
    }

    public static byte[] Write(SortedDictionary<int, int> map)
    {
        var groups = new List<(int First, int Last, int Glyph)>();
        foreach (var (letter, glyph) in map)
        {
            if (groups.Count > 0 && groups[^1] is var open && open.Last == letter - 1 && open.Glyph + (letter - open.First) == glyph)
            {
                groups[^1] = open with { Last = letter };
            }
            else
            {
                groups.Add((letter, letter, glyph));
            }
        }

        var table = new byte[12 + 16 + (12 * groups.Count)];
        var span = table.AsSpan();
        BinaryPrimitives.WriteUInt16BigEndian(span[2..], 1); // one subtable
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], 3); // Windows, full Unicode
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], 10);
        BinaryPrimitives.WriteUInt32BigEndian(span[8..], 12);
        BinaryPrimitives.WriteUInt16BigEndian(span[12..], 12);
        BinaryPrimitives.WriteUInt32BigEndian(span[16..], (uint)(16 + (12 * groups.Count)));
        BinaryPrimitives.WriteUInt32BigEndian(span[24..], (uint)groups.Count);
        var at = 28;
        foreach (var (first, last, glyph) in groups)
        {
            BinaryPrimitives.WriteUInt32BigEndian(span[at..], (uint)first);
            BinaryPrimitives.WriteUInt32BigEndian(span[(at + 4)..], (uint)last);
            BinaryPrimitives.WriteUInt32BigEndian(span[(at + 8)..], (uint)glyph);
            at += 12;
        }

        return table;
    }

    private static void ReadSegments(ReadOnlySpan<byte> table, Dictionary<int, int> map)
    {
        var twice = BinaryPrimitives.ReadUInt16BigEndian(table[6..]);
        for (var i = 0; i < twice; i += 2)
        {
            var last = BinaryPrimitives.ReadUInt16BigEndian(table[(14 + i)..]);
            var first = BinaryPrimitives.ReadUInt16BigEndian(table[(16 + twice + i)..]);
            var delta = BinaryPrimitives.ReadUInt16BigEndian(table[(16 + (2 * twice) + i)..]);
            var rangeAt = 16 + (3 * twice) + i;
            var range = BinaryPrimitives.ReadUInt16BigEndian(table[rangeAt..]);
            for (int letter = first; letter <= last && letter != 0xFFFF; letter++)
            {
                var glyph = range == 0 ? letter : BinaryPrimitives.ReadUInt16BigEndian(table[(rangeAt + range + (2 * (letter - first)))..]);
                if (range == 0 || glyph != 0)
                {
                    glyph = (glyph + delta) & 0xFFFF;
                }

                if (glyph != 0)
                {
                    map.TryAdd(letter, glyph);
                }
            }
        }
    }

    private static void ReadGroups(ReadOnlySpan<byte> table, Dictionary<int, int> map)
    {
        var count = (int)BinaryPrimitives.ReadUInt32BigEndian(table[12..]);
        for (var i = 0; i < count; i++)
        {
            var group = table[(16 + (12 * i))..];
            var first = (int)BinaryPrimitives.ReadUInt32BigEndian(group);
            var last = (int)BinaryPrimitives.ReadUInt32BigEndian(group[4..]);
            var glyph = (int)BinaryPrimitives.ReadUInt32BigEndian(group[8..]);
            for (var letter = first; letter <= last; letter++)
            {
                map.TryAdd(letter, glyph + letter - first);
            }
        }
    }
}
