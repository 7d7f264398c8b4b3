using Tendency.Inference.Games;

namespace Tendency.Inference.Tests.Games;

public class RandomBitsTests
{
    /// <summary>The generator steps by a constant: seeds that were multiples of it would share all words but one.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 2)]
    [InlineData(-1, 0)]
    public void Fill_NeighboringSeeds_ShareNoWord(int one, int other)
    {
        Assert.Empty(Words(one).Intersect(Words(other)));
    }

    [Fact]
    public void Fill_SameSeed_GivesTheNumbersOfNext()
    {
        var (filled, single) = (new RandomBits(7), new RandomBits(7));
        var numbers = new ushort[50];
        filled.Fill(numbers);
        Assert.All(numbers, number => Assert.Equal(single.Next(), number));
    }

    // Six numbers of ten bits come from one word.
    private static HashSet<string> Words(int seed)
    {
        var random = new RandomBits(seed);
        var numbers = new ushort[600];
        random.Fill(numbers);
        return [.. numbers.Chunk(6).Select(word => string.Join(' ', word))];
    }
}
