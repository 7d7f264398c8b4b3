using System.Runtime.InteropServices;
using HarfBuzzSharp;
using SkiaSharp;

namespace Tendency.Booklet.Lettering;

/// <summary>One weight of Inter: a typeface to draw with and a font to shape with. Loaded once and kept for the life of the process, because ScottPlot keeps typefaces it was given.</summary>
[System.Diagnostics.CodeAnalysis.SuppressMessage("Design", "CA1001", Justification = "Two faces live as long as the process.")]
internal sealed class Face
{
    private static readonly Lazy<Face> TheRegular = new(() => Load("Regular"));
    private static readonly Lazy<Face> TheBold = new(() => Load("Bold"));
    // Kept, because the font points into them and the collector does not see that.
    private readonly HarfBuzzSharp.Blob blob;
    private readonly HarfBuzzSharp.Face face;
    private readonly Font font;

    private Face(SlimFace slim)
    {
        Slim = slim;
        Typeface = SKTypeface.FromData(SKData.CreateCopy(slim.Drawing));
        blob = Copy(slim.Shaping);
        face = new HarfBuzzSharp.Face(blob, 0);
        font = new Font(face);
        font.SetFunctionsOpenType();
        UnitsPerEm = face.UnitsPerEm;
        font.SetScale(UnitsPerEm, UnitsPerEm);
        face.MakeImmutable();
    }

    public static Face Regular => TheRegular.Value;

    public static Face Bold => TheBold.Value;

    /// <summary>Glyphs of a text with their kerned places, in units of the face.</summary>
    public sealed record Shaped(ushort[] Glyphs, int[] Places, int Width);

    public SlimFace Slim { get; }

    public SKTypeface Typeface { get; }

    public int UnitsPerEm { get; }

    public bool Has(int letter) => Slim.Map.ContainsKey(letter);

    /// <summary>Shapes one line; every letter must be in the face (<see cref="Letters.Printable"/>).</summary>
    public Shaped Shape(string text)
    {
        if (text.Length == 0)
        {
            return new Shaped([], [], 0); // shaping an empty buffer ends the process
        }

        using var buffer = new HarfBuzzSharp.Buffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        font.Shape(buffer);
        var infos = buffer.GlyphInfos;
        var positions = buffer.GlyphPositions;
        var glyphs = new ushort[infos.Length];
        var places = new int[infos.Length];
        var pen = 0;
        for (var i = 0; i < infos.Length; i++)
        {
            glyphs[i] = (ushort)infos[i].Codepoint;
            places[i] = pen + positions[i].XOffset;
            pen += positions[i].XAdvance;
        }

        return new Shaped(glyphs, places, pen);
    }

    private static Face Load(string weight)
    {
        var file = InterResource.Read(weight);
        return new Face(SlimFace.Cut(file, TabularDigits(file)));
    }

    /// <summary>A blob of its own memory: Blob.FromStream points into a managed array without pinning it, and dies at the first collection.</summary>
    private static HarfBuzzSharp.Blob Copy(byte[] file)
    {
        var pinned = GCHandle.Alloc(file, GCHandleType.Pinned);
        try
        {
            return new HarfBuzzSharp.Blob(pinned.AddrOfPinnedObject(), file.Length, MemoryMode.Duplicate);
        }
        finally
        {
            pinned.Free();
        }
    }

    private static int[] TabularDigits(byte[] file)
    {
        using var whole = Copy(file);
        using var wholeFace = new HarfBuzzSharp.Face(whole, 0);
        using var wholeFont = new Font(wholeFace);
        wholeFont.SetFunctionsOpenType();
        using var buffer = new HarfBuzzSharp.Buffer();
        buffer.AddUtf16("0123456789");
        buffer.GuessSegmentProperties();
        wholeFont.Shape(buffer, new Feature(Tag.Parse("tnum"), 1), new Feature(Tag.Parse("calt"), 0));
        return [.. buffer.GlyphInfos.Select(info => (int)info.Codepoint)];
    }
}
