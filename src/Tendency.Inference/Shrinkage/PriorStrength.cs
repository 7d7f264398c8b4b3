namespace Tendency.Inference.Shrinkage;

/// <summary>How strongly a level pulls towards its parent, in observations.</summary>
public static class PriorStrength
{
    /// <summary>Fewest sibling cells from which a strength is estimated.</summary>
    public const int FewestSiblings = 15;

    /// <summary>Least and greatest strength used.</summary>
    public const double Least = 4;

    /// <inheritdoc cref="Least"/>
    public const double Greatest = 50;

    /// <summary>
    /// Maximum likelihood strength over sibling cells (rows of category counts), kept within 4 and 50; with fewer than 15 siblings that
    /// hold anything <see cref="BackOff.UsualStrength"/>. Source: empirical Bayes, Morris 1983, doi:10.1080/01621459.1983.10477920 [from memory]; the
    /// bounds from the simulations of the method's notes.
    /// </summary>
    /// <param name="rows">Counts, a row per sibling cell, all of one length.</param>
    /// <exception cref="ArgumentException">Rows of different lengths, or a negative count.</exception>
    public static double OfSiblings(IReadOnlyList<IReadOnlyList<int>> rows)
    {
        DirichletMultinomial.Observations(rows);
        return rows.Count(row => row.Sum() > 0) < FewestSiblings
            ? BackOff.UsualStrength
            : Math.Clamp(DirichletMultinomial.Fit(rows).Strength, Least, Greatest);
    }
}
