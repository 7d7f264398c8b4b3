namespace Tendency.Tests.Commands;

public sealed class AgreeCommandTests : IDisposable
{
    private const string First = "game,play,down,distance,ball_on,call,gain,hash\nA,1,1,10,own 25,run,4,L\nA,2,2,6,own 29,pass,0,L\nA,3,3,6,own 29,pass,11,R\n";
    private const string Second = "game,play,down,distance,ball_on,call,gain,hash\nA,1,1,10,own 25,run,4,L\nA,2,2,6,own 29,pass,0,M\nA,3,3,6,own 29,pass,11,R\n";

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Agree_TwoCharts_HasTheContractsColumns()
    {
        _ = _tendency.Write("first.csv", First);
        _ = _tendency.Write("second.csv", Second);

        var ran = _tendency.Run("agree", "first.csv", "second.csv", "--format", "csv");

        var lines = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(0, ran.ExitCode);
        Assert.Equal("column,plays,agreement,kappa,low,high", lines[0]);
        Assert.Contains(lines, line => line.StartsWith("down,3,1,1,", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("hash,3,0.666", StringComparison.Ordinal));
        Assert.Equal("rows 6 = used 6 + left out 0 + set aside 0", ran.ErrorLines[^1]);
    }

    [Fact]
    public void Agree_OneChart_EndsWithTwo()
    {
        _ = _tendency.Write("first.csv", First);

        var ran = _tendency.Run("agree", "first.csv");

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("two charts", ran.Error, StringComparison.Ordinal);
    }
}
