using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Demo;
using Tendency.Booklet.Tests.Pages;

namespace Tendency.Booklet.Tests.Pdf;

/// <summary>The drawing library writes no structure tags, so what a screen reader is given is the order of the words in the file: it is the order of the blocks.</summary>
public sealed class ReadingOrderTests
{
    [Fact]
    public void Print_FiveGames_WordsFollowTheBlocks()
    {
        var booklet = BookletOrder.Compose(Studies.FiveGames, DemoBooklet.Dated);
        using var stream = new MemoryStream();
        _ = PdfPrinter.Print(booklet, PaperSize.Letter, stream);
        var text = Packed(string.Concat(PdfCheck.Inspect(stream).Pages.Select(page => page.Text)));

        var at = 0;
        foreach (var words in booklet.Pages.Where(page => page.Kind == PageKind.Inside).SelectMany(Words))
        {
            var next = text.IndexOf(Packed(words), at, StringComparison.Ordinal);
            Assert.True(next >= 0, words);
            at = next;
        }
    }

    /// <summary>Headline, deck, then the titles and paragraphs as they stand.</summary>
    private static IEnumerable<string> Words(Page page) => [page.Headline, page.Deck, .. page.Blocks.SelectMany(Words)];

    private static IEnumerable<string> Words(Block block) => block switch
    {
        Heading heading => [heading.Title],
        Paragraph { Text.Runs: [var first, ..] } => [first.Text],
        Together together => together.Blocks.SelectMany(Words),
        SideBySide beside => beside.Sides.SelectMany(side => side.Blocks.SelectMany(Words)),
        SmallMultiples multiples => multiples.Panels.Select(panel => panel.Title),
        _ => [],
    };

    private static string Packed(string text) => string.Concat(text.Replace('\'', '’').Where(letter => !char.IsWhiteSpace(letter)));
}
