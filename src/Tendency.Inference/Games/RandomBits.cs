namespace Tendency.Inference.Games;

/// <summary>
/// Numbers below <see cref="DrawTable.Size"/> from a seed, the same on every machine: SplitMix64, Steele, Lea and Flood 2014,
/// doi:10.1145/2660193.2660195, six numbers from each of its 64-bit words.
/// </summary>
/// <remarks>The seed is scrambled first: neighboring seeds would otherwise give the same words, shifted by one.</remarks>
internal struct RandomBits(int seed)
{
    private const ulong Step = 0x9E3779B97F4A7C15UL;

    private ulong _state = Scrambled(unchecked((ulong)seed * Step));
    private ulong _word = 0;
    private int _left = 0;

    public int Next()
    {
        if (_left < DrawTable.Bits)
        {
            _word = NextWord();
            _left = 64;
        }

        var part = (int)(_word & (DrawTable.Size - 1));
        _word >>= DrawTable.Bits;
        _left -= DrawTable.Bits;
        return part;
    }

    /// <summary>As many numbers as there is room, several times faster than one at a time; a word begun before is dropped.</summary>
    public void Fill(Span<ushort> into)
    {
        const int Parts = 64 / DrawTable.Bits;
        var at = 0;
        while (at < into.Length)
        {
            var word = NextWord();
            var end = Math.Min(into.Length, at + Parts);
            while (at < end)
            {
                into[at++] = (ushort)(word & (DrawTable.Size - 1));
                word >>= DrawTable.Bits;
            }
        }

        _left = 0;
    }

    private ulong NextWord()
    {
        _state = unchecked(_state + Step);
        return Scrambled(_state);
    }

    private static ulong Scrambled(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
