using System.Globalization;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>The contents page: every page's name, its finding, its number; the whole row is a link.</summary>
internal static class ContentsSetter
{
    private const double FindingLeft = 150;
    private const double NumberWidth = 30;
    private static readonly Style Name = new(10, Bold: true);
    private static readonly Style Finding = new(9.5);
    private static readonly Style SectionName = new(9, Bold: true);

    // A contents page that runs over would push every page after it off its own sheet: many entries stand closer, a line each.
    private const double Tallest = 600;

    // Room under the headline of a sheet; what is taller stands as close as its type allows.
    private const double Sheetful = 640;

    public static SetBlock Set(ScoutingBooklet booklet, double width, Letters letters)
    {
        double Height(List<Placed> rows) => rows.Sum(row => row.Gap + row.Block.Height);
        var easy = Rows(booklet, width, letters, dense: false);
        if (Height(easy) <= Tallest)
        {
            return new SetRows(easy);
        }

        var dense = Rows(booklet, width, letters, dense: true);
        return new SetRows(Height(dense) <= Sheetful ? dense : Rows(booklet, width, letters, dense: true, padding: 4));
    }

    private static List<Placed> Rows(ScoutingBooklet booklet, double width, Letters letters, bool dense, double padding = 5)
    {
        var rows = new List<Placed>();
        foreach (var section in booklet.Sections.Where(section => section.Pages.Count > 0))
        {
            // A section of one page shows as that page alone.
            if (section.Pages.Count > 1)
            {
                var name = letters.Cut(section.Name, SectionName, width);
                rows.Add(new Placed(rows.Count == 0 ? 0 : dense ? 6 : 10, new SetPicture(dense ? 16 : 18, (ink, x, y) => ink.Text(x, y + 12, name, SectionName))));
            }

            rows.AddRange(section.Pages.Select(page => new Placed(0, Row(page, width, letters, dense, padding))));
        }

        return rows;
    }

    /// <summary>The finding as far as its sentences go, then as far as a comma or colon: it ends where a thought ends, and only a single long thought is cut.</summary>
    private static IReadOnlyList<TextLine> Shortened(string finding, double width, int lines, Letters letters)
    {
        var ends = Enumerable.Range(0, Math.Max(0, finding.Length - 1)).Where(i => finding[i + 1] == ' ').Reverse().ToArray();
        var shorter = ends.Where(i => finding[i] == '.').Select(i => finding[..(i + 1)])
            .Concat(ends.Where(i => finding[i] is ':' or ';' or ',' || finding.AsSpan(i + 1).StartsWith(" and ")).Select(i => finding[..(finding[i] is ':' or ';' or ',' ? i : i + 1)] + "."));
        return shorter.Prepend(finding).Select(words => letters.Wrap(words, Finding, width)).FirstOrDefault(set => set.Count <= lines)
            ?? letters.Wrap(finding, Finding, width, lines);
    }

    private static SetPicture Row(Page page, double width, Letters letters, bool dense, double padding)
    {
        const double Leading = 12.5;
        var name = letters.Wrap(page.Name, Name, FindingLeft - 12, dense ? 1 : 2);
        var finding = Shortened(page.Headline, width - FindingLeft - NumberWidth, dense ? 1 : 2, letters);
        var baseline = dense ? 12 : 13.5;
        var height = (Math.Max(Math.Max(name.Count, finding.Count), 1) * Leading) + (dense ? padding : 8);
        return new SetPicture(height, (ink, x, y) =>
        {
            ink.Rule(x, y, width, 0.3);
            ink.Lines(x, y + baseline, name, Leading);
            ink.Lines(x + FindingLeft, y + baseline, finding, Leading);
            if (letters.PageNumbers.TryGetValue(page.Anchor, out var number))
            {
                ink.Text(x + width, y + baseline, number.ToString(CultureInfo.InvariantCulture), Name, Align.Right);
                ink.Link(x, y, width, height, page.Anchor);
            }
        });
    }
}
