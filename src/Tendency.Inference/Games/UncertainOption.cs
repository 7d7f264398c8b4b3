namespace Tendency.Inference.Games;

/// <summary>
/// An option's success rate against each of S things, every one known only as Beta(a_s, b_s), independent. Against an uncertain mix
/// Dirichlet(alpha) of the things its value is V = sum pi_s theta_s.
/// </summary>
public sealed record UncertainOption
{
    /// <param name="a">Successes plus prior successes against each thing, &gt; 0.</param>
    /// <param name="b">Failures plus prior failures, &gt; 0.</param>
    public UncertainOption(IReadOnlyList<double> a, IReadOnlyList<double> b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        if (a.Count == 0 || a.Count != b.Count || a.Concat(b).Any(shape => !(shape > 0)))
        {
            throw new ArgumentException("An option needs two positive shapes for each thing.", nameof(a));
        }

        (A, B) = (a, b);
    }

    public IReadOnlyList<double> A { get; }

    public IReadOnlyList<double> B { get; }

    /// <summary>Mean success rate against thing <paramref name="s"/>.</summary>
    public double Mean(int s) => A[s] / (A[s] + B[s]);

    /// <summary>
    /// Mean and standard deviation of V, exact, from E[pi_s pi_t] = m_s (m_t + [s = t]) / (T (T + 1)) with T the sum of the mix weights m.
    /// </summary>
    public (double Mean, double StandardDeviation) Against(IReadOnlyList<double> mixWeights)
    {
        CheckMix(mixWeights, A.Count);
        var total = mixWeights.Sum();
        double mean = 0, square = 0;
        for (var s = 0; s < A.Count; s++)
        {
            mean += mixWeights[s] / total * Mean(s);
        }

        // Deviations from the mean: the second moment would lose the digits of a small spread.
        for (var s = 0; s < A.Count; s++)
        {
            var shapes = A[s] + B[s];
            var variance = Mean(s) * (1 - Mean(s)) / (shapes + 1);
            var gap = Mean(s) - mean;
            square += mixWeights[s] * gap * gap / (total * (total + 1));
            square += mixWeights[s] * (mixWeights[s] + 1) * variance / (total * (total + 1));
        }

        return (mean, Math.Sqrt(square));
    }

    internal static void CheckMix(IReadOnlyList<double> mixWeights, int things)
    {
        ArgumentNullException.ThrowIfNull(mixWeights);
        if (mixWeights.Count != things || mixWeights.Any(weight => !(weight > 0)))
        {
            throw new ArgumentException($"The mix needs {things} positive weights.", nameof(mixWeights));
        }
    }
}
