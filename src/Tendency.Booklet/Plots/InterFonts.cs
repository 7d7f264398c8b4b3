using ScottPlot;
using SkiaSharp;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Plots;

/// <summary>Gives ScottPlot the booklet's own faces, so that axis figures are the tabular ones of the tables.</summary>
internal sealed class InterFonts : IFontResolver
{
    public const string Name = "Inter";

    private static readonly Lazy<bool> Known = new(() =>
    {
        ScottPlot.Fonts.FontResolvers.Insert(0, new InterFonts());
        ScottPlot.Fonts.Default = Name;
        return true;
    });

    /// <summary>Makes ScottPlot know the faces; at most once a process.</summary>
    public static void MakeKnown() => _ = Known.Value;

    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
        Typeface(fontName, weight >= FontWeight.SemiBold);

    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => Typeface(fontName, bold);

    private static SKTypeface? Typeface(string fontName, bool bold) =>
        string.Equals(fontName, Name, StringComparison.Ordinal) ? Letters.FaceOf(bold).Typeface : null;
}
