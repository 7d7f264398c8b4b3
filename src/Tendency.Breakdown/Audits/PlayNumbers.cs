namespace Tendency.Breakdown.Audits;

/// <summary>Numbers that do not fit in the order of their rows.</summary>
internal static class PlayNumbers
{
    /// <summary>Rows that must be taken out for the others to rise: as few as possible (longest rising subsequence).</summary>
    public static IReadOnlyList<int> Misfits(IReadOnlyList<int> values)
    {
        var best = new int[values.Count];
        var from = new int[values.Count];
        var tails = new List<int>();
        for (var at = 0; at < values.Count; at++)
        {
            // Tails hold, for each length, the index of the smallest value that ends a rising run of that length.
            var low = tails.BinarySearch(at, Comparer<int>.Create((a, b) => values[a].CompareTo(values[b])));
            low = low < 0 ? ~low : low;
            from[at] = low > 0 ? tails[low - 1] : -1;
            best[at] = low;
            if (low == tails.Count)
            {
                tails.Add(at);
            }
            else
            {
                tails[low] = at;
            }
        }

        var kept = new HashSet<int>();
        for (var at = tails.Count > 0 ? tails[^1] : -1; at >= 0; at = from[at])
        {
            _ = kept.Add(at);
        }

        return [.. Enumerable.Range(0, values.Count).Where(at => !kept.Contains(at))];
    }
}
