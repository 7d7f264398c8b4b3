namespace Tendency.Inference.Clusters;

/// <summary>
/// Both drift statistics of many tables with the same row totals, quickly: G is a sum of terms n ln n, looked up in a table.
/// </summary>
internal sealed class GroupG
{
    private readonly int[] sizes;
    private readonly int columns;
    private readonly double[] nLogN;
    private readonly int[] totals;
    private readonly int[] before;

    public GroupG(int[] sizes, int columns)
    {
        (this.sizes, this.columns) = (sizes, columns);
        nLogN = new double[sizes.Sum() + 1];
        for (var n = 1; n < nLogN.Length; n++)
        {
            nLogN[n] = n * Math.Log(n);
        }

        totals = new int[columns];
        before = new int[columns];
    }

    /// <summary>G over all rows, and the largest G of the rows up to a split against the rest (0 with fewer than two rows).</summary>
    public (double Spread, double Change) Of(ReadOnlySpan<int> counts)
    {
        Array.Clear(totals);
        var cells = 0.0;
        for (var i = 0; i < counts.Length; i++)
        {
            totals[i % columns] += counts[i];
            cells += nLogN[counts[i]];
        }

        var all = nLogN.Length - 1;
        var margin = nLogN[all];
        foreach (var total in totals)
        {
            margin -= nLogN[total];
        }

        var rows = 0.0;
        foreach (var size in sizes)
        {
            rows += nLogN[size];
        }

        return (Math.Max(0, 2 * (cells - rows + margin)), LargestSplit(counts, margin, all));
    }

    private double LargestSplit(ReadOnlySpan<int> counts, double margin, int all)
    {
        Array.Clear(before);
        var done = 0;
        var largest = 0.0;
        for (var g = 0; g < sizes.Length - 1; g++)
        {
            done += sizes[g];
            var sum = margin - nLogN[done] - nLogN[all - done];
            for (var c = 0; c < columns; c++)
            {
                before[c] += counts[(g * columns) + c];
                sum += nLogN[before[c]] + nLogN[totals[c] - before[c]];
            }

            largest = Math.Max(largest, 2 * sum);
        }

        return largest;
    }
}
