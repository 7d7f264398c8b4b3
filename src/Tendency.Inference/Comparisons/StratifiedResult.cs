namespace Tendency.Inference.Comparisons;

/// <summary>What <see cref="StratifiedTest"/> found; all p-values exact.</summary>
/// <param name="Observed">Hits in the cell, all strata.</param>
/// <param name="Expected">Hits expected if the cell were like the rest of its strata.</param>
/// <param name="Variance">Hypergeometric variance of the hits; 0 if they could not have come out otherwise.</param>
/// <param name="Less">P(hits &lt;= observed).</param>
/// <param name="Greater">P(hits &gt;= observed).</param>
/// <param name="TwoSided">Probability of all outcomes at most as likely as the observed one (ties within 1e-7 relative).</param>
/// <param name="MidTwoSided">TwoSided less half the probability of the outcomes tied with the observed one.</param>
/// <param name="AtLeastAsFar">P(|hits - expected| &gt;= |observed - expected|): the test whose statistic max-T uses.</param>
public readonly record struct StratifiedResult(
    int Observed,
    double Expected,
    double Variance,
    double Less,
    double Greater,
    double TwoSided,
    double MidTwoSided,
    double AtLeastAsFar)
{
    /// <summary>(observed - expected) / sqrt(variance), signed; 0 where the variance is 0. Its square is Cochran, Mantel and Haenszel's chi-square.</summary>
    public double Z => Variance > 0 ? (Observed - Expected) / Math.Sqrt(Variance) : 0;
}
