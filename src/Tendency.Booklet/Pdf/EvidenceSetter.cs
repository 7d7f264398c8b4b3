using System.Globalization;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Pdf;

/// <summary>Numbered claims with their evidence at the left and all strips on one axis at the right.</summary>
internal static class EvidenceSetter
{
    private const double TextLeft = 23;
    private const double SupportLeading = 13;
    private const double StripWidth = 146;
    private const double Overhang = 16;
    private static readonly StripAxis Axis = new(0, 1, [0, .25, .5, .75, 1]);
    private static readonly Style Small = new(7.5);

    /// <param name="list">What to set.</param>
    /// <param name="width">Points.</param>
    /// <param name="letters">Measures.</param>
    /// <param name="tight">Claims as close as their words and marks allow, to keep a list on its page.</param>
    public static SetBlock Set(EvidenceList list, double width, Letters letters, bool tight)
    {
        var stripLeft = width - StripWidth - Overhang;
        var head = new SetPicture(18, (ink, x, y) =>
        {
            ink.Rule(x, y, width, 0.75);
            ink.Text(x, y + 12, letters.Cut(list.Title, new Style(9.5, Bold: true), stripLeft - 20), new Style(9.5, Bold: true));
            for (var i = 0; i < Axis.Ticks.Count; i++)
            {
                ink.Text(x + stripLeft + (Axis.Ticks[i] * StripWidth), y + 12, TableHead.Label(Axis, i), Small, Align.Center);
            }
        });
        return new SetRows([.. list.Claims.Select((claim, i) => new Placed(0, SetClaim(claim, i, width, stripLeft, letters, tight)))], head);
    }

    private static SetPicture SetClaim(Evidence claim, int index, double width, double stripLeft, Letters letters, bool tight)
    {
        var room = stripLeft - TextLeft - 16;
        var sentence = letters.Wrap(claim.Claim, new Style(13.5, Bold: true), room, 3);
        var evidence = letters.Wrap(EvidenceWords(claim), 11, room, 2);
        var support = letters.Wrap(claim.Support, 9.5, room, 5);
        var textHeight = (sentence.Count * 16) + (evidence.Count * 14) + (support.Count * SupportLeading);
        var height = tight ? Math.Max(63, textHeight + 15) : Math.Max(70, textHeight + 24);
        return new SetPicture(height, (ink, x, y) =>
        {
            if (index > 0)
            {
                ink.Rule(x, y, width, 0.3);
            }

            var baseline = y + (tight ? 17 : 21);
            ink.Text(x, baseline + 1, (index + 1).ToString(CultureInfo.InvariantCulture), new Style(17, Bold: true));
            ink.Lines(x + TextLeft, baseline, sentence, 16);
            baseline += (sentence.Count * 16) + 2;
            ink.Lines(x + TextLeft, baseline, evidence, 14);
            baseline += evidence.Count * 14;
            ink.Lines(x + TextLeft, baseline, support, SupportLeading);
            DrawStrip(ink, claim, x + stripLeft, y, height);
        });
    }

    private static RichText EvidenceWords(Evidence claim)
    {
        var words = Figures.Evidence(claim.Share, claim.Unit);
        var at = words.IndexOf(' ', StringComparison.Ordinal);
        return claim.Share.None || claim.Share.TooFew ? RichText.Plain(words + ".") : RichText.Strong(words[..at]) + (words[at..] + ".");
    }

    private static void DrawStrip(Ink ink, Evidence claim, double x, double y, double height)
    {
        const double Top = 12;
        const double Span = 36;
        var share = claim.Share;
        ink.Shapes(x, y, StripMarks.Ground(Axis, StripWidth, height, broken: false));
        if (share.None || share.TooFew)
        {
            ink.Shapes(x, y + Top, StripMarks.Of(share with { Baseline = null }, Axis, StripWidth, Span));
            return;
        }

        var middle = y + Top + (Span / 2);
        if (share.Baseline is { } rate)
        {
            var at = StripMarks.Place(Axis, rate, StripWidth);
            ink.Line(x + at, y + Top, x + at, y + Top + Span, 0.8);
            var name = ink.Letters.Cut($"{claim.LineName} {Figures.Percent(rate)}", Small, StripWidth);
            var wide = ink.Letters.Width(name, Small);
            var left = Math.Clamp(at - (wide / 2), 0, StripWidth - wide);
            ink.Shapes(x, y, [new WordShape(left, Top + Span + 9, name, 7.5, Align: Align.Left) { Backed = true }]);
        }

        var (low, high) = (share.Likely?.Low ?? share.Value!.Value, share.Likely?.High ?? share.Value!.Value);
        var shapes = new List<Shape>();
        StripMarks.Mark(shapes, Axis, StripWidth, 70, (share.Value!.Value, low, high), share.Baseline is not null, share.Differs);
        ink.Shapes(x, middle - 35, shapes);
        DrawPercent(ink, share, x, middle, low, high);
    }

    /// <summary>The percent to the right of the bar, else to its left, else above the dot; never on the comparison line.</summary>
    private static void DrawPercent(Ink ink, Share share, double x, double middle, double low, double high)
    {
        const double Clear = 4;
        var style = new Style(11, share.Differs || share.Baseline is null);
        var text = Figures.Percent(share);
        var width = ink.Letters.Width(text, style);
        var right = (Math.Max(high, share.Value!.Value) * StripWidth) + Clear;
        var left = (Math.Min(low, share.Value.Value) * StripWidth) - Clear;
        var line = share.Baseline is { } rate ? rate * StripWidth : double.NegativeInfinity;
        bool Free(double from) => line < from - 2 || line > from + width + 2;
        if (right + width <= StripWidth + Overhang && Free(right))
        {
            ink.Text(x + right, middle + 4, text, style);
        }
        else if (left - width >= -Overhang && Free(left - width))
        {
            ink.Text(x + left, middle + 4, text, style, Align.Right);
        }
        else
        {
            var at = Math.Clamp(share.Value.Value * StripWidth, width / 2, StripWidth - (width / 2));
            ink.Shapes(x, middle, [new WordShape(at, -8, text, style.Size, style.Bold) { Backed = true }]);
        }
    }
}
