using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>
/// A tell planted for a simulation: where every condition holds, the log odds of a run rise by <paramref name="LogOdds"/>.
/// Conditions are a column's name and value as the chart has them; distance_band is the one derived name.
/// </summary>
public sealed record LogOddsTell(IReadOnlyList<(string Dimension, string Value)> Conditions, double LogOdds)
{
    /// <summary>The names a condition may use: what is known before the snap.</summary>
    public static IReadOnlyList<string> Dimensions { get; } =
        ["down", "distance_band", "hash", "personnel", "formation", "strength", "back_set", "back_side", "attached", "wing", "motion", "tempo"];

    /// <summary>The tell as `name=value` joined by ` &amp; `.</summary>
    public string Situation => string.Join(" & ", Conditions.Select(condition => $"{condition.Dimension}={condition.Value}"));

    public bool Holds(Situation at, Look look) => Conditions.All(condition => ValueOf(condition.Dimension, at, look) == condition.Value);

    public static string ValueOf(string dimension, Situation at, Look look) => dimension switch
    {
        "down" => at.Down.ToString(),
        "distance_band" => at.DistanceBand,
        "hash" => at.Hash.ToString(),
        "personnel" => look.Personnel,
        "formation" => look.Formation,
        "strength" => look.Strength.ToString(),
        "back_set" => look.BackSet,
        "back_side" => look.BackSide,
        "attached" => look.Attached,
        "wing" => look.Wing,
        "motion" => look.Motion,
        "tempo" => look.Tempo,
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "not a pre-snap dimension of the scenario"),
    };
}
