using Tendency.Tests.Commands;

namespace Tendency.Tests.Files;

public sealed class OutputFileTests : IDisposable
{
    private const string Chart = "game,play,down,distance,call\nA,1,1,10,run\nA,2,2,6,pass\n";

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Theory]
    [InlineData("chart.csv")]
    [InlineData("../week/chart.csv")]
    [InlineData("link.csv")]
    [InlineData("week.toml")]
    public void Write_AFileThatWasRead_IsRefusedAndTheFileStays(string output)
    {
        var chart = _tendency.Write("week/chart.csv", Chart);
        var week = _tendency.Write("week/week.toml", "level = 0.9\n");
        _ = File.CreateSymbolicLink(Path.Combine(_tendency.Folder, "week/link.csv"), "chart.csv");

        var ran = _tendency.Run("tables", "week", "--of", "call", "-o", Path.Combine("week", output));

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("never changed", ran.Error, StringComparison.Ordinal);
        Assert.Equal(Chart, File.ReadAllText(chart));
        Assert.Equal("level = 0.9\n", File.ReadAllText(week));
    }

    [Theory]
    [InlineData("")]
    [InlineData(".")]
    [InlineData("nowhere/out.csv")]
    public void Write_NoFileToWrite_EndsWithTwoAndTheRowAccount(string output)
    {
        _ = _tendency.Write("chart.csv", Chart);

        var ran = _tendency.Run("tables", "chart.csv", "--of", "call", "-o", output);

        Assert.Equal(2, ran.ExitCode);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.Equal("rows 2 = used 0 + left out 2 + set aside 0", ran.ErrorLines[^1]);
        Assert.Equal(["chart.csv"], Directory.EnumerateFileSystemEntries(_tendency.Folder).Select(Path.GetFileName));
    }

    // A device is written to, never replaced by a file: a run as root put a table in the place of /dev/null.
    [Fact]
    public void Write_LinkToADevice_LeavesTheLink()
    {
        _ = _tendency.Write("chart.csv", Chart);
        var link = Path.Combine(_tendency.Folder, "nothing");
        _ = File.CreateSymbolicLink(link, "/dev/null");

        var ran = _tendency.Run("tables", "chart.csv", "--of", "call", "-o", "nothing");

        Assert.Equal(0, ran.ExitCode);
        Assert.Equal("/dev/null", new FileInfo(link).LinkTarget);
    }

    [Fact]
    public void Write_LongestName_IsWritten()
    {
        _ = _tendency.Write("chart.csv", Chart);
        var name = new string('n', 251) + ".csv";

        Assert.Equal(0, _tendency.Run("tables", "chart.csv", "--of", "call", "-o", name).ExitCode);
        Assert.True(File.Exists(Path.Combine(_tendency.Folder, name)));
    }

    [Fact]
    public void Workbook_OverAChart_IsRefusedAndOverAnEmptyWorkbookWritten()
    {
        var chart = _tendency.Write("chart.csv", Chart);

        Assert.Equal(2, _tendency.Run("workbook", "-o", "chart.csv").ExitCode);
        Assert.Equal(Chart, File.ReadAllText(chart));
        Assert.Equal(0, _tendency.Run("workbook", "-o", "empty.xlsx").ExitCode);
        Assert.Equal(0, _tendency.Run("workbook", "-o", "empty.xlsx").ExitCode);
    }
}
