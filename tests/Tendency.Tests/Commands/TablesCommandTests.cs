using System.Globalization;
using Tendency.Tests.Shared;

namespace Tendency.Tests.Commands;

public sealed class TablesCommandTests : IDisposable
{
    private const string Chart = "game,play,down,distance,call,formation,gain\nA,1,1,10,run,Trips,4\nA,2,2,6,pass,Doubles,x\nA,3,9,6,pass,Doubles,3\nA,4,3,2,run,Doubles,3\nA,5,4,1,none,Doubles,0\n";

    private readonly TendencyProgram _tendency = new();

    public void Dispose() => _tendency.Dispose();

    [Fact]
    public void Tables_Csv_HasTheContractsColumnsAndWilsonIntervals()
    {
        _ = _tendency.Write("chart.csv", Chart);

        var ran = _tendency.Run("tables", "chart.csv", "--by", "formation", "--of", "call", "--format", "csv");

        var lines = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("formation,outcome,plays,count,share,low,high", lines[0]);
        Assert.Contains(lines, line => line.StartsWith("Doubles,run,2,1,0.5,", StringComparison.Ordinal));

        // Wilson for 1 of 2 at 95 %, R 4.2.2 binom.confint(1, 2, methods = "wilson"), remembered to six digits.
        var cells = lines.Single(line => line.StartsWith("Doubles,run", StringComparison.Ordinal)).Split(',');
        Assert.Equal(0.094531, double.Parse(cells[5], CultureInfo.InvariantCulture), 6);
        Assert.Equal(0.905469, double.Parse(cells[6], CultureInfo.InvariantCulture), 6);
    }

    [Fact]
    public void Tables_ProblemsInTheChart_EndWithTheRowAccountingAndExitOne()
    {
        _ = _tendency.Write("chart.csv", Chart);

        var ran = _tendency.Run("tables", "chart.csv", "--of", "call", "--quiet");

        Assert.Equal(1, ran.ExitCode);
        Assert.Equal("rows 5 = used 3 + left out 1 + set aside 1", ran.ErrorLines[^1]);
        _ = Assert.Single(ran.ErrorLines);
    }

    [Theory]
    [InlineData("--by", "nothing", "--of", "call")]
    [InlineData("--of", "calls")]
    [InlineData("--of", "call", "--levle", "0.9")]
    [InlineData("--of", "call", "--level", "95")]
    [InlineData("--of", "call", "--format", "xml")]
    [InlineData("--of", "call", "--only", "down")]
    [InlineData("--of", "call", "--interval", "wald")]
    public void Tables_WrongArguments_EndWithTwoAndSayWhy(params string[] arguments)
    {
        _ = _tendency.Write("chart.csv", Chart);

        var ran = _tendency.Run(["tables", "chart.csv", .. arguments]);

        Assert.Equal(2, ran.ExitCode);
        Assert.Empty(ran.Output);
        Assert.Contains("tendency tables --help", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_TwoOffensesAndNoSubject_EndWithTwoAndListThem()
    {
        _ = _tendency.Write("chart.csv", "game,play,offense,down,distance,call\nA,1,North,1,10,run\nA,2,South,1,10,pass\n");

        var ran = _tendency.Run("tables", "chart.csv", "--of", "call");
        var named = _tendency.Run("tables", "chart.csv", "--of", "call", "--only", "offense=south", "--format", "csv");

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("North, South", ran.Error, StringComparison.Ordinal);
        Assert.Equal(0, named.ExitCode);
        Assert.Contains("pass,1,1,1,", named.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_UnchartedColumn_SaysSoAndGoesOn()
    {
        _ = _tendency.Write("chart.csv", Chart);

        var ran = _tendency.Run("tables", "chart.csv", "--by", "motion", "--of", "call", "--format", "csv");

        Assert.Equal("motion,outcome,plays,count,share,low,high\n", ran.Output);
        Assert.Contains("not charted: motion", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("not charted", _tendency.Run("tables", "chart.csv", "--by", "motion", "--of", "call", "--quiet").Error, StringComparison.Ordinal);
        Assert.NotEqual(2, ran.ExitCode);
    }

    [Fact]
    public void Tables_WordThatLooksLikeAFormula_IsWrittenSoThatItIsNone()
    {
        _ = _tendency.Write("chart.csv", "game,play,down,distance,call,formation\nA,1,1,10,run,=1+1\n");

        var ran = _tendency.Run("tables", "chart.csv", "--by", "formation", "--of", "call", "--format", "csv");

        Assert.Contains("'=1+1,run", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_FewPlays_AreCountedWithoutAPercentageInText()
    {
        _ = _tendency.Write("chart.csv", "game,play,down,distance,call,formation\n" + string.Concat(Enumerable.Range(1, 9).Select(play => $"A,{play},1,10,pass,{(play <= 4 ? "Trey" : "Ace")}\n")));

        var ran = _tendency.Run("tables", "chart.csv", "--by", "formation", "--of", "call", "--level", "0.9");

        var lines = Lines(ran.Output);
        var cells = lines.Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToArray();
        Assert.Equal(["Trey", "pass", "4", "4", "few"], cells[1]);
        Assert.Equal(["Ace", "pass", "5", "5", "100%", "65%", "100%"], cells[2]); // Wilson's lower limit at x = n is n / (n + z²), z = 1.645
        Assert.Equal("low, high: 90% range, Wilson's, each share by itself; plays of one game taken as independent (--clustered: as alike). few: under 5 plays.", lines[^1]);
    }

    [Fact]
    public void Tables_SampleSeason_CountsEveryPlayOnce()
    {
        var ran = _tendency.Run("tables", Checkout.SampleLogs("port-halden"), "--by", "game", "--of", "call", "--format", "csv");

        var rows = ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.Split(',')).ToArray();
        Assert.Equal(5, rows.Select(row => row[0]).Distinct().Count());
        Assert.Contains($"used {rows.Sum(row => int.Parse(row[3], CultureInfo.InvariantCulture))} +", ran.Error, StringComparison.Ordinal);
    }

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
