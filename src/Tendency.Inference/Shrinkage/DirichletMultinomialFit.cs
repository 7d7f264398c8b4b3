using Tendency.Inference.Functions;

namespace Tendency.Inference.Shrinkage;

/// <summary>Where a maximum likelihood fit ended.</summary>
public enum FitBoundary
{
    /// <summary>A finite prior strength.</summary>
    Interior = 0,

    /// <summary>The rows differ no more than chance: infinite strength.</summary>
    NoExtraVariation = 1,

    /// <summary>Every row lies in one category: strength 0.</summary>
    AllOrNothing = 2,
}

/// <summary>A fitted Dirichlet-multinomial; with two categories, a beta-binomial.</summary>
/// <param name="Boundary">Whether the strength is finite.</param>
/// <param name="Mean">Mean share of each category; 0 for one never seen.</param>
/// <param name="Strength">M, the sum of the alphas, in observations; infinity or 0 on the boundaries.</param>
/// <param name="LogLikelihood">Natural log, multinomial coefficients included.</param>
/// <param name="ScoreAtZero">Slope of the log likelihood in 1/M at 1/M = 0: no extra variation if it is 0 or below.</param>
public sealed record DirichletMultinomialFit(
    FitBoundary Boundary,
    IReadOnlyList<double> Mean,
    double Strength,
    double LogLikelihood,
    double ScoreAtZero)
{
    /// <summary>Correlation of two observations of one row, 1/(M + 1).</summary>
    public double Rho => 1 / (Strength + 1);

    /// <summary>Alpha of category <paramref name="k"/>; null on a boundary.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such category.</exception>
    public double? Alpha(int k)
    {
        Domain.Position(k, Mean.Count);
        return Boundary == FitBoundary.Interior ? Strength * Mean[k] : null;
    }
}
