using Tendency.Booklet.Pdf;
using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

/// <summary>What only the command adds to a booklet: file names, a title, a choice of pages, the paper.</summary>
public sealed class BookletCommandTests : IDisposable
{
    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Theory]
    [InlineData("letter")]
    [InlineData("a4")]
    public void Booklet_LongTitleOddFileNamesFewPages_ReadsBackWithoutFaults(string paper)
    {
        var chart = string.Join('\n', File.ReadLines(Path.Combine(Checkout.SampleLogs(), "port-halden", "01-calder-bay.csv")).Take(60)) + "\n";
        _ = _tendency.Write("漢字 Ñandú é العربية 🏈.csv", chart);
        var title = string.Join(' ', Enumerable.Repeat("Week twelve, the long way round", 12));

        var ran = _tendency.Run(["booklet", "漢字 Ñandú é العربية 🏈.csv", "-o", "é 🏈.pdf", "--title", title, "--pages", "brief,run-game,third-down,reading", "--paper", paper, "--quiet"]);

        Assert.Equal("", string.Join('\n', ran.ErrorLines.Skip(1)));
        using var pdf = File.OpenRead(Path.Combine(_tendency.Folder, "é 🏈.pdf"));
        var read = PdfCheck.Inspect(pdf);
        Assert.Equal(title, read.Title);
        Assert.Empty(read.Findings.Where(finding => finding.Fault != PageFault.HalfEmpty));
        Assert.Equal(["Scouting brief 1", "Contents 2", "Run game 2", "Third down 3", "How to read 4"], read.Bookmarks);
    }
}
