using MathNet.Numerics.RootFinding;
using Tendency.Inference.Functions;

namespace Tendency.Inference.Shrinkage;

/// <summary>
/// Maximum likelihood of the Dirichlet-multinomial (beta-binomial for two categories): how much do sibling rows differ beyond chance?
/// Source: Minka 2000 (rev. 2012), Estimating a Dirichlet distribution; Skellam 1948 [from memory].
/// </summary>
public static class DirichletMultinomial
{
    // Root search in ln M; beyond, rows are all-or-nothing or alike to the last digit.
    private const double LowestLogStrength = -25;
    private const double HighestLogStrength = 35;

    // The likelihood is a sum over every count up to the largest.
    private const long MostObservations = 10_000_000;

    // Where strengths usually lie (M = 0.4 to 400): a narrow bracket saves most of the search.
    private static readonly double[] Probes = [-1, 1, 2, 3, 4, 6];

    /// <summary>
    /// Fits rows of counts &gt;= 0 (games or sibling cells by categories). Rows without observations say nothing. Two boundaries are tested
    /// first: the score at 1/M = 0 is 0 or below (also when there is nothing to see): infinite strength and the pooled shares; every row
    /// in one category and some row with more than one observation: strength 0 and the share of rows.
    /// </summary>
    /// <param name="rows">Counts, a row per game or sibling cell, at most 10 million observations.</param>
    /// <exception cref="ArgumentException">No row, rows of different lengths, a negative count, or no observation at all.</exception>
    public static DirichletMultinomialFit Fit(IReadOnlyList<IReadOnlyList<int>> rows)
    {
        if (Observations(rows) == 0)
        {
            throw new ArgumentException("A fit needs at least one observation.", nameof(rows));
        }

        IReadOnlyList<int>[] full = [.. rows.Where(row => row.Sum() > 0)];
        var pooled = PooledShares(full);
        var coefficients = full.Sum(row => GammaFunction.LogFactorial(row.Sum()) - row.Sum(GammaFunction.LogFactorial));
        var score = Score(full, pooled);
        if (score <= 0)
        {
            var binomial = full.Sum(row => row.Select((count, k) => count == 0 ? 0 : count * Math.Log(pooled[k])).Sum());
            return new DirichletMultinomialFit(FitBoundary.NoExtraVariation, pooled, double.PositiveInfinity, coefficients + binomial, score);
        }

        if (full.All(row => row.Count(count => count > 0) == 1))
        {
            double[] share = [.. Enumerable.Range(0, pooled.Length).Select(k => full.Count(row => row[k] > 0) / (double)full.Length)];
            var likelihood = full.Sum(row => Math.Log(share.Where((_, k) => row[k] > 0).Single()));
            return new DirichletMultinomialFit(FitBoundary.AllOrNothing, share, 0, likelihood, score);
        }

        var tails = new CountTails(full);
        var mean = (double[])pooled.Clone();

        // Times 1 + M: the slope itself falls like 1/M, and the root search would take its smallness far out for a root.
        double Slope(double logStrength) => tails.Slope(Math.Exp(logStrength), mean) * (1 + Math.Exp(logStrength));
        double low = LowestLogStrength, high = HighestLogStrength;
        foreach (var probe in Probes)
        {
            if (Slope(probe) <= 0)
            {
                high = probe;
                break;
            }

            low = probe;
        }

        var root = Brent.FindRoot(Slope, low, high, 1e-11, 500);
        var strength = Math.Exp(root);
        tails.Slope(strength, mean);
        return new DirichletMultinomialFit(FitBoundary.Interior, mean, strength, coefficients + tails.LogLikelihood(strength, mean), score);
    }

    /// <summary>The beta-binomial of hits among trials per row: category 0 is the hits, 1 the misses; otherwise as <see cref="Fit"/>.</summary>
    /// <exception cref="ArgumentException">Lengths differ, hits outside 0 to trials, or no trial at all.</exception>
    public static DirichletMultinomialFit FitShares(IReadOnlyList<int> hits, IReadOnlyList<int> trials)
    {
        ArgumentNullException.ThrowIfNull(hits);
        ArgumentNullException.ThrowIfNull(trials);
        if (hits.Count != trials.Count || hits.Zip(trials).Any(row => row.First < 0 || row.First > row.Second))
        {
            throw new ArgumentException("Every row needs its trials, and hits between 0 and these.", nameof(hits));
        }

        return Fit([.. hits.Zip(trials, (x, n) => (IReadOnlyList<int>)[x, n - x])]);
    }

    /// <summary>Sum of the counts; refuses what is not a list of rows of equally many counts.</summary>
    internal static long Observations(IReadOnlyList<IReadOnlyList<int>> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var sum = 0L;
        foreach (var row in rows)
        {
            if (row is null || row.Count != rows[0].Count || row.Any(count => count < 0))
            {
                throw new ArgumentException("Rows hold equally many counts, none negative.", nameof(rows));
            }

            sum += row.Sum(count => (long)count);
        }

        return sum <= MostObservations ? sum : throw new ArgumentException($"More than {MostObservations} observations.", nameof(rows));
    }

    private static double[] PooledShares(IReadOnlyList<int>[] rows)
    {
        double n = rows.Sum(row => row.Sum());
        return [.. Enumerable.Range(0, rows[0].Count).Select(k => rows.Sum(row => row[k]) / n)];
    }

    private static double Score(IReadOnlyList<int>[] rows, double[] pooled)
    {
        var score = 0.0;
        foreach (var row in rows)
        {
            double n = row.Sum();
            for (var k = 0; k < row.Count; k++)
            {
                score += row[k] == 0 ? 0 : row[k] * (row[k] - 1.0) / (2 * pooled[k]);
            }

            score -= n * (n - 1) / 2;
        }

        return score;
    }
}
