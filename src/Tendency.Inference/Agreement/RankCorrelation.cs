using MathNet.Numerics.Statistics;
using Tendency.Inference.Functions;

namespace Tendency.Inference.Agreement;

/// <summary>
/// How far two scores put the same things in the same order; ties are allowed. Input: one score per thing, twice; other lengths and NaN are
/// refused with an <see cref="ArgumentException"/>.
/// </summary>
public static class RankCorrelation
{
    /// <summary>
    /// Kendall's tau-b, (C - D) / sqrt((n0 - n1)(n0 - n2)): pairs in the same order less pairs in the opposite one, ties taken out of each
    /// side. 1 = same order, -1 = reversed; NaN when one score is constant or there are fewer than two things.
    /// Source: Kendall 1945, doi:10.1093/biomet/33.3.239.
    /// </summary>
    public static double KendallTauB(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Check(x, y);
        long same = 0, untiedX = 0, untiedY = 0;
        for (var i = 0; i < x.Count; i++)
        {
            for (var j = i + 1; j < x.Count; j++)
            {
                int a = x[i].CompareTo(x[j]), b = y[i].CompareTo(y[j]);
                same += a * b;
                untiedX += Math.Abs(a);
                untiedY += Math.Abs(b);
            }
        }

        return same / Math.Sqrt((double)untiedX * untiedY);
    }

    /// <summary>
    /// Spearman's rho: the correlation of mid-ranks. NaN when one score is constant or there are fewer than two things. Source: Spearman
    /// 1904, doi:10.2307/1412159 [from memory].
    /// </summary>
    public static double Spearman(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Check(x, y);
        return Correlation.Spearman(x, y);
    }

    private static void Check(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        if (x.Count != y.Count)
        {
            throw new ArgumentException("Both scores need one value for each thing.", nameof(y));
        }

        for (var i = 0; i < x.Count; i++)
        {
            Domain.Number(x[i], nameof(x));
            Domain.Number(y[i], nameof(y));
        }
    }
}
