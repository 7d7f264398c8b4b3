namespace Tendency.Breakdown.Counts.Scripts;

/// <summary>Whole numbers in given proportions by largest remainders (Hamilton's method).</summary>
/// <remarks>Each part gets its quota seats × count / total rounded down, then the parts with the largest remainders one more: no part is a whole seat off its quota.</remarks>
internal static class LargestRemainder
{
    /// <param name="counts">Not negative; at least one positive unless <paramref name="seats"/> is 0.</param>
    /// <param name="seats">How many to hand out.</param>
    /// <returns>One number a count, adding up to <paramref name="seats"/>. Equal remainders: the larger count first, then the earlier.</returns>
    public static int[] Of(IReadOnlyList<int> counts, int seats)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(seats);
        var total = counts.Sum(count => (long)count);
        if (seats == 0)
        {
            return new int[counts.Count];
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(total, 1, nameof(counts));
        var given = counts.Select(count => (int)((long)seats * count / total)).ToArray();
        var next = Enumerable.Range(0, counts.Count)
            .OrderByDescending(part => (long)seats * counts[part] % total)
            .ThenByDescending(part => counts[part])
            .Take(seats - given.Sum());
        foreach (var part in next)
        {
            given[part]++;
        }

        return given;
    }
}
