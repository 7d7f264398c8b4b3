using Tendency.Inference.Functions;

namespace Tendency.Inference.Games;

/// <summary>
/// An option's success rate against each of S things, every one known only as Beta(a_s, b_s), independent. Against an uncertain mix
/// Dirichlet(alpha) of the things its value is V = sum pi_s theta_s.
/// </summary>
public sealed record UncertainOption
{
    // Range of shapes and mix weights: outside it a table of draws has no width left to step through, or never ends.
    private const double Least = 1e-6;
    private const double Most = 1e9;

    /// <param name="a">Successes plus prior successes against each thing, from 1e-6 to 1e9.</param>
    /// <param name="b">Failures plus prior failures, likewise.</param>
    /// <exception cref="ArgumentException">Lengths differ, nothing to stand against, or a shape outside its range.</exception>
    public UncertainOption(IReadOnlyList<double> a, IReadOnlyList<double> b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        if (a.Count == 0 || a.Count != b.Count)
        {
            throw new ArgumentException($"An option needs two shapes for each thing, and at least one thing: {a.Count} and {b.Count}.", nameof(a));
        }

        CheckShapes(a, nameof(a));
        CheckShapes(b, nameof(b));

        (A, B) = (a, b);
    }

    /// <summary>Successes plus prior successes, a thing each.</summary>
    public IReadOnlyList<double> A { get; }

    /// <summary>Failures plus prior failures, a thing each.</summary>
    public IReadOnlyList<double> B { get; }

    /// <summary>Mean success rate, a fraction, against thing <paramref name="s"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such thing.</exception>
    public double Mean(int s)
    {
        Domain.Position(s, A.Count);
        return A[s] / (A[s] + B[s]);
    }

    /// <summary>
    /// Mean and standard deviation of V, exact, from E[pi_s pi_t] = m_s (m_t + [s = t]) / (T (T + 1)) with T the sum of the mix weights m.
    /// Fractions. Source: moments of the Dirichlet distribution, Gelman and others, Bayesian Data Analysis, 3rd ed., app. A [from memory].
    /// </summary>
    /// <param name="mixWeights">Dirichlet weight of each thing: counts plus prior, from 1e-6 to 1e9.</param>
    /// <exception cref="ArgumentException">Not one weight a thing, or one outside its range.</exception>
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
        if (mixWeights.Count != things)
        {
            throw new ArgumentException($"The mix needs {things} weights, got {mixWeights.Count}.", nameof(mixWeights));
        }

        CheckShapes(mixWeights, nameof(mixWeights));
    }

    internal static void CheckShapes(IEnumerable<double> shapes, string name)
    {
        foreach (var shape in shapes)
        {
            if (!(shape >= Least && shape <= Most))
            {
                throw new ArgumentOutOfRangeException(name, shape, $"It must lie between {Least} and {Most}.");
            }
        }
    }
}
