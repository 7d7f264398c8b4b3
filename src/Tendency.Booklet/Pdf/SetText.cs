using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>A wrapped paragraph; parts between lines, two at least on either side.</summary>
internal sealed class SetText(IReadOnlyList<TextLine> lines, double leading) : SetBlock
{
    private const int FewestLines = 2;

    public override double Height => lines.Count * leading;

    /// <summary>Leading and size of a style, in points.</summary>
    public static (double Size, double Leading) Measure(TextStyle style) => style switch
    {
        TextStyle.Lead => (15, 19),
        TextStyle.Call => (12, 16),
        TextStyle.Deck => (9.5, 12.5),
        TextStyle.Note => (8, 10.5),
        _ => (10, 13.5),
    };

    public static SetText Of(Paragraph paragraph, Letters letters, double width)
    {
        var (size, leading) = Measure(paragraph.Style);
        return new SetText(letters.Wrap(paragraph.Text, size, width), leading);
    }

    public override void Draw(Ink ink, double x, double y) => ink.Lines(x, y + (leading * 0.77), lines, leading);

    public override Parting? Split(double room)
    {
        var fit = (int)(room / leading);
        fit = lines.Count - fit < FewestLines ? lines.Count - FewestLines : fit;
        return fit < FewestLines ? null : new Parting(new SetText([.. lines.Take(fit)], leading), new SetText([.. lines.Skip(fit)], leading));
    }
}
