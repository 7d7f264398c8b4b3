using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Agreement;

/// <summary>How near misses count in <see cref="Kappa"/>.</summary>
public enum AgreementWeights
{
    /// <summary>Only the same category agrees: for unordered ones.</summary>
    None = 0,

    /// <summary>1 - |i - j|/(k - 1): for ordered ones.</summary>
    Linear = 1,

    /// <summary>1 - ((i - j)/(k - 1))².</summary>
    Quadratic = 2,
}

/// <summary>
/// Cohen's kappa of two raters over the same k categories. Unstable when one value holds more than 90 % of the observations: print the
/// raw agreement beside it. Source: Cohen 1960, doi:10.1177/001316446002000104; Fleiss, Cohen and Everitt 1969, doi:10.1037/h0028106.
/// </summary>
/// <param name="Count">Observations rated by both.</param>
/// <param name="Same">Observations on which both chose the same category.</param>
/// <param name="Observed">Weighted observed agreement.</param>
/// <param name="Expected">Weighted agreement expected by chance.</param>
/// <param name="Value">Kappa; null when the expected agreement is 1 (only one value used).</param>
/// <param name="StandardError">Large-sample standard error; null with Value; 0 on perfect agreement.</param>
/// <param name="NullStandardError">Standard error if kappa were 0; null with Value.</param>
public sealed record Kappa(
    int Count,
    int Same,
    double Observed,
    double Expected,
    double? Value,
    double? StandardError,
    double? NullStandardError)
{
    /// <summary>Kappa -/+ z standard errors, cut to [-1, 1]; null with Value. Without width when the error is 0: then show <see cref="RawAgreement"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside (0, 1).</exception>
    public Interval? Interval(double level)
    {
        Domain.Level(level);
        if (Value is not { } kappa || StandardError is not { } error)
        {
            return null;
        }

        var half = NormalDistribution.CriticalValue(level) * error;
        return new Interval(Math.Clamp(kappa - half, -1, 1), Math.Clamp(kappa + half, -1, 1));
    }

    /// <summary>Wilson's interval, a fraction, of the share rated the same; the level in (0, 1).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The level is outside (0, 1).</exception>
    public Interval RawAgreement(double level) => OneProportion.Wilson(Same, Count, level);

    /// <param name="table">k x k counts, rows the first rater.</param>
    /// <param name="weights">How near misses count.</param>
    /// <exception cref="ArgumentException">The table is not square or empty.</exception>
    public static Kappa Of(CountTable table, AgreementWeights weights = AgreementWeights.None)
    {
        ArgumentNullException.ThrowIfNull(table);
        var k = table.Rows;
        var matrix = new double[k, k];
        for (var i = 0; i < k; i++)
        {
            for (var j = 0; j < k; j++)
            {
                double gap = k == 1 ? 0 : Math.Abs(i - j) / (k - 1.0);
                matrix[i, j] = weights switch
                {
                    AgreementWeights.None => i == j ? 1 : 0,
                    AgreementWeights.Linear => 1 - gap,
                    AgreementWeights.Quadratic => 1 - (gap * gap),
                    _ => throw new ArgumentOutOfRangeException(nameof(weights), weights, "Unknown weights."),
                };
            }
        }

        return Of(table, matrix);
    }

    /// <summary>Any agreement weights, 1 on the diagonal and at most 1 elsewhere. Source: Cohen 1968, doi:10.1037/h0026256 [from memory].</summary>
    /// <param name="table">k x k counts, rows the first rater.</param>
    /// <param name="weights">k x k.</param>
    /// <exception cref="ArgumentException">The table is not square or empty, or the weights do not fit.</exception>
    public static Kappa Of(CountTable table, double[,] weights)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(weights);
        var k = table.Rows;
        double n = table.Total;
        if (k != table.Columns || n == 0 || weights.GetLength(0) != k || weights.GetLength(1) != k)
        {
            throw new ArgumentException("Kappa needs a square table that holds something, and as many weights.", nameof(table));
        }

        for (var i = 0; i < k; i++)
        {
            for (var j = 0; j < k; j++)
            {
                if (!(weights[i, j] <= 1 && double.IsFinite(weights[i, j]) && (i != j || weights[i, j] == 1)))
                {
                    throw new ArgumentException($"Weight {i}, {j} is {weights[i, j]}: they are 1 on the diagonal, elsewhere at most 1.", nameof(weights));
                }
            }
        }

        double[] rows = [.. table.RowTotals().Select(count => count / n)], columns = [.. table.ColumnTotals().Select(count => count / n)];
        var rowWeight = new double[k];
        var columnWeight = new double[k];
        double observed = 0, expected = 0;
        for (var i = 0; i < k; i++)
        {
            for (var j = 0; j < k; j++)
            {
                observed += weights[i, j] * table[i, j] / n;
                expected += weights[i, j] * rows[i] * columns[j];
                rowWeight[i] += weights[i, j] * columns[j];
                columnWeight[j] += weights[i, j] * rows[i];
            }
        }

        var same = Enumerable.Range(0, k).Sum(i => table[i, i]);
        if (rows.Zip(columns, (r, c) => r == 1 && c == 1).Any(both => both))
        {
            return new Kappa(table.Total, same, observed, expected, null, null, null);
        }

        var kappa = (observed - expected) / (1 - expected);
        var offset = kappa - (expected * (1 - kappa));
        double spread = 0, chance = 0;
        for (var i = 0; i < k; i++)
        {
            for (var j = 0; j < k; j++)
            {
                var both = rowWeight[i] + columnWeight[j];

                // Offset and -expected are the means of what is squared: taken off before, so that nothing cancels.
                var own = weights[i, j] - (both * (1 - kappa)) - offset;
                spread += table[i, j] / n * own * own;
                chance += rows[i] * columns[j] * (weights[i, j] - both + expected) * (weights[i, j] - both + expected);
            }
        }

        var scale = n * (1 - expected) * (1 - expected);

        // Perfect agreement has no spread; what is left is rounding.
        var variance = spread / scale < 1e-20 ? 0 : spread / scale;
        return new Kappa(
            table.Total,
            same,
            observed,
            expected,
            kappa,
            Math.Sqrt(variance),
            Math.Sqrt(chance / scale));
    }
}
