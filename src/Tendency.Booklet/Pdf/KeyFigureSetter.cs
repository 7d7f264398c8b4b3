using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Pdf;

/// <summary>Large numbers side by side, each with k of n, its range and a small scale. The first scale is labelled, unless weighted shares stand there.</summary>
internal static class KeyFigureSetter
{
    private const double Gutter = 12;
    private const double LabelLeading = 10.5;
    private static readonly Style Label = new(8.5);
    private static readonly Style Tiny = new(7.5);
    private static readonly Style Value = new(24, Bold: true);
    private static readonly Style Smaller = new(17, Bold: true);

    public static SetBlock Set(KeyFigures block, double width, Letters letters)
    {
        var count = Math.Max(1, block.Figures.Count);
        var each = (width - (Gutter * (count - 1))) / count;
        var labels = block.Figures.Select(figure => letters.Wrap(figure.Label, Label, each, 2)).ToList();
        var lower = (labels.Select(label => label.Count).DefaultIfEmpty(1).Max() - 1) * LabelLeading;
        // A long count and its range do not fit beside one another: then the range goes under the count.
        var weighted = block.Figures.Any(figure => figure.Weighted.Length > 0);
        var apart = block.Figures.Any(figure => letters.Width(Counted(figure.Share), Label) + letters.Width(Figures.Range(figure.Share), Label) + 4 > each) ? LabelLeading : 0;
        return new SetPicture(70 + lower + apart, (ink, x, y) =>
        {
            for (var i = 0; i < block.Figures.Count; i++)
            {
                var left = x + (i * (each + Gutter));
                if (i > 0)
                {
                    ink.Line(left - (Gutter / 2), y, left - (Gutter / 2), y + 58 + lower + apart, 0.3);
                }

                ink.Lines(left, y + 8, labels[i], LabelLeading);
                Draw(ink, block.Figures[i], left, y + lower, each, letters, apart, labelled: i == 0 && !weighted);
            }
        });
    }

    private static string Counted(Share share) => share.TooFew ? "too few" : share.None ? "" : Figures.CountOf(share);

    private static void Draw(Ink ink, KeyFigure figure, double x, double y, double width, Letters letters, double apart, bool labelled)
    {
        var share = figure.Share;
        var value = Figures.Percent(share);
        var style = letters.Width(value, Value) <= width ? Value : Smaller;
        ink.Text(x, y + 31, letters.Cut(value, style, width), style);
        ink.Text(x, y + 43.5, Counted(share), Label);
        ink.Text(apart > 0 ? x : x + width, y + 43.5 + apart, Figures.Range(share), Label, apart > 0 ? Align.Left : Align.Right);
        var axis = y + 54 + apart;
        ink.Line(x, axis, x + width, axis, 0.4);
        foreach (var end in new[] { x, x + width })
        {
            ink.Line(end, axis - 2.5, end, axis + 2.5, 0.4);
        }

        if (!share.None && !share.TooFew)
        {
            var shapes = new List<Shape>();
            var range = (share.Value!.Value, share.Likely?.Low ?? share.Value.Value, share.Likely?.High ?? share.Value.Value);
            StripMarks.Mark(shapes, StripAxis.Shares(), width, 20, range, tested: false, differs: false);
            ink.Shapes(x, axis - 10, shapes);
        }

        ink.Text(x, axis + 11, letters.Cut(figure.Weighted, Tiny, width), Tiny);
        if (labelled)
        {
            ink.Text(x, axis + 11, "0", Tiny);
            ink.Text(x + width, axis + 11, "100%", Tiny, Align.Right);
        }
    }
}
