using Tendency.Booklet.Pages;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Input;

/// <summary>Gathers what the pages speak of.</summary>
internal static class BookletStudy
{
    public static Study Of(ChartedWeek week, StudiedPlays studied, int seed) =>
        new(studied, week.Log, week.Read, week.Week) { Side = studied.Unit == Unit.Offense ? "offense" : "defense" };

    /// <summary>The date written into the booklet: the day of the last game charted, so that the same charts give the same bytes.</summary>
    public static DateTimeOffset Dated(WeekPlan week) =>
        new((week.Charts.Max(chart => chart.Date) ?? new DateOnly(2000, 1, 1)).ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
}
