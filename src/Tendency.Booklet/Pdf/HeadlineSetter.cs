using SkiaSharp;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>What opens a page: the headline and deck; on the brief the opponent; on a sheet one title line. Heights include the room down to the first block.</summary>
internal static class HeadlineSetter
{
    private const double Leading = 20.4;
    private const double DeckLeading = 12.5;
    private static readonly Style Deck = new(9.5);
    private static readonly Style Small = new(8.5);
    private static readonly Style SmallBold = new(8.5, Bold: true);

    public static SetBlock Set(Page page, ScoutingBooklet booklet, Letters letters) => page.Kind switch
    {
        PageKind.Brief => Brief(booklet, letters),
        PageKind.Sheet => SheetTitle(page, booklet, letters),
        _ => Below(36, page, letters),
    };

    /// <summary>The headline of a page that begins in the middle of a sheet, under a heavier rule.</summary>
    public static SetBlock Under(Page page, Letters letters)
    {
        var inner = Below(22, page, letters);
        return new SetPicture(inner.Height, (ink, x, y) =>
        {
            ink.Rule(x, y, Grid.Portrait.Width, 1.5);
            inner.Draw(ink, x, y);
        });
    }

    public static SetBlock Continued(Page page, ScoutingBooklet booklet, Letters letters)
    {
        if (page.Kind == PageKind.Sheet)
        {
            return SheetTitle(page, booklet, letters);
        }

        var title = new Style(10.5, Bold: true);
        var words = letters.Cut($"{page.Name}, continued", title, Grid.Portrait.Width);
        return new SetPicture(42, (ink, x, y) => ink.Text(x, y + 32, words, title));
    }

    /// <param name="first">First baseline from the block's top.</param>
    /// <param name="page">Whose headline and deck.</param>
    /// <param name="letters">Measures.</param>
    private static SetPicture Below(double first, Page page, Letters letters)
    {
        var width = Grid.Portrait.Width;
        var lines = HeadlineType.Set(page.Headline, letters);
        var deck = letters.Wrap(page.Deck, Deck, width, 3);
        var lastHeadline = first + (Math.Max(0, lines.Count - 1) * Leading);
        var last = deck.Count == 0 ? lastHeadline : lastHeadline + 16 + ((deck.Count - 1) * DeckLeading);
        return new SetPicture(last + (deck.Count == 0 ? 20 : 17), (ink, x, y) =>
        {
            ink.Lines(x, y + first, lines, Leading);
            ink.Lines(x, y + lastHeadline + 16, deck, DeckLeading);
        });
    }

    private static SetPicture Brief(ScoutingBooklet booklet, Letters letters)
    {
        const double Baseline = 22;
        var width = Grid.Portrait.Width;
        var right = Math.Max(letters.Width(letters.Printable(booklet.Kind), SmallBold), letters.Width(letters.Printable(booklet.Occasion), Small));
        right = Math.Min(right, width / 3);
        return new SetPicture(46, (ink, x, y) =>
        {
            var big = new Style(30, Bold: true);
            var side = new Style(30);
            var logo = DrawLogo(ink, booklet.Logo, x + width - right, y);
            var room = width - right - logo - 20;
            var sideWidth = Math.Min(letters.Width(letters.Printable(booklet.Subject), side), room / 2);
            var end = ink.Text(x, y + Baseline, letters.Cut(booklet.Opponent, big, room - sideWidth - 10), big);
            ink.Text(x + end + 10, y + Baseline, letters.Cut(booklet.Subject, side, room - end - 10), side);
            ink.Text(x + width, y + 9, letters.Cut(booklet.Kind, SmallBold, right), SmallBold, Align.Right);
            ink.Text(x + width, y + Baseline, letters.Cut(booklet.Occasion, Small, right), Small, Align.Right);
            ink.Rule(x, y + 32, width, 1.5);
        });
    }

    /// <summary>The logo at most 60 × 26 points, left of the words at the right; returns the width it takes.</summary>
    private static double DrawLogo(Ink ink, ReadOnlyMemory<byte>? logo, double right, double y)
    {
        const double MostWide = 60;
        const double MostHigh = 26;
        if (logo is not { } png || SKImage.FromEncodedData(png.Span) is not { } image)
        {
            return 0;
        }

        using (image)
        {
            var scale = Math.Min(MostWide / image.Width, MostHigh / image.Height);
            var (wide, high) = (image.Width * scale, image.Height * scale);
            ink.Canvas.DrawImage(image, SKRect.Create((float)(right - wide - 12), (float)y, (float)wide, (float)high));
            return wide + 12;
        }
    }

    private static SetPicture SheetTitle(Page page, ScoutingBooklet booklet, Letters letters)
    {
        var width = Grid.Sheet.Width;
        var plain = new Style(17);
        var footprint = letters.Cut(booklet.Footprint, SmallBold, width * 0.5);
        var room = width - letters.Width(footprint, SmallBold) - 16;
        return new SetPicture(32, (ink, x, y) =>
        {
            var end = ink.Text(x, y + 13, letters.Cut(booklet.Opponent, HeadlineType.Style, room * 0.6), HeadlineType.Style);
            ink.Text(x + end + 6, y + 13, letters.Cut(page.Headline, plain, room - end - 6), plain);
            ink.Text(x + width, y + 13, footprint, SmallBold, Align.Right);
            ink.Rule(x, y + 20, width, 1.5);
        });
    }
}
