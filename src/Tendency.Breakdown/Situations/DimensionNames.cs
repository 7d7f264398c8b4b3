using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Everything that can be counted by: the chart's columns and the dimensions derived from them.</summary>
public static class DimensionNames
{
    /// <summary>Derived dimensions, in the order of the chart's columns they come from.</summary>
    public static IReadOnlyList<string> Derived { get; } =
    [
        YardsToGoal, Called, BackAt, DistanceBand, DownDistance, FieldSide, FieldZone, ScoreState, FirstOfSeries, PreviousCall, ClockState, Opener,
        SuddenChange, FormationFamily, RunFamily, RunTo, RunToStrength, SlideTo, PressureTo, Success, Explosive,
    ];

    public static IReadOnlyList<string> All { get; } = [.. ColumnCatalogue.All.Select(c => c.Name), .. Derived];

    /// <summary>The dimension a name means, compared without case, spaces, _ and -; null when there is none.</summary>
    public static string? Find(string name) => All.FirstOrDefault(known => ColumnCatalogue.Key(known) == ColumnCatalogue.Key(name));

    /// <summary>What to say of a name that is none.</summary>
    public static string Unknown(string option, string name)
    {
        var nearest = NearestWord.All(All, name);
        var suggestion = nearest.Count > 0 ? $"Nearest: {string.Join(", ", nearest)}" : $"Known: {string.Join(", ", All)}";
        return $"{option}: '{name}' is no column or dimension. {suggestion}.";
    }
}
