using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Agreement;

/// <summary>What counts as distance between two values.</summary>
public enum ValueMetric
{
    /// <summary>Same or not.</summary>
    Nominal = 0,

    /// <summary>How many observations lie between the two ranks.</summary>
    Ordinal = 1,

    /// <summary>Squared difference.</summary>
    Interval = 2,

    /// <summary>Square of the difference over the sum: for values of 0 and above.</summary>
    Ratio = 3,
}

/// <summary>
/// Krippendorff's alpha for any number of raters with gaps. Input: ratings[rater][unit], NaN for not rated. Units with fewer than two
/// ratings cannot be compared and are left out. Throws <see cref="ArgumentException"/> for no rater, raters of different lengths, a rating
/// beyond 1e100, or a negative one under <see cref="ValueMetric.Ratio"/>. Source: Krippendorff 2011, Computing Krippendorff's alpha-reliability.
/// </summary>
public static class KrippendorffAlpha
{
    private const double LargestRating = 1e100;

    /// <summary>1 for perfect agreement, 0 for chance; null when fewer than two distinct values can be compared.</summary>
    /// <param name="ratings">A list per rater, a place per unit; NaN where it was not rated.</param>
    /// <param name="metric">What counts as distance.</param>
    public static double? Of(IReadOnlyList<IReadOnlyList<double>> ratings, ValueMetric metric)
    {
        return OfUnits(Units(ratings, metric), metric);
    }

    /// <summary>
    /// Delete-one-unit jackknife standard error, sqrt((U - 1)/U sum (alpha_-u - mean)²) over all units; null when alpha without some unit
    /// is undefined, and without units.
    /// </summary>
    /// <param name="ratings">As for <see cref="Of"/>.</param>
    /// <param name="metric">Distance.</param>
    public static double? JackknifeError(IReadOnlyList<IReadOnlyList<double>> ratings, ValueMetric metric)
    {
        var units = Units(ratings, metric);
        if (units.Count == 0)
        {
            return null;
        }

        var without = new List<double>();
        for (var u = 0; u < units.Count; u++)
        {
            var left = OfUnits([.. units.Where((_, i) => i != u)], metric);
            if (left is null)
            {
                return null;
            }

            without.Add(left.Value);
        }

        var mean = without.Average();
        return Math.Sqrt((units.Count - 1.0) / units.Count * without.Sum(alpha => (alpha - mean) * (alpha - mean)));
    }

    /// <summary>
    /// Percentile bootstrap: whole blocks (games) of units are drawn if there are at least 5, else single units. Resamples where alpha is
    /// undefined are left out; null when all are.
    /// </summary>
    /// <param name="ratings">As for <see cref="Of"/>.</param>
    /// <param name="block">The block of each unit.</param>
    /// <param name="metric">Distance.</param>
    /// <param name="level">Confidence level, in (0, 1).</param>
    /// <param name="draws">2,000 for print; at least 1.</param>
    /// <param name="seed">The same seed gives the same interval.</param>
    public static Interval? Bootstrap(
        IReadOnlyList<IReadOnlyList<double>> ratings, IReadOnlyList<int> block, ValueMetric metric, double level, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(block);
        Domain.Level(level);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        var units = Units(ratings, metric);
        if (units.Count != block.Count)
        {
            throw new ArgumentException("Every unit needs a block.", nameof(block));
        }

        double[][][] blocks = [.. units.Zip(block).GroupBy(pair => pair.Second, pair => pair.First).Select(group => group.ToArray())];
        blocks = blocks.Length >= 5 ? blocks : [.. units.Select(unit => new[] { unit })];
        var random = new Random(seed);
        var values = new List<double>();
        for (var b = 0; b < draws; b++)
        {
            var drawn = Enumerable.Range(0, blocks.Length).SelectMany(_ => blocks[random.Next(blocks.Length)]).ToList();
            if (OfUnits(drawn, metric) is { } alpha)
            {
                values.Add(alpha);
            }
        }

        if (values.Count == 0)
        {
            return null;
        }

        values.Sort();
        var tail = (1 - level) / 2;
        var low = Math.Clamp((int)Math.Ceiling(tail * values.Count) - 1, 0, values.Count - 1);
        var high = Math.Clamp((int)Math.Ceiling((1 - tail) * values.Count) - 1, 0, values.Count - 1);
        return new Interval(values[low], values[high]);
    }

    private static List<double[]> Units(IReadOnlyList<IReadOnlyList<double>> ratings, ValueMetric metric)
    {
        ArgumentNullException.ThrowIfNull(ratings);
        if (ratings.Count == 0 || ratings.Any(row => row is null || row.Count != ratings[0].Count))
        {
            throw new ArgumentException("Alpha needs raters who all have a place for every unit.", nameof(ratings));
        }

        foreach (var rating in ratings.SelectMany(row => row))
        {
            if (Math.Abs(rating) > LargestRating || (metric == ValueMetric.Ratio && rating < 0))
            {
                throw new ArgumentOutOfRangeException(nameof(ratings), rating, $"A rating is at most {LargestRating} in size, and not negative where ratios count.");
            }
        }

        if (!Enum.IsDefined(metric))
        {
            throw new ArgumentOutOfRangeException(nameof(metric), metric, "Unknown metric.");
        }

        return [.. Enumerable.Range(0, ratings[0].Count).Select(u => ratings.Select(row => row[u]).Where(value => !double.IsNaN(value)).ToArray())];
    }

    private static double? OfUnits(List<double[]> units, ValueMetric metric)
    {
        double[] values = [.. units.Where(unit => unit.Length > 1).SelectMany(unit => unit).Distinct().Order()];
        if (values.Length < 2)
        {
            return null;
        }

        var coincidence = new double[values.Length, values.Length];
        var totals = new double[values.Length];
        foreach (var unit in units.Where(unit => unit.Length > 1))
        {
            for (var i = 0; i < unit.Length; i++)
            {
                var c = Array.BinarySearch(values, unit[i]);
                totals[c]++;
                for (var j = 0; j < unit.Length; j++)
                {
                    if (i != j)
                    {
                        coincidence[c, Array.BinarySearch(values, unit[j])] += 1.0 / (unit.Length - 1);
                    }
                }
            }
        }

        // Ratings of a value and of all below it.
        var upTo = new double[totals.Length];
        for (var c = 0; c < upTo.Length; c++)
        {
            upTo[c] = totals[c] + (c == 0 ? 0 : upTo[c - 1]);
        }

        double observed = 0, expected = 0;
        for (var c = 0; c < values.Length; c++)
        {
            for (var v = c + 1; v < values.Length; v++)
            {
                var distance = SquaredDistance(values, totals, upTo, c, v, metric);
                observed += coincidence[c, v] * distance;
                expected += totals[c] * totals[v] * distance;
            }
        }

        return 1 - ((totals.Sum() - 1) * observed / expected);
    }

    private static double SquaredDistance(double[] values, double[] totals, double[] upTo, int c, int v, ValueMetric metric)
    {
        var distance = metric switch
        {
            ValueMetric.Nominal => 1,
            ValueMetric.Ordinal => upTo[v] - upTo[c] + ((totals[c] - totals[v]) / 2),

            // In units of the range: alpha does not depend on the scale, and squares of it stay in the doubles.
            ValueMetric.Interval => (values[v] - values[c]) / (values[^1] - values[0]),
            ValueMetric.Ratio => (values[v] - values[c]) / (values[v] + values[c]),
            _ => throw new ArgumentOutOfRangeException(nameof(metric), metric, "Unknown metric."),
        };
        return distance * distance;
    }
}
