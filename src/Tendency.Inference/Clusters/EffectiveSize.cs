using Tendency.Inference.Functions;

namespace Tendency.Inference.Clusters;

/// <summary>
/// How many independent observations a clustered or weighted sample is worth. Weights are relative: their scale does not matter, nor does
/// it when they are very small or large. Weights and sizes are finite and 0 or more, correlations numbers: others are refused with an
/// <see cref="ArgumentOutOfRangeException"/>.
/// </summary>
public static class EffectiveSize
{
    /// <summary>
    /// Kish's n, (sum w)² / sum w², for one weight &gt;= 0 per observation; observations of weight 0 do not count; 0 for none.
    /// Source: Kish 1965, Survey Sampling, sec. 11.7 [from memory].
    /// </summary>
    public static double Kish(IEnumerable<double> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        double sum = 0, squares = 0;
        double[] all = [.. weights];
        var largest = Largest(all);
        foreach (var weight in all.Select(weight => weight / largest))
        {
            sum += weight;
            squares += weight * weight;
        }

        return squares == 0 ? 0 : sum * sum / squares;
    }

    /// <summary>
    /// Equal weights, groups of the given sizes, correlation <paramref name="rho"/> within a group (cut to [0, 1]):
    /// n / (1 + (m - 1) rho) with m = sum of sizes² / n. Never above n; 0 for no observation. Source: design effect, Kish 1965, Survey
    /// Sampling, sec. 5.4 [from memory].
    /// </summary>
    /// <param name="sizes">Observations of each group, 0 or more, real numbers allowed.</param>
    /// <param name="rho">Correlation within a group; negative estimates count as 0.</param>
    public static double OfGroups(IEnumerable<double> sizes, double rho)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return OfWeightedGroups(sizes.Select(m => (m, 1.0)), rho);
    }

    /// <summary>
    /// Groups made of cells: two observations of a group correlate by <paramref name="inCell"/> in the same cell, by
    /// <paramref name="acrossCells"/> in different ones. The variance of their weighted sum gives (sum w)² / [S + (C - S) inCell + (G - C) acrossCells], S the sum of w²
    /// over observations, C and G of squared weights of cells and of groups; with both alike it is <see cref="OfWeightedGroups"/>. Never above the
    /// number of observations with a weight; 0 for none.
    /// </summary>
    /// <param name="groups">For each group the sizes of its cells and the weight of one observation.</param>
    /// <param name="inCell">Cut to [0, 1].</param>
    /// <param name="acrossCells">Cut to [0, 1].</param>
    public static double OfCells(IEnumerable<(IEnumerable<double> Cells, double Weight)> groups, double inCell, double acrossCells)
    {
        ArgumentNullException.ThrowIfNull(groups);
        Domain.Number(inCell);
        Domain.Number(acrossCells);
        double sum = 0, squares = 0, cellSquares = 0, groupSquares = 0, count = 0;
        (IEnumerable<double> Cells, double Weight)[] all = [.. groups];
        var largest = Largest([.. all.Select(group => group.Weight)]);
        foreach (var (cells, rawWeight) in all)
        {
            var weight = rawWeight / largest;
            var n = 0.0;
            foreach (var size in cells)
            {
                Domain.NotNegative(size);
                n += size;
                cellSquares += size * weight * (size * weight);
            }

            sum += n * weight;
            squares += n * weight * weight;
            groupSquares += n * weight * (n * weight);
            count += weight > 0 ? n : 0;
        }

        return sum == 0 ? 0 : Math.Min(count, sum * sum / (squares + ((cellSquares - squares) * Math.Clamp(inCell, 0, 1)) + ((groupSquares - cellSquares) * Math.Clamp(acrossCells, 0, 1))));
    }

    /// <summary>
    /// One weight per group: (sum w)² / [(1 - rho) sum w² + rho sum W²], W the total weight of a group, sums over observations. Source:
    /// Gabler, Haeder and Lahiri 1999, Survey Methodology 25:105 [from memory].
    /// </summary>
    /// <param name="groups">Size (observations, 0 or more) and weight of one observation, for each group.</param>
    /// <param name="rho">Correlation within a group; negative estimates count as 0.</param>
    public static double OfWeightedGroups(IEnumerable<(double Size, double Weight)> groups, double rho)
    {
        ArgumentNullException.ThrowIfNull(groups);
        double sum = 0, squares = 0, groupSquares = 0, count = 0;
        (double Size, double Weight)[] all = [.. groups];
        var largest = Largest([.. all.Where(group => group.Size > 0).Select(group => group.Weight)]);
        foreach (var (size, rawWeight) in all)
        {
            Domain.Count(size);
            Domain.NotNegative(rawWeight, "weight");
            var weight = size > 0 ? rawWeight / largest : 0;
            sum += size * weight;
            squares += size * weight * weight;
            groupSquares += size * weight * (size * weight);
            count += weight > 0 ? size : 0;
        }

        return Combine(sum, squares, groupSquares, rho, count);
    }

    /// <summary>Any weight &gt;= 0 per observation, and the group each belongs to (any numbers): the same formula. 0 for no observation.</summary>
    /// <param name="weights">One per observation.</param>
    /// <param name="group">One per observation.</param>
    /// <param name="rho">Correlation within a group; negative estimates count as 0.</param>
    /// <exception cref="ArgumentException">Lengths differ.</exception>
    public static double Of(ReadOnlySpan<double> weights, ReadOnlySpan<int> group, double rho)
    {
        if (weights.Length != group.Length)
        {
            throw new ArgumentException("Every observation needs a weight and a group.", nameof(group));
        }

        double sum = 0, squares = 0, groupSquares = 0, count = 0;
        var totals = new Dictionary<int, double>();
        var largest = Largest(weights);
        for (var i = 0; i < weights.Length; i++)
        {
            var weight = weights[i] / largest;
            sum += weight;
            squares += weight * weight;
            count += weight > 0 ? 1 : 0;
            totals[group[i]] = totals.GetValueOrDefault(group[i]) + weight;
        }

        foreach (var total in totals.Values)
        {
            groupSquares += total * total;
        }

        return Combine(sum, squares, groupSquares, rho, count);
    }

    /// <summary>Recency weight 2^(-age / half-life), both in games; 1 for the newest (age 0), 1 for all when the half-life is infinite.</summary>
    /// <param name="age">0 or more.</param>
    /// <param name="halfLife">Above 0.</param>
    public static double RecencyWeight(double age, double halfLife)
    {
        Domain.NotNegative(age);
        if (!(halfLife > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(halfLife), halfLife, "A half-life is above 0.");
        }

        return Math.Pow(2, -age / halfLife);
    }

    private static double Combine(double sum, double squares, double groupSquares, double rho, double count)
    {
        Domain.Number(rho);
        if (sum == 0)
        {
            return 0;
        }

        var used = Math.Clamp(rho, 0, 1);
        var scale = ((1 - used) * squares) + (used * groupSquares);
        return scale > 0 ? Math.Min(count, sum * sum / scale) : 0;
    }

    // 1 when there is none above 0. Sums of weights divided by it neither overflow nor vanish.
    private static double Largest(ReadOnlySpan<double> weights)
    {
        var largest = 0.0;
        foreach (var weight in weights)
        {
            Domain.NotNegative(weight);
            largest = Math.Max(largest, weight);
        }

        return largest == 0 ? 1 : largest;
    }
}
