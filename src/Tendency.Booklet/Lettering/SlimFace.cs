using System.Buffers.Binary;

namespace Tendency.Booklet.Lettering;

/// <summary>
/// A face cut down to the letters a booklet can need, whose digits are the tabular ones.
/// Glyph numbers stay as they were; outlines of other glyphs are emptied. The digits are made tabular by pointing the character map
/// at the tabular glyphs, because feature-selected glyphs read back wrongly from the printed file in some readers.
/// </summary>
internal sealed class SlimFace
{
    /// <summary>Latin with its extensions, combining marks (the shaper composes them), Greek, Cyrillic, punctuation, currency, arrows, operators, a few shapes.</summary>
    private static readonly (int First, int Last)[] Wanted =
    [
        (0x20, 0x7E), (0xA0, 0x24F), (0x2B0, 0x2DD), (0x300, 0x36F), (0x370, 0x3FF), (0x400, 0x45F), (0x490, 0x4FF), (0x1E00, 0x1EFF),
        (0x2010, 0x2044), (0x2070, 0x209C), (0x20A0, 0x20BF), (0x2100, 0x215F), (0x2190, 0x2199), (0x2200, 0x2265), (0x25A0, 0x25CF),
    ];

    private SlimFace(byte[] drawing, byte[] shaping, IReadOnlyDictionary<int, int> map)
    {
        Drawing = drawing;
        Shaping = shaping;
        Map = map;
    }

    /// <summary>The file to draw with and embed: no layout tables.</summary>
    public byte[] Drawing { get; }

    /// <summary>The file to shape with: keeps kerning.</summary>
    public byte[] Shaping { get; }

    /// <summary>Glyph by code point, digits tabular.</summary>
    public IReadOnlyDictionary<int, int> Map { get; }

    public static SlimFace Cut(ReadOnlyMemory<byte> file, IReadOnlyList<int> tabularDigits)
    {
        var font = new Sfnt(file);
        var whole = CharacterMap.Read(font["cmap"].Span);
        var map = new SortedDictionary<int, int>();
        foreach (var (first, last) in Wanted)
        {
            for (var letter = first; letter <= last; letter++)
            {
                if (whole.TryGetValue(letter, out var glyph))
                {
                    map[letter] = glyph;
                }
            }
        }

        for (var digit = 0; digit < 10; digit++)
        {
            map['0' + digit] = tabularDigits[digit];
        }

        EmptyOtherOutlines(font, map.Values);
        font["cmap"] = CharacterMap.Write(map);
        font["post"] = NamelessPost(font["post"].Span);
        font.Remove("GSUB", "DSIG", "STAT", "MATH", "fpgm", "prep", "cvt ", "gasp");
        var shaping = font.ToBytes();
        font.Remove("GPOS", "GDEF", "kern");
        return new SlimFace(font.ToBytes(), shaping, map);
    }

    private static void EmptyOtherOutlines(Sfnt font, IEnumerable<int> glyphs)
    {
        var outlines = font["glyf"].Span;
        var places = Places(font);
        var kept = new HashSet<int> { 0 };
        var open = new Stack<int>(glyphs);
        while (open.TryPop(out var glyph))
        {
            if (kept.Add(glyph))
            {
                foreach (var part in Parts(outlines[places[glyph]..places[glyph + 1]]))
                {
                    open.Push(part);
                }
            }
        }

        var slim = new MemoryStream();
        var index = new byte[4 * places.Length];
        Span<byte> padding = stackalloc byte[4];
        padding.Clear();
        for (var glyph = 0; glyph < places.Length - 1; glyph++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(index.AsSpan(4 * glyph), (uint)slim.Length);
            if (kept.Contains(glyph))
            {
                slim.Write(outlines[places[glyph]..places[glyph + 1]]);
                slim.Write(padding[..(int)(-slim.Length & 3)]);
            }
        }

        BinaryPrimitives.WriteUInt32BigEndian(index.AsSpan(4 * (places.Length - 1)), (uint)slim.Length);
        font["glyf"] = slim.ToArray();
        font["loca"] = index;
        var head = font["head"].ToArray();
        BinaryPrimitives.WriteUInt16BigEndian(head.AsSpan(50), 1); // long offsets
        font["head"] = head;
    }

    private static int[] Places(Sfnt font)
    {
        var isLong = BinaryPrimitives.ReadUInt16BigEndian(font["head"].Span[50..]) == 1;
        var index = font["loca"].Span;
        var places = new int[index.Length / (isLong ? 4 : 2)];
        for (var i = 0; i < places.Length; i++)
        {
            places[i] = isLong ? (int)BinaryPrimitives.ReadUInt32BigEndian(index[(4 * i)..]) : 2 * BinaryPrimitives.ReadUInt16BigEndian(index[(2 * i)..]);
        }

        return places;
    }

    /// <summary>Glyphs a composite glyph is made of; none for a simple one (OpenType "glyf", composite description).</summary>
    private static List<int> Parts(ReadOnlySpan<byte> outline)
    {
        var parts = new List<int>();
        if (outline.Length < 10 || BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
        {
            return parts;
        }

        var at = 10;
        int flags;
        do
        {
            flags = BinaryPrimitives.ReadUInt16BigEndian(outline[at..]);
            parts.Add(BinaryPrimitives.ReadUInt16BigEndian(outline[(at + 2)..]));
            at += 4 + ((flags & 0x0001) != 0 ? 4 : 2) + ((flags & 0x0008) != 0 ? 2 : (flags & 0x0040) != 0 ? 4 : (flags & 0x0080) != 0 ? 8 : 0);
        }
        while ((flags & 0x0020) != 0);
        return parts;
    }

    private static byte[] NamelessPost(ReadOnlySpan<byte> post)
    {
        var slim = post[..32].ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(slim, 0x00030000);
        return slim;
    }
}
