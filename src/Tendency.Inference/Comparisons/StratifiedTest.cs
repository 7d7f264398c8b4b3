using System.Buffers;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// Is a cell's rate different from the rest's, when labels may be exchanged only within strata? The number of hits in the cell is a sum
/// of independent hypergeometrics, one a stratum; its exact distribution is their convolution, so no chance and no approximation enter.
/// Source: Mantel and Haenszel 1959, doi:10.1093/jnci/22.4.719; exact conditional test Birch 1964 [from memory].
/// </summary>
public static class StratifiedTest
{
    /// <summary>Tables whose probabilities differ by less than this share count as tied with the observed one (R's rule).</summary>
    internal const double TieTolerance = 1e-7;

    /// <summary>Most trials an exact test takes: its distribution has a number for every possible count.</summary>
    internal const int MostTrials = 10_000_000;

    /// <summary>
    /// Per stratum h: <paramref name="hits"/> of the <paramref name="cell"/> trials in the cell; <paramref name="totalHits"/> of all
    /// <paramref name="total"/> trials, the cell's included. The four spans are of one length; empty strata are allowed. A cell that could
    /// not have come out otherwise (V = 0) gets p = 1 and Z = 0. Cost: proportional to the product of cell size and largest stratum.
    /// </summary>
    /// <exception cref="ArgumentException">Lengths differ, a stratum's counts contradict each other, or more than 10 million trials.</exception>
    public static StratifiedResult Run(ReadOnlySpan<int> hits, ReadOnlySpan<int> cell, ReadOnlySpan<int> totalHits, ReadOnlySpan<int> total)
    {
        if (hits.Length != cell.Length || hits.Length != totalHits.Length || hits.Length != total.Length)
        {
            throw new ArgumentException("A stratified test needs the four counts of every stratum.", nameof(hits));
        }

        int observed = 0, lowest = 0, span = 0, widest = 0;
        double expected = 0, variance = 0;
        var trials = 0L;
        for (var h = 0; h < hits.Length; h++)
        {
            int n = cell[h], x = totalHits[h], all = total[h];
            trials += Math.Max(0, all);
            if (n < 0 || x < 0 || n > all || x > all || trials > MostTrials)
            {
                throw new ArgumentException(
                    $"Stratum {h}: {n} in the cell and {x} hits do not fit {all} trials, or there are more than {MostTrials}.", nameof(total));
            }

            int low = Math.Max(0, n - (all - x)), high = Math.Min(n, x);
            if (hits[h] < low || hits[h] > high)
            {
                throw new ArgumentException($"Stratum {h}: {hits[h]} hits of {n} in the cell do not fit {x} hits of {all}.", nameof(hits));
            }

            observed += hits[h];
            lowest += low;
            span += high - low;
            widest = Math.Max(widest, high - low);
            if (all > 0)
            {
                expected += (double)n * x / all;
            }

            if (all > 1)
            {
                variance += (double)n * (all - n) * ((double)x * (all - x)) / ((double)all * all * (all - 1));
            }
        }

        // Both buffers of the convolution and the stratum's own distribution, in one rented block.
        var width = span + 1;
        var rented = ArrayPool<double>.Shared.Rent((2 * width) + widest + 1);
        var current = rented.AsSpan(0, width);
        var next = rented.AsSpan(width, width);
        var own = rented.AsSpan(2 * width, widest + 1);
        current[0] = 1;
        var filled = 1;
        for (var h = 0; h < hits.Length; h++)
        {
            var points = Hypergeometric(cell[h], totalHits[h], total[h], own);
            if (points == 1)
            {
                continue;
            }

            next[..(filled + points - 1)].Clear();
            for (var i = 0; i < filled; i++)
            {
                var weight = current[i];
                var shares = own[..points];
                var target = next.Slice(i, shares.Length);
                for (var j = 0; j < target.Length; j++)
                {
                    target[j] += weight * shares[j];
                }
            }

            filled += points - 1;
            var swap = current;
            current = next;
            next = swap;
        }

        var summary = Summarise(current[..filled], observed, lowest, expected, variance);
        ArrayPool<double>.Shared.Return(rented);
        return summary;
    }

    /// <summary>
    /// Fills <paramref name="into"/> with P(max(0, n - (N - X)) + j), j = 0, 1, ..., and returns how many points there are. Ratios from the
    /// mode outwards, then divided by their sum: full relative precision in both tails, no logarithms.
    /// </summary>
    internal static int Hypergeometric(int n, int x, int total, Span<double> into)
    {
        int low = Math.Max(0, n - (total - x)), high = Math.Min(n, x);
        if (low == high)
        {
            into[0] = 1;
            return 1;
        }

        var mode = Math.Clamp((int)((n + 1.0) * (x + 1.0) / (total + 2.0)), low, high);
        into[mode - low] = 1;
        var sum = 1.0;
        for (var t = mode; t < high; t++)
        {
            sum += into[t + 1 - low] = into[t - low] * ((double)(n - t) * (x - t)) / ((t + 1.0) * (total - n - x + t + 1.0));
        }

        for (var t = mode; t > low; t--)
        {
            sum += into[t - 1 - low] = into[t - low] * (t * ((double)total - n - x + t)) / ((n - t + 1.0) * (x - t + 1.0));
        }

        for (var i = 0; i <= high - low; i++)
        {
            into[i] /= sum;
        }

        return high - low + 1;
    }

    private static StratifiedResult Summarise(ReadOnlySpan<double> probabilities, int observed, int lowest, double expected, double variance)
    {
        var at = probabilities[observed - lowest];
        var distance = Math.Abs(observed - expected) - (1e-9 * Math.Max(1, Math.Abs(expected)));
        double less = 0, greater = 0, two = 0, tied = 0, far = 0;
        for (var i = 0; i < probabilities.Length; i++)
        {
            var p = probabilities[i];
            var count = lowest + i;
            less += count <= observed ? p : 0;
            greater += count >= observed ? p : 0;
            far += Math.Abs(count - expected) >= distance ? p : 0;
            if (p <= at * (1 + TieTolerance))
            {
                two += p;
                tied += p >= at * (1 - TieTolerance) ? p : 0;
            }
        }

        return new StratifiedResult(
            observed,
            expected,
            variance,
            Math.Min(1, less),
            Math.Min(1, greater),
            Math.Min(1, two),
            Math.Min(1, two - (tied / 2)),
            Math.Min(1, far));
    }
}
