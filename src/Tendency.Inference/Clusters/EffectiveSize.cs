namespace Tendency.Inference.Clusters;

/// <summary>How many independent observations a clustered or weighted sample is worth. Weights are relative: their scale does not matter.</summary>
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
        foreach (var weight in weights)
        {
            CheckWeight(weight);
            sum += weight;
            squares += weight * weight;
        }

        return squares == 0 ? 0 : sum * sum / squares;
    }

    /// <summary>
    /// Equal weights, groups of the given sizes, correlation <paramref name="rho"/> within a group (cut to [0, 1]):
    /// n / (1 + (m - 1) rho) with m = sum of sizes² / n. Never above n; 0 for no observation.
    /// </summary>
    public static double OfGroups(IEnumerable<double> sizes, double rho) => OfWeightedGroups(sizes.Select(m => (m, 1.0)), rho);

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
        foreach (var (size, weight) in groups)
        {
            CheckWeight(weight);
            ArgumentOutOfRangeException.ThrowIfNegative(size);
            sum += size * weight;
            squares += size * weight * weight;
            groupSquares += size * weight * (size * weight);
            count += weight > 0 ? size : 0;
        }

        return Combine(sum, squares, groupSquares, rho, count);
    }

    /// <summary>Any weight &gt;= 0 per observation, and the group each belongs to (numbers 0, 1, ...): the same formula.</summary>
    public static double Of(ReadOnlySpan<double> weights, ReadOnlySpan<int> group, double rho)
    {
        if (weights.Length != group.Length)
        {
            throw new ArgumentException("Every observation needs a weight and a group.", nameof(group));
        }

        double sum = 0, squares = 0, groupSquares = 0, count = 0;
        var totals = new Dictionary<int, double>();
        for (var i = 0; i < weights.Length; i++)
        {
            CheckWeight(weights[i]);
            sum += weights[i];
            squares += weights[i] * weights[i];
            count += weights[i] > 0 ? 1 : 0;
            totals[group[i]] = totals.GetValueOrDefault(group[i]) + weights[i];
        }

        foreach (var total in totals.Values)
        {
            groupSquares += total * total;
        }

        return Combine(sum, squares, groupSquares, rho, count);
    }

    /// <summary>Recency weight 2^(-age / half-life), both in games; 1 for the newest (age 0).</summary>
    public static double RecencyWeight(double age, double halfLife)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(age);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(halfLife);
        return Math.Pow(2, -age / halfLife);
    }

    private static double Combine(double sum, double squares, double groupSquares, double rho, double count)
    {
        if (sum == 0)
        {
            return 0;
        }

        var used = Math.Clamp(rho, 0, 1);
        return Math.Min(count, sum * sum / (((1 - used) * squares) + (used * groupSquares)));
    }

    private static void CheckWeight(double weight)
    {
        if (!(weight >= 0) || double.IsInfinity(weight))
        {
            throw new ArgumentOutOfRangeException(nameof(weight), weight, "A weight is a finite number, 0 or more.");
        }
    }
}
