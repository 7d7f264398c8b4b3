using Tendency.Breakdown.Situations;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings;

/// <summary>Something an offense does or does not do, that can be followed from game to game.</summary>
/// <param name="Name">As printed: "Run, 1st &amp; 10".</param>
/// <param name="When">Conditions of the plays it is about; none = all.</param>
/// <param name="Column">The column that says whether they did it.</param>
/// <param name="Value">The value that counts as doing it; with a leading <c>!</c>, any other charted value.</param>
public sealed record Habit(string Name, IReadOnlyList<Condition> When, string Column, string Value)
{
    /// <summary>What a staff follows through the season. One that is not charted is passed over.</summary>
    public static IReadOnlyList<Habit> Usual { get; } =
    [
        new("Run share", [], Call, "run"),
        new("Run, 1st & 10", [Where(DownDistance, "1 & 10")], Call, "run"),
        new("Run, 2nd and 7 or more", [Where(DownDistance, "2 & long", "2 & extra long")], Call, "run"),
        new("Pass, 3rd and 4 or more", [Where(DownDistance, "3 & medium", "3 & long", "3 & extra long")], Call, "pass"),
        new("Run, red zone", [Where(FieldZone, "red zone", "tight red", "goal line")], Call, "run"),
        new("Run, back strong", [Where(BackSide, "strong")], Call, "run"),
        new("Run, back weak", [Where(BackSide, "weak")], Call, "run"),
        new("From the gun", [], BackSet, "gun"),
        new("Motion before the snap", [], Motion, "!none"),
        new("No huddle", [], Tempo, "no huddle"),
        new("Gap schemes, of runs", [], RunFamily, "gap"),
        new("Inside zone, of runs", [], RunScheme, "inside zone"),
        new("Runs to the back", [], RunTo, "to back"),
        new("Slide to the back", [], SlideTo, "to back"),
        new("Gained enough", [], Success, "yes"),
    ];

    private static Condition Where(string name, params string[] values) => new(name, values);
}
