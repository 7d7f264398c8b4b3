using System.Text;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Tests.Charts;

/// <summary>How much memory reading keeps. Run apart from the other tests, for the heap is everybody's.</summary>
[Collection("alone")]
public class MemoryTests
{
    // The bound stated at ChartReader: a hundred times the file where rows are a byte or two, some ten times where they are charted.
    [Theory]
    [InlineData("x\n", 200_000, 100)]
    [InlineData(",,,,\n", 200_000, 50)]
    [InlineData("North,1,1,10,run\n", 50_000, 30)]
    [InlineData("North,\"1\n", 50_000, 60)]
    public void Read_ManyRows_KeepsABoundedMultipleOfTheFile(string row, int rows, int multiple)
    {
        var bytes = Encoding.UTF8.GetBytes("game,play,down,distance,call\n" + string.Concat(Enumerable.Repeat(row, rows)));
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var read = ChartReader.Read([new ChartSource("many.csv", () => new MemoryStream(bytes))], WeekPlan.Default, Glossary.BuiltIn);
        var kept = GC.GetTotalMemory(forceFullCollection: true) - before;
        GC.KeepAlive(read);
        Assert.InRange(kept, bytes.LongLength, (bytes.LongLength * multiple) + (8 * 1024 * 1024));
    }
}

[CollectionDefinition("alone", DisableParallelization = true)]
public class AloneCollection;
