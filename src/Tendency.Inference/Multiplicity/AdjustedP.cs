namespace Tendency.Inference.Multiplicity;

/// <summary>
/// P-values adjusted for how many were looked at. Input: m p-values in [0, 1] in any order; output: adjusted values in the same order,
/// never below the raw one (Storey's q excepted), equal for equal p-values. An empty list gives an empty list; a value
/// outside [0, 1] is refused with an <see cref="ArgumentOutOfRangeException"/>.
/// </summary>
public static class AdjustedP
{
    /// <summary>
    /// Benjamini and Hochberg's false discovery rate: q_(i) = min over j &gt;= i of min(1, m p_(j) / j).
    /// Source: Benjamini and Hochberg 1995, doi:10.1111/j.2517-6161.1995.tb02031.x.
    /// </summary>
    public static double[] BenjaminiHochberg(IReadOnlyList<double> p) => StepUp(p, (rank, m) => (double)m / rank);

    /// <summary>Benjamini and Yekutieli's: the same times 1 + 1/2 + ... + 1/m, valid under any dependence. Source: doi:10.1214/aos/1013699998.</summary>
    public static double[] BenjaminiYekutieli(IReadOnlyList<double> p)
    {
        ArgumentNullException.ThrowIfNull(p);
        var harmonic = 0.0;
        for (var j = 1; j <= p.Count; j++)
        {
            harmonic += 1.0 / j;
        }

        return StepUp(p, (rank, m) => harmonic * m / rank);
    }

    /// <summary>Bonferroni: m p, at most 1. Source: Dunn 1961, doi:10.1080/01621459.1961.10482090 [from memory].</summary>
    public static double[] Bonferroni(IReadOnlyList<double> p)
    {
        Check(p);
        return [.. p.Select(value => Math.Min(1, p.Count * value))];
    }

    /// <summary>Holm's step-down: largest of (m - j + 1) p_(j) so far. Source: Holm 1979, Scandinavian Journal of Statistics 6:65.</summary>
    public static double[] Holm(IReadOnlyList<double> p)
    {
        var order = Ascending(p);
        var adjusted = new double[order.Length];
        var running = 0.0;
        for (var i = 0; i < order.Length; i++)
        {
            running = Math.Max(running, Math.Min(1, (order.Length - i) * p[order[i]]));
            adjusted[order[i]] = running;
        }

        return adjusted;
    }

    /// <summary>Hochberg's step-up: smallest of (m - j + 1) p_(j) from j = i on. Source: Hochberg 1988, doi:10.1093/biomet/75.4.800.</summary>
    public static double[] Hochberg(IReadOnlyList<double> p) => StepUp(p, (rank, m) => m - rank + 1);

    /// <summary>
    /// Storey's q-value: Benjamini and Hochberg's times <see cref="NullShare"/>. Only sensible for m of about 100 and more: the discrete
    /// p-values of small cells push the share of true nulls up. Source: Storey 2002, doi:10.1111/1467-9868.00346.
    /// </summary>
    /// <param name="p">The p-values.</param>
    /// <param name="plusOne">Add 1 to the count of large p-values (Storey, Taylor and Siegmund 2004): never 0.</param>
    public static double[] StoreyQ(IReadOnlyList<double> p, bool plusOne = false)
    {
        var share = NullShare(p, plusOne);
        return StepUp(p, (rank, m) => share * m / rank);
    }

    /// <summary>Estimated share of true nulls, #{p &gt; 1/2} / (m/2), at most 1; 1 for an empty list (Storey 2002).</summary>
    /// <param name="p">The p-values.</param>
    /// <param name="plusOne">As for <see cref="StoreyQ"/>.</param>
    public static double NullShare(IReadOnlyList<double> p, bool plusOne = false)
    {
        Check(p);
        return p.Count == 0 ? 1 : Math.Min(1, (p.Count(value => value > 0.5) + (plusOne ? 1 : 0)) / (0.5 * p.Count));
    }

    // Walks down from the largest p-value, so that ties all take the factor of their largest rank.
    private static double[] StepUp(IReadOnlyList<double> p, Func<int, int, double> factor)
    {
        var order = Ascending(p);
        var adjusted = new double[order.Length];
        var running = 1.0;
        for (var i = order.Length - 1; i >= 0; i--)
        {
            running = Math.Min(running, factor(i + 1, order.Length) * p[order[i]]);
            adjusted[order[i]] = running;
        }

        return adjusted;
    }

    private static int[] Ascending(IReadOnlyList<double> p)
    {
        Check(p);
        return [.. Enumerable.Range(0, p.Count).OrderBy(i => p[i])];
    }

    private static void Check(IReadOnlyList<double> p)
    {
        ArgumentNullException.ThrowIfNull(p);
        foreach (var value in p)
        {
            if (!(value >= 0 && value <= 1))
            {
                throw new ArgumentOutOfRangeException(nameof(p), value, "A p-value lies between 0 and 1.");
            }
        }
    }
}
