namespace Tendency.Breakdown.Findings;

/// <summary>What a search for tells found, and how far it looked.</summary>
/// <param name="Tells">Ranked; empty when nothing stands out.</param>
/// <param name="OutcomeColumn">The column whose values were looked for.</param>
/// <param name="Plays">Plays with that column charted.</param>
/// <param name="Games">Games they come from.</param>
/// <param name="Searched">Pairs of situation and outcome that could have passed; what the q-values pay for.</param>
/// <param name="Listed">Pairs that pass the rate of false alarms, before those that repeat another are dropped.</param>
/// <param name="Dimensions">Dimensions combined.</param>
public sealed record TellReport(
    IReadOnlyList<Tell> Tells, string OutcomeColumn, int Plays, int Games, int Searched, int Listed, IReadOnlyList<string> Dimensions)
{
    /// <summary>Accepted share of false alarms in the list.</summary>
    public required double Fdr { get; init; }
}
