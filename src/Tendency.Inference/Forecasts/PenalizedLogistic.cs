using MathNet.Numerics.LinearAlgebra;
using Tendency.Inference.Functions;

namespace Tendency.Inference.Forecasts;

/// <summary>
/// Logistic regression whose coefficients are pulled towards values expected beforehand: the mode of the posterior under independent
/// normal priors. Source: Hoerl and Kennard 1970 (ridge); le Cessie and van Houwelingen 1992, doi:10.2307/2347628; Newton steps as in
/// iteratively reweighted least squares.
/// </summary>
public sealed class PenalizedLogistic
{
    private const int MostSteps = 50;

    private readonly double[] _coefficients;

    private PenalizedLogistic(double[] coefficients) => _coefficients = coefficients;

    /// <summary>One per feature, in log odds per unit of the feature.</summary>
    public IReadOnlyList<double> Coefficients => _coefficients;

    /// <param name="features">One row per observation, all of one length; include a constant 1 for an intercept.</param>
    /// <param name="hit">What happened.</param>
    /// <param name="expected">Prior mean of each coefficient.</param>
    /// <param name="precision">1 / prior variance of each coefficient, finite and above 0; so the mode exists for any data, also none.</param>
    /// <exception cref="ArgumentException">Lengths differ, a number is not finite, or a precision not positive.</exception>
    public static PenalizedLogistic Fit(IReadOnlyList<double[]> features, IReadOnlyList<bool> hit, IReadOnlyList<double> expected, IReadOnlyList<double> precision)
    {
        ArgumentNullException.ThrowIfNull(features);
        ArgumentNullException.ThrowIfNull(hit);
        ArgumentNullException.ThrowIfNull(expected);
        ArgumentNullException.ThrowIfNull(precision);
        if (features.Count != hit.Count || expected.Count != precision.Count
            || features.Any(row => row is null || row.Length != expected.Count || !row.All(double.IsFinite)))
        {
            throw new ArgumentException("Every observation needs an outcome and finite features, every feature a prior mean and a precision.", nameof(features));
        }

        for (var j = 0; j < expected.Count; j++)
        {
            Domain.Finite(expected[j], nameof(expected));
            Domain.Positive(precision[j], nameof(precision));
        }

        var observations = features.Select((row, i) => new Observation(row, hit[i])).ToArray();
        var beta = expected.ToArray();
        var loss = Penalized(observations, beta, expected, precision);
        for (var step = 0; step < MostSteps; step++)
        {
            var move = NewtonStep(observations, beta, expected, precision);
            double[] next;
            double nextLoss;
            var size = 1.0;

            // Halved until the penalized loss falls: near-separable data can overshoot.
            do
            {
                next = [.. beta.Zip(move, (b, m) => b + (size * m))];
                nextLoss = Penalized(observations, next, expected, precision);
                size /= 2;
            }
            while (nextLoss > loss && size > 1e-6);

            if (!(nextLoss < loss))
            {
                break;
            }

            var gain = loss - nextLoss;
            (beta, loss) = (next, nextLoss);
            if (gain < 1e-10 * (1 + Math.Abs(loss)))
            {
                break;
            }
        }

        return new PenalizedLogistic(beta);
    }

    /// <summary>Probability of a hit, inside (0, 1) for finite features; 0 or 1 only by rounding.</summary>
    /// <param name="features">One per coefficient.</param>
    /// <exception cref="ArgumentException">There are more or fewer.</exception>
    public double Probability(ReadOnlySpan<double> features)
    {
        if (features.Length != _coefficients.Length)
        {
            throw new ArgumentException($"The model has {_coefficients.Length} coefficients, got {features.Length} features.", nameof(features));
        }

        var score = 0.0;
        for (var j = 0; j < features.Length; j++)
        {
            score += features[j] * _coefficients[j];
        }

        return 1 / (1 + Math.Exp(-score));
    }

    private static double[] NewtonStep(Observation[] observations, double[] beta, IReadOnlyList<double> expected, IReadOnlyList<double> precision)
    {
        var count = beta.Length;
        var gradient = new double[count];
        var curvature = new double[count * count];
        for (var j = 0; j < count; j++)
        {
            gradient[j] = -precision[j] * (beta[j] - expected[j]);
            curvature[(j * count) + j] = precision[j];
        }

        foreach (var observation in observations)
        {
            var (at, values) = (observation.At, observation.Values);
            var p = 1 / (1 + Math.Exp(-observation.Score(beta)));
            var residual = (observation.Hit ? 1 : 0) - p;
            var weight = p * (1 - p);
            for (var a = 0; a < at.Length; a++)
            {
                gradient[at[a]] += values[a] * residual;
                var scaled = weight * values[a];
                var row = at[a] * count;
                for (var b = 0; b <= a; b++)
                {
                    curvature[row + at[b]] += scaled * values[b];
                }
            }
        }

        for (var j = 0; j < count; j++)
        {
            for (var k = j + 1; k < count; k++)
            {
                curvature[(j * count) + k] = curvature[(k * count) + j];
            }
        }

        return Matrix<double>.Build.Dense(count, count, curvature).Cholesky().Solve(Vector<double>.Build.Dense(gradient)).ToArray();
    }

    private static double Penalized(Observation[] observations, double[] beta, IReadOnlyList<double> expected, IReadOnlyList<double> precision)
    {
        var sum = 0.0;
        for (var j = 0; j < beta.Length; j++)
        {
            sum += precision[j] * (beta[j] - expected[j]) * (beta[j] - expected[j]) / 2;
        }

        foreach (var observation in observations)
        {
            var score = observation.Score(beta);
            var signed = observation.Hit ? -score : score;
            sum += signed > 30 ? signed : Math.Log(1 + Math.Exp(signed));
        }

        return sum;
    }

    // Most features are indicators and most of them are 0: the others with their places, in rising order.
    private sealed class Observation(double[] features, bool hit)
    {
        public bool Hit { get; } = hit;

        public int[] At { get; } = [.. Enumerable.Range(0, features.Length).Where(j => features[j] != 0)];

        public double[] Values { get; } = [.. features.Where(x => x != 0)];

        public double Score(double[] beta)
        {
            var (at, values, sum) = (At, Values, 0.0);
            for (var a = 0; a < at.Length; a++)
            {
                sum += values[a] * beta[at[a]];
            }

            return sum;
        }
    }
}
