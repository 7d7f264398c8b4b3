namespace Tendency.Breakdown.Findings.Searching;

/// <summary>Meets every situation of up to three conditions that has enough plays.</summary>
internal static class SituationWalk
{
    /// <summary>Above this many value combinations, the few that occur are looked up instead of indexed.</summary>
    private const int LargestIndex = 1 << 21;

    /// <param name="dimensions">Indices of the dimensions combined; shared between calls, copy what you keep.</param>
    /// <param name="values">Value of each.</param>
    /// <param name="plays">The plays of the situation, indices into the ground, in rising order.</param>
    public delegate void Visit(ReadOnlySpan<int> dimensions, ReadOnlySpan<int> values, ReadOnlySpan<int> plays);

    public static void Each(SearchGround ground, int depth, int minPlays, Visit visit)
    {
        var all = ground.Dimensions;
        var buffers = new Buffers(ground.Rows.Length);
        for (var a = 0; a < all.Count; a++)
        {
            Cross([a], ground, minPlays, buffers, visit);
            for (var b = a + 1; depth > 1 && b < all.Count; b++)
            {
                if (TellDimensions.AreNested(all[a].Name, all[b].Name))
                {
                    continue;
                }

                Cross([a, b], ground, minPlays, buffers, visit);
                for (var c = b + 1; depth > 2 && c < all.Count; c++)
                {
                    if (!TellDimensions.AreNested(all[a].Name, all[c].Name) && !TellDimensions.AreNested(all[b].Name, all[c].Name))
                    {
                        Cross([a, b, c], ground, minPlays, buffers, visit);
                    }
                }
            }
        }
    }

    /// <summary>Sorts the plays by combination of values (a counting sort over the code buffers) and hands over each large enough run.</summary>
    private static void Cross(int[] dimensions, SearchGround ground, int minPlays, Buffers buffers, Visit visit)
    {
        long size = 1;
        foreach (var d in dimensions)
        {
            size *= ground.Dimensions[d].Values.Count;
        }

        var index = buffers.Index;
        Array.Clear(index);
        foreach (var d in dimensions)
        {
            var codes = ground.Dimensions[d].Codes;
            var count = ground.Dimensions[d].Values.Count;
            for (var i = 0; i < index.Length; i++)
            {
                index[i] = codes[i] < 0 || index[i] < 0 ? -1 : (index[i] * count) + codes[i];
            }
        }

        var slots = size <= LargestIndex ? (int)size : Compact(index);
        var starts = buffers.Starts(slots + 1);
        foreach (var slot in index)
        {
            if (slot >= 0)
            {
                starts[(int)slot + 1]++;
            }
        }

        for (var s = 0; s < slots; s++)
        {
            starts[s + 1] += starts[s];
        }

        var order = buffers.Order;
        for (var i = 0; i < index.Length; i++)
        {
            if (index[i] >= 0)
            {
                order[starts[(int)index[i]]++] = i;
            }
        }

        // Each start has moved to its run's end, which is the next run's start.
        var values = new int[dimensions.Length];
        var start = 0;
        for (var s = 0; s < slots; s++)
        {
            var end = starts[s];
            if (end - start >= minPlays)
            {
                var plays = order.AsSpan(start, end - start);
                for (var k = 0; k < values.Length; k++)
                {
                    values[k] = ground.Dimensions[dimensions[k]].Codes[plays[0]];
                }

                visit(dimensions, values, plays);
            }

            start = end;
        }
    }

    private static int Compact(long[] index)
    {
        var slots = new Dictionary<long, int>();
        for (var i = 0; i < index.Length; i++)
        {
            if (index[i] >= 0)
            {
                _ = slots.TryAdd(index[i], slots.Count);
                index[i] = slots[index[i]];
            }
        }

        return slots.Count;
    }

    private sealed class Buffers(int plays)
    {
        private int[] _starts = [];

        public long[] Index { get; } = new long[plays];

        public int[] Order { get; } = new int[plays];

        public Span<int> Starts(int count)
        {
            if (_starts.Length < count)
            {
                _starts = new int[Math.Max(count, 256)];
            }

            var used = _starts.AsSpan(0, count);
            used.Clear();
            return used;
        }
    }
}
