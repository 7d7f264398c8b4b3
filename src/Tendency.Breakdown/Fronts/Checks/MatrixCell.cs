namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>One front against one scheme to one side of the back: what experts expect, what the film shows, and both together.</summary>
/// <param name="Plays">Charted runs of this scheme and side against this front, with a result.</param>
/// <param name="Successes">The offense's successes in them.</param>
/// <param name="Prior">Expected success of the offense before film: base - step x rating, kept inside 0.02 to 0.98.</param>
/// <param name="SuccessAllowed">Mean of Beta(M prior + successes, M (1 - prior) + failures), M = plays the rating is worth.</param>
/// <param name="Low">Equal-tailed interval of that Beta.</param>
/// <param name="Yards">Mean gain of the plays; null without one.</param>
/// <param name="Ledger"><c>play now/late; back now/late; all now/late</c>, or <c>unknown</c>.</param>
public sealed record MatrixCell(
    string Front,
    string RunScheme,
    RunTo Side,
    int Plays,
    int Successes,
    double Rating,
    double Prior,
    double SuccessAllowed,
    double Low,
    double High,
    double? Yards,
    string Ledger)
{
    /// <summary>How far film moved the experts' opinion, in success.</summary>
    public double Moved => SuccessAllowed - Prior;

    /// <summary>The rating with its reason; null where the cell is not rated and counts as even.</summary>
    public Rating? Opinion { get; init; }

    /// <summary>Parameters of the Beta: successes and failures with the rating's share of plays.</summary>
    internal (double Alpha, double Beta) Weights { get; init; }
}
