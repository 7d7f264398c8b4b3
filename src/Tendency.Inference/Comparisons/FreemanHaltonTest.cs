using Tendency.Inference.Functions;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// Exact test of an r x c table: probability of all tables with the same margins that are at most as likely as the observed one (ties
/// within 1e-7 relative). Columns are filled one at a time; paths that reach the same row remainders with the same probability are
/// joined (remainders in any order: the future cannot tell rows apart), and a path is settled as soon as all or none of its completions
/// count. Source: Freeman and Halton 1951, doi:10.1093/biomet/38.1-2.141; Mehta and Patel 1983, doi:10.1080/01621459.1983.10477989.
/// </summary>
public static class FreemanHaltonTest
{
    private const int LargestWork = 30_000_000;

    /// <summary>The p-value; 1 for a table with one row or column left; null when the table is too large to enumerate in about a second.</summary>
    public static double? P(CountTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var full = table.WithoutEmpty();
        full = full.Rows > full.Columns ? full.Transposed() : full;
        return full.Rows < 2 ? 1 : new Search(full).Run();
    }

    private sealed class Search
    {
        private readonly int[] columns;
        private readonly int[] rows;
        private readonly long radix;
        private readonly double observed;
        private readonly Dictionary<long, (double Most, double Least)>[] bounds;
        private readonly bool fits;
        private double all;
        private double longEnough;
        private double settled;
        private int work;

        public Search(CountTable table)
        {
            // Small columns first: fewer ways to reach the early states.
            rows = [.. table.RowTotals().Order()];
            columns = [.. table.ColumnTotals().Order()];
            radix = rows[^1] + 1;
            fits = Math.Pow(radix, rows.Length) < long.MaxValue;

            // Log-probability of a table is a constant less the sum of ln x!: that sum is the length of its path.
            for (var r = 0; r < table.Rows; r++)
            {
                for (var c = 0; c < table.Columns; c++)
                {
                    observed += GammaFunction.LogFactorial(table[r, c]);
                }
            }

            bounds = [.. columns.Select(_ => new Dictionary<long, (double, double)>())];
        }

        public double? Run()
        {
            if (!fits)
            {
                return null;
            }

            all = LogCompletions(rows, 0);
            longEnough = observed - Math.Log(1 + StratifiedTest.TieTolerance);
            var paths = new Dictionary<long, Dictionary<double, double>>();
            Follow(rows, 0, [(0, 1)], paths);
            for (var c = 0; c < columns.Length - 1 && work <= LargestWork; c++)
            {
                var next = new Dictionary<long, Dictionary<double, double>>();
                foreach (var (node, pasts) in paths)
                {
                    var left = Decode(node);
                    (double, double)[] open = [.. pasts.Select(path => (path.Key, path.Value))];
                    Fill(left, columns[c], 0, 0, (rest, length) => Follow(rest, c + 1, open, next, length));
                }

                paths = next;
            }

            return work > LargestWork ? null : Math.Min(1, settled);
        }

        // Paths that arrive at one node: settled if all completions count, dropped if none does, else kept with their probability.
        private void Follow(
            int[] left, int c, (double Past, double Weight)[] pasts, Dictionary<long, Dictionary<double, double>> into, double length = 0)
        {
            var (most, least) = Bounds(left, c);
            var completions = Math.Exp(LogCompletions(left, c) - all - length);
            Dictionary<double, double>? kept = null;
            work += pasts.Length;
            foreach (var (past, weight) in pasts)
            {
                var here = past + length;
                if (here + least >= longEnough)
                {
                    settled += weight * completions * Math.Exp(-past);
                }
                else if (here + most >= longEnough)
                {
                    kept ??= into.TryGetValue(Encode(left), out var known) ? known : into[Encode(left)] = [];

                    // Rounded to 1e-11, far inside the tie tolerance, so that equal products of factorials meet.
                    var key = Math.Round(here, 11);
                    kept[key] = kept.GetValueOrDefault(key) + weight;
                }
            }
        }

        // ln of the sum over all completions of 1 / (product of x!).
        private double LogCompletions(int[] left, int from)
        {
            var sum = GammaFunction.LogFactorial(left.Sum());
            foreach (var count in left)
            {
                sum -= GammaFunction.LogFactorial(count);
            }

            for (var c = from; c < columns.Length; c++)
            {
                sum -= GammaFunction.LogFactorial(columns[c]);
            }

            return sum;
        }

        private (double Most, double Least) Bounds(int[] left, int c)
        {
            if (c == columns.Length - 1)
            {
                var only = 0.0;
                foreach (var count in left)
                {
                    only += GammaFunction.LogFactorial(count);
                }

                return (only, only);
            }

            var node = Encode(left);
            if (bounds[c].TryGetValue(node, out var known))
            {
                return known;
            }

            double most = double.NegativeInfinity, least = double.PositiveInfinity;
            Fill(left, columns[c], 0, 0, (rest, length) =>
            {
                if (work <= LargestWork)
                {
                    var (restMost, restLeast) = Bounds(rest, c + 1);
                    most = Math.Max(most, length + restMost);
                    least = Math.Min(least, length + restLeast);
                }
            });
            return bounds[c][node] = (most, least);
        }

        private void Fill(int[] left, int remaining, int row, double length, Action<int[], double> found)
        {
            work++;
            if (work > LargestWork)
            {
                return;
            }

            if (row == left.Length - 1)
            {
                if (remaining <= left[row])
                {
                    left[row] -= remaining;
                    found(left, length + GammaFunction.LogFactorial(remaining));
                    left[row] += remaining;
                }

                return;
            }

            for (var x = 0; x <= Math.Min(remaining, left[row]); x++)
            {
                left[row] -= x;
                Fill(left, remaining - x, row + 1, length + GammaFunction.LogFactorial(x), found);
                left[row] += x;
            }
        }

        private long Encode(ReadOnlySpan<int> left)
        {
            Span<int> sorted = stackalloc int[left.Length];
            left.CopyTo(sorted);
            sorted.Sort();
            var code = 0L;
            foreach (var count in sorted)
            {
                code = (code * radix) + count;
            }

            return code;
        }

        private int[] Decode(long code)
        {
            var left = new int[rows.Length];
            for (var r = rows.Length - 1; r >= 0; r--)
            {
                left[r] = (int)(code % radix);
                code /= radix;
            }

            return left;
        }
    }
}
