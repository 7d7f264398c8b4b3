using SkiaSharp;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Plots;

namespace Tendency.Booklet.Pdf;

/// <summary>What was printed.</summary>
/// <param name="Pages">Sheets.</param>
/// <param name="ReplacedLetters">Code points the type lacks, in order; each was printed as its number, "[U+6F22]".</param>
public sealed record PrintedBooklet(int Pages, IReadOnlyList<int> ReplacedLetters);

/// <summary>Prints a booklet as a PDF: vector marks, embedded type, links, bookmarks. The same booklet gives the same bytes.</summary>
public static class PdfPrinter
{
    /// <summary>Loads type and drawing library ahead of time (about 0.15 s of a cold start), for a command that meanwhile reads charts on another thread.</summary>
    public static void Prepare()
    {
        _ = Face.Regular;
        _ = Face.Bold;
        InterFonts.MakeKnown();
    }

    /// <param name="booklet">What to print.</param>
    /// <param name="paper">Content breaks alike on both.</param>
    /// <param name="output">Written once, whole, at the end.</param>
    /// <exception cref="ArgumentException">Two pages share an anchor, or one is not letters, digits and hyphens.</exception>
    public static PrintedBooklet Print(ScoutingBooklet booklet, PaperSize paper, Stream output)
    {
        ArgumentNullException.ThrowIfNull(booklet);
        ArgumentNullException.ThrowIfNull(output);
        CheckAnchors(booklet);
        var letters = new Letters();
        var sheets = Paginator.Place(booklet, letters);
        using var memory = new MemoryStream();
        using (var document = SKDocument.CreatePdf(memory, Properties(booklet)))
        {
            for (var i = 0; i < sheets.Count; i++)
            {
                var (width, height) = sheets[i].Grid.Paper(paper);
                var canvas = document.BeginPage((float)width, (float)height);
                using var ink = new Ink(canvas, letters);
                sheets[i].Draw(ink);
                Furniture.Draw(ink, sheets[i], booklet, i + 1, sheets.Count);
                document.EndPage();
            }

            document.Close();
        }

        output.Write(PdfCatalog.Complete(memory.ToArray(), Bookmarks(booklet), "en-US"));
        return new PrintedBooklet(sheets.Count, [.. letters.Replaced]);
    }

    /// <summary>Anchors become names inside the file: they must be plain and each its own.</summary>
    private static void CheckAnchors(ScoutingBooklet booklet)
    {
        var known = new HashSet<string>(StringComparer.Ordinal) { Paginator.ContentsAnchor };
        foreach (var anchor in booklet.Pages.Select(page => page.Anchor))
        {
            if (anchor.Length == 0 || !anchor.All(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-') || !known.Add(anchor))
            {
                throw new ArgumentException($"Page anchors are letters, digits and hyphens, each its own; got '{anchor}'.", nameof(booklet));
            }
        }
    }

    private static SKDocumentPdfMetadata Properties(ScoutingBooklet booklet)
    {
        const string Maker = "Tendency";
        var dated = booklet.Dated.UtcDateTime;
        return new SKDocumentPdfMetadata
        {
            Title = booklet.Title,
            Author = booklet.Author.Length > 0 ? booklet.Author : Maker,
            Subject = $"{booklet.Opponent} {booklet.Subject}: {booklet.Footprint}",
            Creator = Maker,
            Producer = Maker,
            Creation = dated,
            Modified = dated,
            RasterDpi = 300,
            EncodingQuality = 101, // keep images lossless
        };
    }

    private static List<Bookmark> Bookmarks(ScoutingBooklet booklet)
    {
        var marks = new List<Bookmark>();
        var first = true;
        foreach (var section in booklet.Sections.Where(section => section.Pages.Count > 0))
        {
            var pages = section.Pages.Select(page => new Bookmark(page.Name, page.Anchor, [])).ToList();
            if (first && booklet.Contents)
            {
                var at = section.Pages[0].Kind == PageKind.Brief ? 1 : 0;
                pages.Insert(at, new Bookmark("Contents", Paginator.ContentsAnchor, []));
            }

            first = false;
            if (section.Pages.Count == 1)
            {
                marks.AddRange(pages);
            }
            else
            {
                marks.Add(new Bookmark(section.Name, section.Pages[0].Anchor, pages));
            }
        }

        return marks;
    }
}
