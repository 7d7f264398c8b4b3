namespace Tendency.Breakdown.Weeks;

/// <summary>A key of the week file's <c>[boundaries]</c> table.</summary>
/// <param name="Key">As written in the week file.</param>
/// <param name="Least">Least value it takes.</param>
/// <param name="Most">Greatest value it takes.</param>
internal sealed record BoundaryKey(string Key, int Least, int Most, Func<Boundaries, int> Of, Func<Boundaries, int, Boundaries> With);

/// <summary>Every boundary a staff can set. To add one: its property in <see cref="Boundaries"/>, its line here.</summary>
internal static class BoundaryKeys
{
    public static IReadOnlyList<BoundaryKey> All { get; } =
    [
        new("short_most", 1, 99, b => b.ShortMost, (b, v) => b with { ShortMost = v }),
        new("medium_most", 1, 99, b => b.MediumMost, (b, v) => b with { MediumMost = v }),
        new("long_most", 1, 99, b => b.LongMost, (b, v) => b with { LongMost = v }),
        new("goal_line_most", 1, 99, b => b.GoalLineMost, (b, v) => b with { GoalLineMost = v }),
        new("tight_red_most", 1, 99, b => b.TightRedMost, (b, v) => b with { TightRedMost = v }),
        new("red_zone_most", 1, 99, b => b.RedZoneMost, (b, v) => b with { RedZoneMost = v }),
        new("fringe_most", 1, 99, b => b.FringeMost, (b, v) => b with { FringeMost = v }),
        new("open_field_most", 1, 99, b => b.OpenFieldMost, (b, v) => b with { OpenFieldMost = v }),
        new("coming_out_most", 1, 99, b => b.ComingOutMost, (b, v) => b with { ComingOutMost = v }),
        new("two_scores", 2, 99, b => b.TwoScores, (b, v) => b with { TwoScores = v }),
        new("success_first", 1, 100, b => b.SuccessFirst, (b, v) => b with { SuccessFirst = v }),
        new("success_second", 1, 100, b => b.SuccessSecond, (b, v) => b with { SuccessSecond = v }),
        new("success_late", 1, 100, b => b.SuccessLate, (b, v) => b with { SuccessLate = v }),
        new("explosive_run", 1, 99, b => b.ExplosiveRun, (b, v) => b with { ExplosiveRun = v }),
        new("explosive_pass", 1, 99, b => b.ExplosivePass, (b, v) => b with { ExplosivePass = v }),
        new("two_minute_seconds", 0, 900, b => b.TwoMinuteSeconds, (b, v) => b with { TwoMinuteSeconds = v }),
        new("four_minute_seconds", 0, 900, b => b.FourMinuteSeconds, (b, v) => b with { FourMinuteSeconds = v }),
        new("four_minute_lead", 1, 99, b => b.FourMinuteLead, (b, v) => b with { FourMinuteLead = v }),
        new("opener_plays", 0, 200, b => b.OpenerPlays, (b, v) => b with { OpenerPlays = v }),
    ];

    /// <summary>Boundaries of which each must be greater than the one before.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Rising { get; } =
    [
        ["short_most", "medium_most", "long_most"],
        ["goal_line_most", "tight_red_most", "red_zone_most", "fringe_most", "open_field_most", "coming_out_most"],
    ];
}
