using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Demo;

namespace Tendency.Booklet.Tests.Pdf;

/// <summary>Content as charts really are: nothing may be clipped, lost or printed over.</summary>
public sealed class OddShapesTests
{
    private const string LongWord = "Donaudampfschifffahrtsgesellschaftskapitänsmützenformation";

    public static TheoryData<string> Shapes => ["no blocks", "empty table", "one row", "sixty rows", "long words", "other scripts", "long prose", "many panels", "many claims", "many plays"];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Print_OddShape_NothingOutsideOrOverlapping(string shape)
    {
        var inspection = PdfPrinterTests.Inspect(DemoBooklet.Of(Make(shape)));
        Assert.Empty(inspection.Findings.Where(finding => finding.Fault != PageFault.HalfEmpty));
    }

    [Fact]
    public void Print_SixtyRows_EveryRowOnceAndTheHeadOnEveryPage()
    {
        var pages = PdfPrinterTests.Inspect(DemoBooklet.Of(Make("sixty rows")) with { Contents = false }).Pages;
        Assert.True(pages.Count > 1);
        Assert.All(pages, page => Assert.Contains("Situation", page.Text, StringComparison.Ordinal));
        var text = string.Concat(pages.Select(page => page.Text));
        for (var row = 1; row <= 60; row++)
        {
            Assert.Equal(1, text.Split($"Row{row}x").Length - 1);
        }
    }

    [Fact]
    public void Print_ShortPages_ShareASheet()
    {
        var pages = Enumerable.Range(1, 4).Select(i => new Page($"p{i}", $"Part {i}", $"Finding {i}.") { Blocks = [Paragraph.Note("A few words.")] });
        var inspection = PdfPrinterTests.Inspect(DemoBooklet.Of([.. pages]) with { Contents = false });
        Assert.Single(inspection.Pages);
        Assert.Equal(["Pages 1", "Part 1 1", "Part 2 1", "Part 3 1", "Part 4 1"], inspection.Bookmarks);
    }

    [Fact]
    public void Inspect_OverlapAndOverrun_AreFound()
    {
        var picture = new Diagram(516, 60, [new WordShape(50, 30, "Halden", 12), new WordShape(58, 33, "Quarry", 12), new WordShape(530, 30, "beyond", 12)], "Words over one another.");
        var faults = PdfPrinterTests.Inspect(DemoBooklet.Of(new Page("a", "A", "A finding.") { Blocks = [picture] })).Findings;
        Assert.Contains(faults, finding => finding is { Fault: PageFault.Overlap, Words: "Halden / Quarry" });
        Assert.Contains(faults, finding => finding is { Fault: PageFault.OutsideMargins, Words: "beyond" });
        Assert.Contains(faults, finding => finding.Fault == PageFault.HalfEmpty);
    }

    private static Page Make(string shape) => new("odd", "Odd shapes", "A finding.")
    {
        Blocks = shape switch
        {
            "no blocks" => [],
            "empty table" => [new Heading("Empty"), Rows(0, i => $"Row{i}x")],
            "one row" => [Rows(1, i => $"Row{i}x")],
            "sixty rows" => [new Heading("Sixty"), Rows(60, i => $"Row{i}x")],
            "long words" => [new Heading(LongWord + LongWord, LongWord), new Paragraph(RichText.Strong(LongWord) + LongWord), Rows(5, i => LongWord + i), new EmptyState(LongWord + LongWord + LongWord), new SmallMultiples([new Panel(LongWord, LongWord, [])])],
            "other scripts" => [new Heading("漢字 Formation"), Rows(3, i => $"Ñandú é 漢字 العربية {i}"), new Paragraph("Кириллица, Ελληνικά, Tiếng Việt, עברית, 🏈")],
            "long prose" => [new Paragraph(string.Join(' ', Enumerable.Range(0, 2000).Select(i => $"word{i}")))],
            "many panels" => [new SmallMultiples([.. Enumerable.Range(0, 40).Select(i => new Panel($"Panel {i}", "n = 3", [new Paragraph("Some words that wrap over a few lines of the panel.")]))])],
            "many claims" => [new EvidenceList("Claims", [.. Enumerable.Range(0, 14).Select(i => new Evidence($"Claim {i} with a very long sentence that takes more than one line.", DemoBooklet.Share(i * 7, 98, .5), "plays", "a line with a long name", "Support."))])],
            "many plays" => [new PlayListing("All", DemoBooklet.Plays(("Calder Bay", [.. Enumerable.Range(1, 900)]), ("A game without a short name", [.. Enumerable.Range(1, 90)])))],
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape."),
        },
    };

    private static Table Rows(int count, Func<int, string> name) => new(
        [
            new Column("Situation", 0, 98),
            new Column("Plays", 104, 34, Align.Right),
            new Column("Run share", 160, 106) { Axis = StripAxis.Shares("team 52%", .52) },
            new Column("Runs, likely", 290, 100),
            new Column("Top runs", 400, 116),
        ],
        [.. Enumerable.Range(1, count).Select(i =>
        {
            var share = DemoBooklet.Share(i / 2, i, .52);
            return new TableRow(Cells.Name(name(i)), Cells.Count(i), Cells.Strip(share), Cells.Share(share), Cells.Counts([new NamedCount(name(i + 1000), 3)]));
        })]);
}
