using System.Globalization;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>Header and footer of every sheet.</summary>
internal static class Furniture
{
    private const double MostOpponent = 180;
    private static readonly Style Small = new(8.5);
    private static readonly Style SmallBold = new(8.5, Bold: true);
    private static readonly Style Number = new(12, Bold: true);
    private static readonly Style Foot = new(7.5);
    private static readonly Style FootBold = new(7.5, Bold: true);

    public static void Draw(Ink ink, Sheet sheet, ScoutingBooklet booklet, int number, int of)
    {
        if (sheet.Kind == PageKind.Inside)
        {
            Header(ink, sheet, booklet, number);
        }

        var grid = sheet.Grid;
        ink.Rule(grid.Left, grid.FooterRule, grid.Width, 0.3);
        var pageOf = string.Create(CultureInfo.InvariantCulture, $"Page {number} of {of}");
        var right = ink.Text(grid.Right, grid.FooterBaseline, pageOf, FootBold, Align.Right);
        var middle = booklet.LikelyMeans + (ink.Letters.Replaced.Count > 0 ? "  [U+…]: a letter our type lacks" : "");
        var middleWidth = ink.Letters.Width(ink.Letters.Printable(middle), Foot);
        var room = ((grid.Width - middleWidth) / 2) - 12;
        if (sheet.Kind == PageKind.Sheet)
        {
            ink.Text(grid.Left, grid.FooterBaseline, middle, Foot); // the footprint stands in the title line
            return;
        }

        var footprint = ink.Letters.Cut(booklet.Footprint, Foot, Math.Max(room, grid.Width - right - middleWidth - 36));
        var left = ink.Text(grid.Left, grid.FooterBaseline, footprint, Foot);
        var centered = (grid.Width - middleWidth) / 2;
        ink.Text(grid.Left + Math.Max(centered, left + 18), grid.FooterBaseline, middle, Foot);
    }

    private static void Header(Ink ink, Sheet sheet, ScoutingBooklet booklet, int number)
    {
        const double Baseline = 44;
        var grid = sheet.Grid;
        var opponent = ink.Letters.Cut(booklet.Opponent, SmallBold, MostOpponent);
        var end = ink.Text(grid.Left, Baseline, opponent, SmallBold);
        end += ink.Text(grid.Left + end + 6, Baseline, ink.Letters.Cut(booklet.Subject, Small, 80), Small) + 6;
        var numberWidth = ink.Text(grid.Right, Baseline, number.ToString(CultureInfo.InvariantCulture), Number, Align.Right);
        var names = ink.Letters.Cut(string.Join(" · ", sheet.Names), Small, grid.Width - end - numberWidth - 30);
        ink.Text(grid.Right - numberWidth - 9, Baseline, names, Small, Align.Right);
        ink.Rule(grid.Left, 50, grid.Width, 0.75);
    }
}
