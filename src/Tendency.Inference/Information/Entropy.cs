using Tendency.Inference.Functions;

namespace Tendency.Inference.Information;

/// <summary>
/// Uncertainty of a mix in bits, from one count per category, 0 or more (empty categories change nothing). Null for no observation; 0 for
/// one category; a negative count is refused with an <see cref="ArgumentOutOfRangeException"/>.
/// </summary>
public static class Entropy
{
    /// <summary>Plug-in entropy, -sum p log2 p: too small on average. Source: Shannon 1948, doi:10.1002/j.1538-7305.1948.tb01338.x [from memory].</summary>
    public static double? Bits(IEnumerable<int> counts)
    {
        ArgumentNullException.ThrowIfNull(counts);
        int[] all = [.. counts];
        foreach (var count in all)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(count, nameof(counts));
        }

        var n = all.Sum(count => (double)count);
        return n == 0 ? null : all.Sum(count => Part(count, n)) / n;
    }

    /// <summary>With Miller and Madow's correction, + (non-empty categories - 1)/(2 n ln 2). Source: Miller 1955; Paninski 2003, doi:10.1162/089976603321780272.</summary>
    public static double? MillerMadow(IEnumerable<int> counts)
    {
        ArgumentNullException.ThrowIfNull(counts);
        int[] filled = [.. counts.Where(count => count != 0)];
        return Bits(filled) + ((filled.Length - 1) / (2 * Math.Log(2) * filled.Sum(count => (double)count)));
    }

    /// <summary>
    /// -count log2(count / n). Near count = n through n - count, which is exact: the entropy of a mix that is nearly one category keeps its
    /// digits.
    /// </summary>
    internal static double Part(double count, double n)
    {
        if (count == 0)
        {
            return 0;
        }

        return count < n / 2 ? count * Math.Log2(n / count) : -count * GammaFunction.LogOnePlus((count - n) / n) / Math.Log(2);
    }
}
