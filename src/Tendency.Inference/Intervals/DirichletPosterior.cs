namespace Tendency.Inference.Intervals;

/// <summary>
/// Posterior of a mix: Dirichlet(counts + prior), marginal j Beta(x_j + a_j, n - x_j + A - a_j). Weights are in observations; prior
/// weights must be positive. Without a parent the prior is 1/2 per category; with one, strength times the parent's shares.
/// </summary>
public sealed record DirichletPosterior
{
    public DirichletPosterior(IReadOnlyList<double> counts, double priorEach = 0.5)
        : this(counts, [.. Enumerable.Repeat(priorEach, counts.Count)])
    {
    }

    public DirichletPosterior(IReadOnlyList<double> counts, IReadOnlyList<double> prior)
    {
        ArgumentNullException.ThrowIfNull(counts);
        ArgumentNullException.ThrowIfNull(prior);
        if (counts.Count != prior.Count || counts.Any(c => !(c >= 0)) || prior.Any(a => !(a > 0)))
        {
            throw new ArgumentException("A mix needs one count (0 or more) and one positive prior weight per category.", nameof(prior));
        }

        Weights = [.. counts.Zip(prior, (x, a) => x + a)];
        Total = Weights.Sum();
    }

    /// <summary>The Dirichlet's parameters, one per category.</summary>
    public IReadOnlyList<double> Weights { get; }

    public double Total { get; }

    /// <summary>Posterior mean share of category <paramref name="j"/>.</summary>
    public double Mean(int j) => Weights[j] / Total;

    /// <summary>Equal-tailed posterior interval of category <paramref name="j"/> alone; [1, 1] for the only category.</summary>
    public Interval Marginal(int j, double level) =>
        Weights.Count == 1 ? new Interval(1, 1) : OneProportion.Quantiles(Weights[j], Total - Weights[j], level);
}
