using Tendency.Breakdown.Counts.Scripts;

namespace Tendency.Breakdown.Tests.Counts.Scripts;

public class LargestRemainderTests
{
    // Worked by hand. 12 of 7:2:1 -> quotas 8.4, 2.4, 1.2: 8, 2, 1 and one left; the two remainders of .4 tie, the larger count takes it.
    // 10 of 3:3:1 -> 4.286, 4.286, 1.429: 4, 4, 1, the last to the third.
    [Theory]
    [InlineData(new[] { 7, 2, 1 }, 12, new[] { 9, 2, 1 })]
    [InlineData(new[] { 3, 3, 1 }, 10, new[] { 4, 4, 2 })]
    [InlineData(new[] { 5, 5 }, 3, new[] { 2, 1 })]
    [InlineData(new[] { 1, 0, 99 }, 10, new[] { 0, 0, 10 })]
    [InlineData(new[] { 4, 6 }, 0, new[] { 0, 0 })]
    [InlineData(new int[0], 0, new int[0])]
    public void Of_SmallCases_AreAsByHand(int[] counts, int seats, int[] expected) => Assert.Equal(expected, LargestRemainder.Of(counts, seats));

    [Fact]
    public void Of_AnyCounts_AddsUpAndStaysWithinOneOfTheQuota()
    {
        var random = new Random(5);
        for (var round = 0; round < 500; round++)
        {
            var counts = Enumerable.Range(0, random.Next(1, 12)).Select(_ => random.Next(0, 60)).Append(1).ToArray();
            var seats = random.Next(0, 80);

            var given = LargestRemainder.Of(counts, seats);

            Assert.Equal(seats, given.Sum());
            Assert.All(counts.Zip(given), pair => Assert.True(Math.Abs(pair.Second - ((double)seats * pair.First / counts.Sum())) < 1));
        }
    }

    [Fact]
    public void Of_NothingToGiveTo_IsAFaultOfTheCaller() => Assert.Throws<ArgumentOutOfRangeException>(() => LargestRemainder.Of([0, 0], 3));
}
