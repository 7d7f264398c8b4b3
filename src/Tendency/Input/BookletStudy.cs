using Tendency.Booklet.Pages;
using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Input;

/// <summary>Gathers what the pages speak of.</summary>
internal static class BookletStudy
{
    // What they may do with the ball, as far as it is charted: each is searched for tells by itself.
    private static readonly string[] s_outcomes = [ColumnNames.Call, ColumnNames.RunTo, ColumnNames.SlideTo];

    public static Study Of(ChartedWeek week, StudiedPlays studied, int seed)
    {
        var fronts = FrontStudy.Of(week, studied, seed);
        var options = TellOptions.Default with { Level = week.Week.Level };
        return new Study(studied, week.Log, week.Read, week.Week)
        {
            Side = studied.Unit == Unit.Offense ? "offense" : "defense",
            Fronts = fronts.Check,
            FrontCard = fronts.Card(),
            Tells = [.. s_outcomes.Where(studied.Plays.IsCharted).Select(outcome => Tells.Search(studied.Plays, outcome, options))],
            Audit = Audit.Run(week.Read, week.Log, week.Week, week.Glossary),
        };
    }

    /// <summary>The date written into the booklet: the day of the last game charted, so that the same charts give the same bytes.</summary>
    public static DateTimeOffset Dated(WeekPlan week) =>
        new((week.Charts.Max(chart => chart.Date) ?? new DateOnly(2000, 1, 1)).ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
}
