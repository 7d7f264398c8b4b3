using UglyToad.PdfPig;
using UglyToad.PdfPig.Actions;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using UglyToad.PdfPig.Outline;

namespace Tendency.Booklet.Pdf;

/// <summary>What is wrong on a printed page.</summary>
public enum PageFault
{
    /// <summary>Words outside the live area.</summary>
    OutsideMargins,

    /// <summary>Two words printed over one another.</summary>
    Overlap,

    /// <summary>A letter the reader cannot name: a missing glyph.</summary>
    UnreadableLetter,

    /// <summary>Less than half of the live area is used.</summary>
    HalfEmpty,

    /// <summary>A link to a place that is not there.</summary>
    DeadLink,
}

/// <summary>A fault on a page (1 = first), with the words it is about.</summary>
public sealed record PageFinding(int Page, PageFault Fault, string Words);

/// <summary>A page read back.</summary>
/// <param name="Number">1 = first.</param>
/// <param name="Text">Words in reading order.</param>
/// <param name="Used">How far down the live area is used, 0–1.</param>
/// <param name="LinksTo">Page numbers links go to.</param>
public sealed record InspectedPage(int Number, string Text, double Used, IReadOnlyList<int> LinksTo);

/// <summary>A printed booklet read back.</summary>
public sealed record PdfInspection(IReadOnlyList<InspectedPage> Pages, IReadOnlyList<string> Bookmarks, string Title, string Language, IReadOnlyList<PageFinding> Findings);

/// <summary>Reopens a printed booklet with another library than the one that wrote it, and checks what a reader would see.</summary>
public static class PdfCheck
{
    private const double Tolerance = 1.5; // glyph boxes reach a little past their advance
    private const double Accents = 4; // marks on the capitals of a title stand above the line it hangs from

    /// <param name="pdf">A booklet of <see cref="PdfPrinter"/>; read from its beginning.</param>
    public static PdfInspection Inspect(Stream pdf)
    {
        ArgumentNullException.ThrowIfNull(pdf);
        pdf.Position = 0;
        using var document = PdfDocument.Open(pdf);
        var pages = new List<InspectedPage>();
        var findings = new List<PageFinding>();
        foreach (var page in document.GetPages())
        {
            var words = page.GetWords().Where(word => !string.IsNullOrWhiteSpace(word.Text)).ToList();
            var grid = page.Width > page.Height ? Grid.Sheet : Grid.Portrait;
            var links = Links(page, findings);
            var used = Used(page, words, grid);
            findings.AddRange(Outside(page, words, grid));
            findings.AddRange(Overlaps(page, words));
            findings.AddRange(Unreadable(page));
            if (used < 0.5)
            {
                findings.Add(new PageFinding(page.Number, PageFault.HalfEmpty, FormattableString.Invariant($"{used:P0} used")));
            }

            pages.Add(new InspectedPage(page.Number, ContentOrderTextExtractor.GetText(page), used, links));
        }

        return new PdfInspection(pages, Titles(document), document.Information.Title ?? "", Language(document), findings);
    }

    private static IEnumerable<PageFinding> Outside(Page page, List<Word> words, Grid grid) =>
        from word in words
        let box = word.BoundingBox
        let top = page.Height - box.Top
        let bottom = page.Height - box.Bottom
        where box.Left < grid.Left - Tolerance || box.Right > grid.Right + Tolerance || top < grid.Top - Accents || bottom > grid.Bottom + Tolerance
        select new PageFinding(page.Number, PageFault.OutsideMargins, word.Text);

    /// <summary>Pairs of words whose inked boxes share more than a sliver.</summary>
    private static IEnumerable<PageFinding> Overlaps(Page page, List<Word> words)
    {
        const double Sliver = 0.8;
        var sorted = words.OrderBy(word => word.BoundingBox.Left).ToList();
        for (var i = 0; i < sorted.Count; i++)
        {
            var box = sorted[i].BoundingBox;
            for (var j = i + 1; j < sorted.Count && sorted[j].BoundingBox.Left < box.Right - Sliver; j++)
            {
                var other = sorted[j].BoundingBox;
                if (Math.Min(box.Top, other.Top) - Math.Max(box.Bottom, other.Bottom) > Sliver)
                {
                    yield return new PageFinding(page.Number, PageFault.Overlap, $"{sorted[i].Text} / {sorted[j].Text}");
                }
            }
        }
    }

    private static IEnumerable<PageFinding> Unreadable(Page page) =>
        from letter in page.Letters
        where string.IsNullOrEmpty(letter.Value) || letter.Value.Contains('\uFFFD', StringComparison.Ordinal) || letter.Value.Contains('\0', StringComparison.Ordinal)
        select new PageFinding(page.Number, PageFault.UnreadableLetter, FormattableString.Invariant($"at {letter.StartBaseLine.X:F0}, {page.Height - letter.StartBaseLine.Y:F0}"));

    private static double Used(Page page, List<Word> words, Grid grid)
    {
        var lowest = words.Select(word => page.Height - word.BoundingBox.Bottom).Where(bottom => bottom < grid.FooterRule).DefaultIfEmpty(grid.Top).Max();
        return Math.Clamp((lowest - grid.Top) / (grid.LastBlockBottom - grid.Top), 0, 1);
    }

    private static List<int> Links(Page page, List<PageFinding> findings)
    {
        var links = new List<int>();
        foreach (var annotation in page.GetAnnotations())
        {
            if (annotation.Action is GoToAction go)
            {
                links.Add(go.Destination.PageNumber);
            }
            else if (annotation.Type == UglyToad.PdfPig.Annotations.AnnotationType.Link)
            {
                findings.Add(new PageFinding(page.Number, PageFault.DeadLink, annotation.Rectangle.ToString()));
            }
        }

        return links;
    }

    private static List<string> Titles(PdfDocument document) =>
        document.TryGetBookmarks(out var bookmarks) ? [.. bookmarks.GetNodes().Select(Named)] : [];

    private static string Named(BookmarkNode node) => node is DocumentBookmarkNode target ? $"{node.Title} {target.PageNumber}" : node.Title;

    private static string Language(PdfDocument document) =>
        document.Structure.Catalog.CatalogDictionary.TryGet(UglyToad.PdfPig.Tokens.NameToken.Create("Lang"), out var token)
            ? token switch
            {
                UglyToad.PdfPig.Tokens.HexToken hex => hex.Data,
                UglyToad.PdfPig.Tokens.StringToken text => text.Data,
                _ => "",
            }
            : "";
}
