using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

public sealed class SelfScoutCommandTests : IDisposable
{
    private readonly TendencyProgram _tendency = new();

    private static string Sample(string folder) => Checkout.SampleLogs(folder);

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void SelfScout_Csv_StartsWithTheDearestAndEndsWithTheAccounting()
    {
        var ran = _tendency.Run("selfscout", Sample("our-team/offense"), "--unit", "offense", "--format", "csv");

        var lines = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("rank,question,situation,outcome,", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("1,", lines[1], StringComparison.Ordinal);
        Assert.Equal("rows 329 = used 316 + left out 13 + set aside 0", ran.ErrorLines[^1]);
    }

    [Theory]
    [InlineData("--unit", "special")]
    [InlineData("--against", "nowhere")]
    [InlineData("--against", "game=Nobody")]
    [InlineData("--against", "tag=rain")]
    public void SelfScout_WrongOption_EndsWithTwoAndSaysWhy(string option, string value)
    {
        var ran = _tendency.Run("selfscout", Sample("our-team/offense"), option, value);

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains(value, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Review_BookletsFindings_CountsTheGameAndItsFirstHalf()
    {
        var games = Directory.GetFiles(Sample("port-halden"), "*.csv").Order(StringComparer.Ordinal).ToArray();
        Assert.Equal(0, _tendency.Run(["booklet", .. games[..4], "-o", "monday.pdf", "--pages", "brief"]).ExitCode);

        var whole = _tendency.Run("review", "monday.findings.json", games[4], "--format", "csv");
        var half = _tendency.Run("review", "monday.findings.json", games[4], "--only", "quarter=1,2", "--format", "csv");

        // Planted: pistol is a run look in games one to three only.
        Assert.Contains(whole.Output.Split('\n'), line => line.Contains("back_set=pistol,call=run", StringComparison.Ordinal) && line.EndsWith("broke", StringComparison.Ordinal));
        Assert.Equal(0, half.ExitCode);
        Assert.Equal(whole.Output.Split('\n').Count(line => line.StartsWith("claim,", StringComparison.Ordinal)), half.Output.Split('\n').Count(line => line.StartsWith("claim,", StringComparison.Ordinal)));
    }

    [Fact]
    public void Review_NoFindingsOrNoChart_EndsWithTwoAndSaysWhy()
    {
        _ = _tendency.Write("none.json", "{}");
        _ = _tendency.Write("chart.csv", "game,play,down,distance,call\nA,1,1,10,run\n");

        Assert.Contains("no findings", _tendency.Run("review", "none.json", "chart.csv").Error, StringComparison.Ordinal);
        Assert.Equal(2, _tendency.Run("review", "chart.csv").ExitCode);
        Assert.Equal(2, _tendency.Run("review", "none.json").ExitCode);
    }
}
