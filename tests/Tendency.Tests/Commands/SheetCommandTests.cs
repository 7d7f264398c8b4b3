using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

public sealed class SheetCommandTests : IDisposable
{
    private static readonly string s_logs = Checkout.SampleLogs();

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Sheet_Sample_WritesTheSamePdfTwice()
    {
        byte[] Print(string name)
        {
            var ran = _tendency.Run(["sheet", Path.Combine(s_logs, "port-halden"), "-o", name, "--quiet"]);
            Assert.Equal("rows 356 = used 331 + left out 25 + set aside 0", Assert.Single(ran.ErrorLines));
            return File.ReadAllBytes(Path.Combine(_tendency.Folder, name));
        }

        var first = Print("one.pdf");

        Assert.Equal("%PDF"u8, first.AsSpan(0, 4));
        Assert.Equal(first, Print("two.pdf"));
    }

    [Fact]
    public void Sheet_WithoutAFile_SaysToNameOne()
    {
        var ran = _tendency.Run("sheet", Path.Combine(s_logs, "port-halden"));

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("-o", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_TeamThatOnlyDefends_SaysWhoseOffenseIsCharted()
    {
        var ran = _tendency.Run("sheet", Path.Combine(s_logs, "our-team", "defense"), "-o", "sheet.pdf");

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("not among the offenses charted", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_tendency.Folder, "sheet.pdf")));
    }

    [Fact]
    public void Booklet_CutUps_ListsEveryPlayWithItsClip()
    {
        var ran = _tendency.Run("booklet", Path.Combine(s_logs, "port-halden"), "--pages", "down-distance", "--cutups", "cut.csv", "--quiet");

        Assert.Equal(0, ran.ExitCode);
        var lines = File.ReadAllLines(Path.Combine(_tendency.Folder, "cut.csv"));
        Assert.Equal("list,page,topic,name,plays,order,game,play,clip", lines[0]);
        Assert.Contains(lines, line => line.Contains("1st & 10", StringComparison.Ordinal) && line.EndsWith("Quarrick,67,QK-067", StringComparison.Ordinal));
    }

    [Fact]
    public void Booklet_LogoThatIsNoPng_IsRefusedAndNothingIsWritten()
    {
        _ = _tendency.Write("logo.png", "not a picture, whatever its name says");

        var ran = _tendency.Run("booklet", Path.Combine(s_logs, "port-halden"), "-o", "booklet.pdf", "--logo", "logo.png");

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("logo.png is not a PNG", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_tendency.Folder, "booklet.pdf")));
    }
}
