using System.Numerics;

namespace Tendency.Inference.Multiplicity;

/// <summary>Labels and cells as bit sets over the observations, sorted by stratum: a cell's hits are a population count.</summary>
internal sealed class MaxTLayout
{
    private readonly int words;
    private readonly ulong[] members;
    private readonly double[] expected;
    private readonly double[] deviation;

    // Positions of one stratum are consecutive: [start, end) with this many hits.
    private readonly List<(int Start, int End, int Hits)> strata = [];

    public MaxTLayout(IReadOnlyList<bool> hit, IReadOnlyList<int> stratum, IReadOnlyList<IReadOnlyList<int>> cells)
    {
        int[] order = [.. Enumerable.Range(0, hit.Count).OrderBy(i => stratum[i])];
        var position = new int[order.Length];
        words = (hit.Count + 63) / 64;
        Labels = new ulong[words];
        for (var i = 0; i < order.Length; i++)
        {
            position[order[i]] = i;
            if (hit[order[i]])
            {
                Set(Labels, i);
            }

            if (i == 0 || stratum[order[i]] != stratum[order[i - 1]])
            {
                strata.Add((i, i + 1, hit[order[i]] ? 1 : 0));
            }
            else
            {
                strata[^1] = (strata[^1].Start, i + 1, strata[^1].Hits + (hit[order[i]] ? 1 : 0));
            }
        }

        members = new ulong[words * cells.Count];
        expected = new double[cells.Count];
        deviation = new double[cells.Count];
        for (var c = 0; c < cells.Count; c++)
        {
            var cell = members.AsSpan(c * words, words);
            foreach (var observation in cells[c])
            {
                Set(cell, position[observation]);
            }

            (expected[c], deviation[c]) = Moments(cell);
        }
    }

    public ulong[] Labels { get; }

    /// <summary>|A - E| / sqrt V of every cell under the given labels; 0 where V = 0.</summary>
    public void Statistics(ReadOnlySpan<ulong> labels, double[] into)
    {
        for (var c = 0; c < into.Length; c++)
        {
            var hits = 0;
            var cell = members.AsSpan(c * words, words);
            for (var w = 0; w < words; w++)
            {
                hits += BitOperations.PopCount(cell[w] & labels[w]);
            }

            into[c] = deviation[c] > 0 ? Math.Abs(hits - expected[c]) / deviation[c] : 0;
        }
    }

    /// <summary>Number of distinct arrangements of the labels within strata; infinity when it is beyond counting.</summary>
    public double Arrangements()
    {
        var log = strata.Sum(s => Functions.GammaFunction.LogChoose(s.End - s.Start, s.Hits));
        return log > 40 ? double.PositiveInfinity : Math.Round(Math.Exp(log));
    }

    /// <summary>Deals every stratum's hits anew (selection sampling, Knuth 3.4.2 S).</summary>
    public void Shuffle(Random random, ulong[] labels)
    {
        Array.Clear(labels);
        foreach (var (start, end, hits) in strata)
        {
            var left = hits;
            for (var i = start; left > 0; i++)
            {
                if (random.Next(end - i) < left)
                {
                    Set(labels, i);
                    left--;
                }
            }
        }
    }

    /// <summary>Visits every arrangement once.</summary>
    public void Enumerate(Action<ulong[]> visit) => Deal(0, strata.Count == 0 ? 0 : strata[0].Start, strata.Count == 0 ? 0 : strata[0].Hits, new ulong[words], visit);

    private static void Set(Span<ulong> bits, int i) => bits[i / 64] |= 1UL << (i % 64);

    private void Deal(int h, int from, int left, ulong[] labels, Action<ulong[]> visit)
    {
        if (left == 0)
        {
            if (h + 1 >= strata.Count)
            {
                visit(labels);
            }
            else
            {
                Deal(h + 1, strata[h + 1].Start, strata[h + 1].Hits, labels, visit);
            }

            return;
        }

        for (var i = from; i <= strata[h].End - left; i++)
        {
            Set(labels, i);
            Deal(h, i + 1, left - 1, labels, visit);
            labels[i / 64] &= ~(1UL << (i % 64));
        }
    }

    private (double Expected, double Deviation) Moments(ReadOnlySpan<ulong> cell)
    {
        double mean = 0, variance = 0;
        foreach (var (start, end, hits) in strata)
        {
            double all = end - start, n = 0;
            for (var i = start; i < end; i++)
            {
                n += (cell[i / 64] >> (i % 64)) & 1;
            }

            mean += n * hits / all;
            variance += all > 1 ? n * (all - n) * hits * (all - hits) / (all * all * (all - 1)) : 0;
        }

        return (mean, Math.Sqrt(variance));
    }
}
