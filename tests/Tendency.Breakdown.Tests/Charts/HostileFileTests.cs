using System.Text;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.SampleCharts.Hostile;

namespace Tendency.Breakdown.Tests.Charts;

/// <summary>Files nobody should send. A longer run: dotnet run --project tests/Tendency.Simulations -c Release -- fuzz 5000 1.</summary>
public class HostileFileTests
{
    private const string Header = "game,play,down,distance,call\n";

    [Fact]
    public void Read_HostileFiles_NeverThrowAndRowsReconcile()
    {
        for (var seed = 0; seed < 150; seed++)
        {
            var (name, bytes) = HostileFiles.Next(new Random(seed));
            var read = Read(bytes, name);
            Assert.True(read.RowsRead == read.Plays.Rows + read.RowsLeftOut + read.RowsSetAside, $"seed {seed}");
            Assert.Equal(read.Plays.Rows, DerivedColumns.AddTo(read.Plays, WeekPlan.Default, Glossary.BuiltIn).Rows);
        }
    }

    [Fact]
    public void Read_ZipBomb_IsRefusedWithAPlainMessage()
    {
        var read = Read(HostileWorkbooks.Bomb(24), "bomb.xlsx");
        Assert.Contains("unpacks to more than", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LoneCellInTheLastCorner_MakesNoRowsOfTheEmptyOnes()
    {
        var read = Read(HostileWorkbooks.Next(new Random(FirstSeedOf(5))), "corner.xlsx");
        Assert.Equal((0, 0, 0), (read.RowsRead, read.Plays.Rows, read.RowsSetAside));
    }

    [Theory]
    [InlineData("1e999")]
    [InlineData("99999999999999999999")]
    [InlineData("NaN")]
    [InlineData("\0\0")]
    [InlineData("=1+1")]
    [InlineData("../../etc/passwd")]
    public void Read_NastyDistance_SetsTheRowAsideAndSaysWhere(string cell)
    {
        var read = Read(Encoding.UTF8.GetBytes(Header + $"North,1,1,{cell},run\n"), "chart.csv");
        Assert.Equal((1, 0, 1), (read.RowsRead, read.Plays.Rows, read.RowsSetAside));
        Assert.Contains(read.Problems, problem => problem.Rule.Code == "T102" && problem.Place is { Line: 2, Column: "distance" });
    }

    [Fact]
    public void Read_AMillionEmptyColumns_StillReadsTheChart()
    {
        var read = Read(Encoding.UTF8.GetBytes("game,play,down,distance,call" + new string(',', 1_000_000) + "\nNorth,1,1,10,run\n"), "wide.csv");
        Assert.Equal((1, 1), (read.RowsRead, read.Plays.Rows));
    }

    [Fact]
    public void Read_MoreWordsThanCanBeCounted_SaysSo()
    {
        var text = "game,play,down,distance,call,formation\n" + string.Concat(Enumerable.Range(1, 66_000).Select(i => $"North,{i},1,10,run,shape{i:x}q\n"));
        var read = Read(Encoding.UTF8.GetBytes(text), "words.csv");
        Assert.Equal(66_000, read.Plays.Rows);
        Assert.Contains(read.Problems, problem => problem.Rule.Code == "T103" && problem.Place.Column == "formation");
    }

    [Fact]
    public void Read_MoreProblemsThanAnyoneReads_AreCountedNotListed()
    {
        var read = Read(Encoding.UTF8.GetBytes(Header + string.Concat(Enumerable.Repeat("North,1,9,10,run\n", 21_000))), "bad.csv");
        Assert.Equal((21_000, 21_000), (read.RowsRead, read.RowsSetAside));
        Assert.Contains("1000 more problems of T102", Assert.Single(read.Problems, problem => problem.Rule.Code == "T019").Message, StringComparison.Ordinal);
    }

    private static int FirstSeedOf(int kind) => Enumerable.Range(0, 1000).First(seed => new Random(seed).Next(8) == kind);

    private static ReadLog Read(byte[] bytes, string name) => ChartReader.Read([new ChartSource(name, () => new MemoryStream(bytes))], WeekPlan.Default, Glossary.BuiltIn);
}
