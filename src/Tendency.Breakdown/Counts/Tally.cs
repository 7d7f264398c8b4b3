namespace Tendency.Breakdown.Counts;

/// <summary>So many of so many plays.</summary>
/// <param name="Count">Plays of the kind asked about, at most <paramref name="Plays"/>.</param>
/// <param name="Plays">Plays in which the answer is charted.</param>
public readonly record struct Tally(int Count, int Plays)
{
    /// <summary>Count / plays as a fraction; null without plays.</summary>
    public double? Share => Plays == 0 ? null : (double)Count / Plays;

    public Tally Plus(Tally other) => new(Count + other.Count, Plays + other.Plays);

    public override string ToString() => $"{Count} of {Plays}";
}
