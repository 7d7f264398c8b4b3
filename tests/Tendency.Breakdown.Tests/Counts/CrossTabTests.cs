using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;

namespace Tendency.Breakdown.Tests.Counts;

public class CrossTabTests
{
    [Theory]
    [InlineData(400, 3, 1)]
    [InlineData(400, 5, 2)]
    [InlineData(3000, 40, 3)]
    [InlineData(3000, 1500, 3)]
    public void Count_RandomCharts_EqualsCountingPlayByPlay(int plays, int levels, int dimensions)
    {
        var random = new Random(plays + levels + dimensions);
        var words = Enumerable.Range(0, dimensions + 1)
            .Select(_ => Enumerable.Range(0, plays).Select(_ => random.Next(levels + 1) is var level && level == 0 ? "" : $"w{level}").ToArray())
            .ToArray();
        var names = Enumerable.Range(0, dimensions).Select(i => $"d{i}").ToArray();
        var log = new PlayLog(plays, names.Append("of").Select((name, i) => CategoryColumn.FromWords(name, words[i])), [], []);

        var counted = CrossTab.Count(log, names, "of").ToDictionary(row => string.Join('|', row.By.Append(row.Outcome)), row => row.Tally);

        var expected = Enumerable.Range(0, plays)
            .Where(play => words.All(w => w[play].Length > 0))
            .GroupBy(play => string.Join('|', words.SkipLast(1).Select(w => w[play])))
            .SelectMany(cell => cell.GroupBy(play => words[^1][play]), (cell, outcome) => ($"{cell.Key}|{outcome.Key}", new Tally(outcome.Count(), cell.Count())))
            .ToDictionary(pair => pair.Item1, pair => pair.Item2);
        Assert.Equal(expected.Count, counted.Count);
        Assert.All(expected, pair => Assert.Equal(pair.Value, counted[pair.Key]));
    }

    [Fact]
    public void Count_OutcomeNotCharted_HasNoRows()
    {
        var log = new PlayLog(2, [CategoryColumn.FromWords("d", ["a", "b"])], [], []);

        Assert.Empty(CrossTab.Count(log, ["d"], "of"));
    }

    [Fact]
    public void Share_WithoutPlays_IsNotDefined() => Assert.Null(new Tally(0, 0).Share);
}
