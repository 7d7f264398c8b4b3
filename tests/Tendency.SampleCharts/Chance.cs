namespace Tendency.SampleCharts;

/// <summary>
/// A seeded stream of chance whose bytes never change with the runtime: SplitMix64
/// (Steele, Lea and Flood 2014, doi:10.1145/2714064.2660195). Same seed, same draws, for ever.
/// </summary>
public sealed class Chance(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A stream of its own for one part of the work, so that a draw added to one part moves no other.</summary>
    public Chance Fork(ulong label) => new(Mix(unchecked(_state ^ Mix(label + 0x632BE59BD9B4E019UL))));

    /// <summary>Uniform on [0, 1).</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>True with the given probability.</summary>
    public bool Roll(double probability) => Unit() < probability;

    /// <summary>A whole number from low to high, both included.</summary>
    public int Between(int low, int high) => low + (int)(Unit() * (high - low + 1));

    /// <summary>Standard normal (Box and Muller, one of the pair).</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Unit())) * Math.Cos(2 * Math.PI * Unit());

    /// <summary>One value, drawn in proportion to its weight; weights need not add to one.</summary>
    public T Pick<T>(params ReadOnlySpan<(T Value, double Weight)> choices)
    {
        var total = 0.0;
        foreach (var choice in choices)
        {
            total += choice.Weight;
        }

        var at = Unit() * total;
        foreach (var choice in choices)
        {
            at -= choice.Weight;
            if (at < 0)
            {
                return choice.Value;
            }
        }

        return choices[^1].Value;
    }

    /// <summary>One of the values, each as likely.</summary>
    public T One<T>(params ReadOnlySpan<T> values) => values[Between(0, values.Length - 1)];

    private ulong Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
        }

        return Mix(_state);
    }

    private static ulong Mix(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
