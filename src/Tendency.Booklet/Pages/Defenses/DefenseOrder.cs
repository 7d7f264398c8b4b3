using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>The pages of a defense, in reading order: what it calls, not what it is shown. Pages about an offense's calls, or our front against them, say nothing of it and are left out.</summary>
internal static class DefenseOrder
{
    public static IReadOnlyList<PageEntry> Pages { get; } =
    [
        new("Brief", "brief", "Scouting brief", [], DefenseBriefPage.Compose) { SumsUp = true },
        new("Situations", "down-distance", "Down and distance", [], DefenseSituations.DownDistance),
        new("Looks", "formation", "Against formations", [ColumnNames.Formation], DefenseSituations.Formation),
        new("Looks", "personnel", "Against personnel", [ColumnNames.Personnel], DefenseSituations.Personnel),
        new("Calls", "fronts", "Fronts", [ColumnNames.Front], study => DefenseMixPage.Compose(study, ColumnNames.Front)) { WhenEmpty = "no front on five plays" },
        new("Calls", "coverages", "Coverages", [ColumnNames.Coverage], study => DefenseMixPage.Compose(study, ColumnNames.Coverage)) { WhenEmpty = "no coverage on five plays" },
        new("Calls", "rush", "Rush", [ColumnNames.Rushers], DefenseRushPage.Compose) { WhenEmpty = "no pass with charted rushers" },
    ];
}
