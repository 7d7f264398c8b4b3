namespace Tendency.Breakdown.Counts;

/// <summary>One reason for which games count differently.</summary>
/// <param name="Name">What the weight goes by: "age", "fronts".</param>
/// <param name="Which">The games that count more, inside a sentence: "recent games".</param>
/// <param name="Why">What the page says: "Games against fronts like ours count more."</param>
/// <param name="ByGame">Weight of a play of each game, above 0.</param>
public sealed record WeightReason(string Name, string Which, string Why, IReadOnlyDictionary<string, double> ByGame);
