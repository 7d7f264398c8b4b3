using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Counts.Scripts;

/// <summary>A period of practice and the plays it is drawn from.</summary>
/// <param name="Name">As the command takes it: "third-down".</param>
/// <param name="Title">As a page prints it: "Third down".</param>
/// <param name="Needs">The column without which the period has no plays.</param>
/// <param name="From">The plays of the period.</param>
public sealed record ScriptPeriod(string Name, string Title, string Needs, Func<PlayLog, PlayLog> From)
{
    /// <summary>The one list of periods; the first is the default.</summary>
    public static IReadOnlyList<ScriptPeriod> All { get; } =
    [
        new("team", "Team", ColumnNames.Call, plays => plays),
        new("run", "Team run", ColumnNames.Call, plays => plays.Where(ColumnNames.Call, "run")),
        new("third-down", "Third down", ColumnNames.Down, plays => plays.Where(ColumnNames.Down, "3")),
        new("red-zone", "Red zone", ColumnNames.FieldZone, plays => plays.Where(ColumnNames.FieldZone, "red zone", "tight red", "goal line")),
    ];
}
