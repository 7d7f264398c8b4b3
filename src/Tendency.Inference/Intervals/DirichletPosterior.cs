using Tendency.Inference.Functions;

namespace Tendency.Inference.Intervals;

/// <summary>
/// Posterior of a mix: Dirichlet(counts + prior), marginal j Beta(x_j + a_j, n - x_j + A - a_j). Weights are in observations; prior
/// weights must be positive. Without a parent the prior is 1/2 per category; with one, strength times the parent's shares. Source: Gelman and others,
/// Bayesian Data Analysis, 3rd ed., sec. 3.4 [from memory].
/// </summary>
public sealed record DirichletPosterior
{
    /// <param name="counts">Observations of each category, 0 or more, real numbers allowed.</param>
    /// <param name="priorEach">Prior weight of each category, in observations.</param>
    /// <exception cref="ArgumentException">A count is negative or infinite, or the weight not positive.</exception>
    public DirichletPosterior(IReadOnlyList<double> counts, double priorEach = 0.5)
        : this(counts, [.. Enumerable.Repeat(priorEach, counts?.Count ?? 0)])
    {
    }

    /// <param name="counts">Observations of each category, 0 or more, real numbers allowed.</param>
    /// <param name="prior">Prior weight of each category, in observations, above 0.</param>
    /// <exception cref="ArgumentException">Lengths differ, a count is negative or infinite, or a weight not positive.</exception>
    public DirichletPosterior(IReadOnlyList<double> counts, IReadOnlyList<double> prior)
    {
        ArgumentNullException.ThrowIfNull(counts);
        ArgumentNullException.ThrowIfNull(prior);
        if (counts.Count != prior.Count)
        {
            throw new ArgumentException($"A mix needs one prior weight per category, got {prior.Count} for {counts.Count}.", nameof(prior));
        }

        for (var j = 0; j < counts.Count; j++)
        {
            Domain.Count(counts[j], nameof(counts));
            Domain.Shape(prior[j], nameof(prior));
        }

        Weights = [.. counts.Zip(prior, (x, a) => x + a)];
        Total = Weights.Sum();
    }

    /// <summary>The Dirichlet's parameters, one per category.</summary>
    public IReadOnlyList<double> Weights { get; }

    /// <summary>Sum of the weights: observations plus prior.</summary>
    public double Total { get; }

    /// <summary>Posterior mean share, a fraction, of category <paramref name="j"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such category.</exception>
    public double Mean(int j)
    {
        Domain.Position(j, Weights.Count);
        return Weights[j] / Total;
    }

    /// <summary>Equal-tailed posterior interval of category <paramref name="j"/> alone; [1, 1] for the only category.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such category, or the level is outside (0, 1).</exception>
    public Interval Marginal(int j, double level)
    {
        Domain.Position(j, Weights.Count);
        Domain.Level(level);
        return Weights.Count == 1 ? new Interval(1, 1) : OneProportion.Quantiles(Weights[j], Total - Weights[j], level);
    }
}
