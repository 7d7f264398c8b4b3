using SkiaSharp;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Demo;
using UglyToad.PdfPig;

namespace Tendency.Booklet.Tests.Pdf;

public sealed class PdfPrinterTests
{
    [Fact]
    public void Print_Twice_SameBytes() => Assert.Equal(Printed(DemoBooklet.Make(), PaperSize.Letter), Printed(DemoBooklet.Make(), PaperSize.Letter));

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Print_EveryBlock_ReadsBackWithoutFaults(PaperSize paper)
    {
        var inspection = Inspect(DemoBooklet.Make(), paper);
        Assert.Empty(inspection.Findings);
        Assert.Equal(11, inspection.Pages.Count);
        Assert.Equal("Port Halden offense, scouting booklet", inspection.Title);
        Assert.Equal("en-US", inspection.Language);
    }

    [Fact]
    public void Print_EveryBlock_WordsAreThere()
    {
        var pages = Inspect(DemoBooklet.Make(), PaperSize.Letter).Pages;
        Assert.Contains("With the back set to the weak side, they run.", pages[0].Text, StringComparison.Ordinal);
        Assert.Contains("Page 1 of 11", pages[0].Text, StringComparison.Ordinal);
        Assert.Contains("149 of 286", pages[2].Text, StringComparison.Ordinal);
        Assert.All(pages, page => Assert.Contains("4 games, 286 plays, charted to Sun 15 Nov, chart rev 3", page.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void Print_Contents_LinksToEveryPage()
    {
        var pages = Inspect(DemoBooklet.Make(), PaperSize.Letter).Pages;
        Assert.Equal([1, 3, 4, 5, 6, 7, 8, 9, 10, 11], pages[1].LinksTo.Order());
        Assert.Equal([3, 4, 6], pages[0].LinksTo.Order()); // "Page 4" in the brief's sentences
    }

    [Fact]
    public void Print_Sections_BecomeBookmarks() =>
        Assert.Equal(
            ["Brief 1", "Contents 2", "Run or pass 3", "Down and distance 3", "Formation and back side 4", "Run game 5", "Run game 5", "Front check 6", "Front card 7", "Tells and habits 8", "Tells 8", "Steadiness 9", "Sideline sheet 10", "How to read 11"],
            Inspect(DemoBooklet.Make(), PaperSize.Letter).Bookmarks);

    [Fact]
    public void Print_LettersNotInTheType_AreReportedAndShown()
    {
        using var stream = new MemoryStream();
        var printed = PdfPrinter.Print(DemoBooklet.Of(new Page("a", "Names", "Formation 漢字")), PaperSize.Letter, stream);
        Assert.Equal([0x5B57, 0x6F22], printed.ReplacedLetters);
        var page = PdfCheck.Inspect(stream).Pages[^1];
        Assert.Contains("[U+6F22][U+5B57]", page.Text, StringComparison.Ordinal);
        Assert.Contains("a letter our type lacks", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Print_DemoBooklet_IsSmall() => Assert.True(Printed(DemoBooklet.Make(), PaperSize.Letter).Length < 600_000);

    [Theory]
    [InlineData("a b")]
    [InlineData("")]
    [InlineData("contents")]
    public void Print_AnchorThatIsNoName_IsRefused(string anchor) =>
        Assert.Throws<ArgumentException>(() => Printed(DemoBooklet.Of(new Page(anchor, "A", "A.")), PaperSize.Letter));

    [Fact]
    public void Print_Logo_StandsOnTheBriefAndMovesNoWord()
    {
        using var bitmap = new SKBitmap(120, 40);
        bitmap.Erase(SKColors.Black);
        using var png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        var with = DemoBooklet.Make() with { Logo = png.ToArray() };
        using var stream = new MemoryStream(Printed(with, PaperSize.Letter));
        using (var document = PdfDocument.Open(stream))
        {
            Assert.Equal(1, document.GetPage(1).NumberOfImages);
        }

        Assert.Empty(PdfCheck.Inspect(stream).Findings);
        Assert.NotEqual(Printed(DemoBooklet.Make(), PaperSize.Letter), stream.ToArray());
    }

    [Fact]
    public void Print_Plots_AreVectorsAndTypeIsEmbedded()
    {
        using var document = PdfDocument.Open(Printed(DemoBooklet.Make(), PaperSize.Letter));
        foreach (var page in document.GetPages())
        {
            Assert.Equal(0, page.NumberOfImages);
            Assert.All(page.Letters.Select(letter => letter.FontName).Distinct(), name => Assert.Contains("+Inter-", name, StringComparison.Ordinal));
        }
    }

    internal static PdfInspection Inspect(ScoutingBooklet booklet, PaperSize paper = PaperSize.Letter)
    {
        using var stream = new MemoryStream(Printed(booklet, paper));
        return PdfCheck.Inspect(stream);
    }

    private static byte[] Printed(ScoutingBooklet booklet, PaperSize paper)
    {
        using var stream = new MemoryStream();
        PdfPrinter.Print(booklet, paper, stream);
        return stream.ToArray();
    }
}
