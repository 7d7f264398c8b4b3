namespace Tendency.Inference.Information;

/// <summary>Uncertainty of a mix in bits, from counts &gt;= 0 (empty categories change nothing). Null for no observation; 0 for one category.</summary>
public static class Entropy
{
    /// <summary>Plug-in entropy, -sum p log2 p: too small on average.</summary>
    public static double? Bits(IEnumerable<int> counts)
    {
        ArgumentNullException.ThrowIfNull(counts);
        double n = 0, sum = 0;
        foreach (var count in counts)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(count, nameof(counts));
            n += count;
            sum += count == 0 ? 0 : count * Math.Log2(count);
        }

        return n == 0 ? null : Math.Max(0, Math.Log2(n) - (sum / n));
    }

    /// <summary>With Miller and Madow's correction, + (non-empty categories - 1)/(2 n ln 2). Source: Miller 1955; Paninski 2003, doi:10.1162/089976603321780272.</summary>
    public static double? MillerMadow(IEnumerable<int> counts)
    {
        int[] filled = [.. counts.Where(count => count != 0)];
        return Bits(filled) + ((filled.Length - 1) / (2 * Math.Log(2) * filled.Sum(count => (double)count)));
    }
}
