using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Weeks;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>A row of the sideline sheet: a situation as it is shouted.</summary>
/// <param name="Name">"2nd 4–6".</param>
/// <param name="Column">The column that says so.</param>
/// <param name="Values">Its values that belong to the row.</param>
internal sealed record SheetSituation(string Name, string Column, params string[] Values)
{
    /// <summary>As a player hears it: "3rd and 7 or more". Empty = not said to players.</summary>
    public string Spoken { get; private init; } = "";

    /// <summary>Downs by distance, then the field near the goal; only what happened at least once.</summary>
    public static IReadOnlyList<SheetSituation> Of(Study study)
    {
        var limits = study.Week.Boundaries;
        SheetSituation[] all =
        [
            new("1st & 10", ColumnNames.DownDistance, "1 & 10") { Spoken = "1st and 10" },
            new("1st & goal", ColumnNames.DownDistance, "1 & goal") { Spoken = "1st and goal" },
            .. Bands("2", "2nd", limits),
            .. Bands("3", "3rd", limits),
            new("4th", ColumnNames.Down, "4") { Spoken = "4th down" },
            new($"Red {limits.RedZoneMost}–{limits.TightRedMost + 1}", ColumnNames.FieldZone, "red zone"),
            new($"Inside {limits.TightRedMost}", ColumnNames.FieldZone, "tight red", "goal line"),
        ];
        return [.. all.Where(situation => situation.PlaysOf(study).Rows > 0)];
    }

    private static IEnumerable<SheetSituation> Bands(string down, string ordinal, Boundaries limits) =>
    [
        new($"{ordinal} 1–{limits.ShortMost}", ColumnNames.DownDistance, $"{down} & short") { Spoken = $"{ordinal} and 1 to {limits.ShortMost}" },
        new($"{ordinal} {limits.ShortMost + 1}–{limits.MediumMost}", ColumnNames.DownDistance, $"{down} & medium") { Spoken = $"{ordinal} and {limits.ShortMost + 1} to {limits.MediumMost}" },
        new($"{ordinal} {limits.MediumMost + 1}+", ColumnNames.DownDistance, $"{down} & long", $"{down} & extra long") { Spoken = $"{ordinal} and {limits.MediumMost + 1} or more" },
    ];

    public PlayLog PlaysOf(Study study) => study.Plays.Where(Column, Values);

    /// <summary>Whether a row of the log belongs to the situation.</summary>
    public Func<int, bool> Holds(PlayLog log)
    {
        var column = log.Category(Column);
        return row => Values.Contains(column[row]);
    }
}
