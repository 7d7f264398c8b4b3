using Tendency.Booklet.Pages;
using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;

namespace Tendency.Input;

/// <summary>Gathers what the pages speak of.</summary>
internal static class BookletStudy
{
    // What they may do with the ball, as far as it is charted: each is searched for tells by itself.
    private static readonly string[] s_outcomes = [ColumnNames.Call, ColumnNames.RunTo, ColumnNames.SlideTo];

    // The page prints whole percents: 999 draws give a p-value of 5% to within a point.
    private const int SteadinessDraws = 999;

    // Whole percents again; the guess command grows five times as many and weighs its models.
    private const int GuessTrees = 60;

    public static Study Of(ChartedWeek week, StudiedPlays studied, GameWeights weights, int seed)
    {
        var plays = studied.Plays;
        var level = week.Week.Level;
        var tellOptions = TellOptions.Default with { Shuffles = 0, Level = level };

        // Each finding is a function of the plays and the seed alone, so they may be made side by side.
        var guess = Task.Run(() => Guess.Run(plays, ColumnNames.Call, GuessOptions.Default with { Trees = GuessTrees, Weighs = false, Seed = seed, Level = level }));
        var audit = Task.Run(() => Audit.Run(week.Read, week.Log, week.Week, week.Glossary));
        var steadiness = Task.Run(() => SteadyHabits.Follow(plays, Habit.Usual, seed, SteadinessDraws));
        var tells = Task.Run(() => s_outcomes.Where(plays.IsCharted).Select(outcome => Tells.Search(plays, outcome, tellOptions)).ToArray());
        var anew = tells.ContinueWith(
            found => SearchedAnew.Sum([.. found.Result.Where(report => report.Tells.Count > 0).Select(report => SearchedAnew.Of(plays, report.OutcomeColumn, tellOptions)).OfType<SearchedAnew>()]),
            TaskScheduler.Default);
        var fronts = FrontStudy.Of(week, studied, weights, seed);
        return new Study(studied, week.Log, week.Read, week.Week)
        {
            Side = studied.Unit == Unit.Offense ? "offense" : "defense",
            Weights = weights,
            Fronts = fronts.Check,
            FrontCard = fronts.Card(),
            Tells = tells.GetAwaiter().GetResult(),
            TellsAnew = anew.GetAwaiter().GetResult(),
            Audit = audit.GetAwaiter().GetResult(),
            Steadiness = steadiness.GetAwaiter().GetResult(),
            Guess = guess.GetAwaiter().GetResult(),
        };
    }

    /// <summary>The date written into the booklet: the day of the last game charted, so that the same charts give the same bytes.</summary>
    public static DateTimeOffset Dated(WeekPlan week) =>
        new((week.Charts.Max(chart => chart.Date) ?? new DateOnly(2000, 1, 1)).ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
}
