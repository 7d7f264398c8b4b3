using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

public sealed class ScriptCommandTests : IDisposable
{
    private static readonly string s_sample = Checkout.SampleLogs("port-halden");

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Script_Csv_HasTheContractsColumnsAndTheCautionOnce()
    {
        var ran = _tendency.Run("script", s_sample, "--plays", "12", "--format", "csv");

        var lines = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("period_order,game,play,situation,formation,back_side,call,detail", lines[0]);
        Assert.Equal(13, lines.Length);
        Assert.StartsWith("12,", lines[12], StringComparison.Ordinal);
        _ = Assert.Single(ran.ErrorLines, line => line.Contains("governing body", StringComparison.Ordinal));
        Assert.StartsWith("rows 356 = used 331", ran.ErrorLines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Script_SameSeed_SameBytes()
    {
        var first = _tendency.Run("script", s_sample, "--period", "third-down", "--format", "json", "--quiet");
        var again = _tendency.Run("script", s_sample, "--period", "third-down", "--format", "json", "--quiet");
        var other = _tendency.Run("script", s_sample, "--period", "third-down", "--format", "json", "--quiet", "--seed", "2");

        Assert.Equal(first.Output, again.Output);
        Assert.NotEqual(first.Output, other.Output);
        _ = Assert.Single(first.ErrorLines);
    }

    [Fact]
    public void Script_RedZoneWithoutBallOn_SaysNotChartedAndDoesNotFail()
    {
        _ = _tendency.Write("chart.csv", "game,play,down,distance,call\nA,1,1,10,run\n");

        var ran = _tendency.Run("script", "chart.csv", "--period", "red-zone", "--format", "csv");

        Assert.Equal(0, ran.ExitCode);
        Assert.Contains(ran.ErrorLines, line => line.StartsWith("not charted: field_zone", StringComparison.Ordinal));
        _ = Assert.Single(ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("--plays", "0")]
    [InlineData("--plays", "many")]
    [InlineData("--period", "lunch")]
    public void Script_WrongArguments_EndWithTwoAndSayWhatIsTaken(string option, string value)
    {
        var ran = _tendency.Run("script", s_sample, option, value);

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains($"{option} takes", ran.Error, StringComparison.Ordinal);
        Assert.Contains(value, ran.Error, StringComparison.Ordinal);
    }
}
