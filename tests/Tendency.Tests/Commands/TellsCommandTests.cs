using System.Globalization;
using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

public sealed class TellsCommandTests : IDisposable
{
    private static readonly string[] s_columns =
    [
        "rank", "situation", "outcome", "plays", "count", "share", "low", "high", "base_share", "difference", "difference_low", "difference_high", "p_value",
        "q_value", "games", "games_same_way", "held_out_plays", "held_out_count", "plays_list",
    ];

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Tells_Csv_HasTheContractsColumnsAndTheirMeaning()
    {
        var ran = _tendency.Run("tells", Checkout.SampleLogs("port-halden"), "--format", "csv");

        var lines = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(',')).ToArray();
        Assert.Equal(s_columns, lines[0]);
        Assert.Equal(Enumerable.Range(1, lines.Length - 1), lines.Skip(1).Select(cells => (int)Cell(cells, "rank")));
        Assert.All(lines.Skip(1), cells =>
        {
            Assert.Equal(Cell(cells, "count") / Cell(cells, "plays"), Cell(cells, "share"), 12);
            Assert.Equal(Cell(cells, "share") - Cell(cells, "base_share"), Cell(cells, "difference"), 12);
            Assert.InRange(Cell(cells, "q_value"), Cell(cells, "p_value"), 0.10);
            Assert.Equal(Cell(cells, "plays"), cells[^1].Count(c => c == ':')); // game:play, and a game's name may hold spaces
            Assert.Matches("^[a-z_]+=[^=]+( & [a-z_]+=[^=]+)?$", cells[1]);
        });
    }

    [Theory]
    [InlineData("call", "Nothing was searched: a tell must show in two games.")]
    [InlineData("front", "Nothing was searched: no play has front charted.")]
    public void Tells_NothingToSearch_SaysWhyAndClaimsNoFinding(string of, string said)
    {
        _ = _tendency.Write("chart.csv", "game,play,down,distance,call\nA,1,1,10,run\nA,2,2,6,pass\n");

        var ran = _tendency.Run("tells", "chart.csv", "--of", of);

        Assert.StartsWith(said, ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("No tell holds up", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_ItsSituation_CountsTheSameInTables()
    {
        var folder = Checkout.SampleLogs("port-halden");
        var tell = _tendency.Run("tells", folder, "--format", "csv").Output.Split('\n')[1].Split(',');

        var ran = _tendency.Run(["tables", folder, "--of", "call", "--format", "csv", .. tell[1].Split(" & ").SelectMany(condition => (string[])["--only", condition])]);

        Assert.Contains($"\n{tell[2]},{tell[3]},{tell[4]},{tell[5]},{tell[6]},{tell[7]}\n", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--depth", "4")]
    [InlineData("--fdr", "0")]
    [InlineData("--min-plays", "none")]
    [InlineData("--dimensions", "formatoin")]
    public void Tells_WrongArguments_EndWithTwoAndNameTheValue(string option, string value)
    {
        var ran = _tendency.Run("tells", Checkout.SampleLogs("port-halden"), option, value);

        Assert.Equal(2, ran.ExitCode);
        Assert.Empty(ran.Output);
        Assert.Contains(value, ran.Error, StringComparison.Ordinal);
    }

    private static double Cell(string[] cells, string column) => double.Parse(cells[Array.IndexOf(s_columns, column)], CultureInfo.InvariantCulture);
}
