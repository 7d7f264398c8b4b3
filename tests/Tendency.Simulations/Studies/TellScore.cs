using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>
/// Planted habits held against reported tells, under several ideas of what counts as found and as false. A tell and a habit are alike when
/// at least half of all plays in either are in both; kin when one's conditions are among the other's, or alike; near when at least half of
/// either's plays are the other's; always with the sign fitting.
/// </summary>
internal sealed class TellScore
{
    private int _charts;
    private int _habits;
    private int _alike;
    private int _kin;
    private int _same;
    private int _tells;
    private int _unlike;
    private int _unkin;
    private int _far;
    private int _nil;
    private int _small;
    private int _heldPlays;
    private double _heldError;
    private double _searched;

    public void Add(TellReport report, List<PlantedHabit> habits, double[] odds, PlayLog plays)
    {
        _charts++;
        _searched += report.Searched;
        _habits += habits.Count;
        _tells += report.Tells.Count;
        _alike += habits.Count(h => report.Tells.Any(t => IsAlike(t, h)));
        _kin += habits.Count(h => report.Tells.Any(t => IsKin(t, h)));
        _same += habits.Count(h => report.Tells.Any(t => t.Rows.SequenceEqual(h.Rows)));
        _unlike += report.Tells.Count(t => !habits.Exists(h => IsAlike(t, h)));
        _unkin += report.Tells.Count(t => !habits.Exists(h => IsKin(t, h)));
        _far += report.Tells.Count(t => !habits.Exists(h => IsNear(t, h)));
        _nil += report.Tells.Count(t => Truth(t, odds, plays) < 0.02);
        _small += report.Tells.Count(t => Truth(t, odds, plays) < 0.05);
        foreach (var tell in report.Tells.Where(t => t.HeldOutPlays > 0))
        {
            _heldPlays += tell.HeldOutPlays;
            var truth = tell.Rows.Average(r => odds[r]);
            _heldError += tell.HeldOutCount - (tell.HeldOutPlays * (tell.Outcome == "run" ? truth : 1 - truth));
        }
    }

    public string Text() =>
        $"{_searched / _charts:0} pairs, {(double)_tells / _charts:0.00} tells a chart; found: alike {Percent(_alike, _habits)}, kin {Percent(_kin, _habits)}, "
        + $"same plays {Percent(_same, _habits)} of {_habits}; false: true difference under 2 points {Percent(_nil, _tells)}, under 5 points {Percent(_small, _tells)}, "
        + $"near no habit {Percent(_far, _tells)}, kin to none {Percent(_unkin, _tells)}, alike to none {Percent(_unlike, _tells)}; "
        + $"held-out excess over truth {100 * _heldError / Math.Max(1, _heldPlays):0.0} points";

    private static string Percent(int part, int all) => $"{100.0 * part / Math.Max(1, all):0.0}%";

    private static bool SignFits(Tell tell, PlantedHabit habit) => (tell.Outcome == "run") == (habit.LogOdds > 0);

    private static int Both(Tell tell, PlantedHabit habit) => tell.Rows.Intersect(habit.Rows).Count();

    private static bool IsAlike(Tell tell, PlantedHabit habit)
    {
        var both = Both(tell, habit);
        return SignFits(tell, habit) && 2 * both >= tell.Rows.Count + habit.Rows.Count - both;
    }

    private static bool IsKin(Tell tell, PlantedHabit habit)
    {
        var conditions = tell.Conditions.Select(c => (c.Name, c.Value)).ToHashSet();
        return IsAlike(tell, habit) || (SignFits(tell, habit) && (conditions.IsSubsetOf(habit.Conditions) || conditions.IsSupersetOf(habit.Conditions)));
    }

    private static bool IsNear(Tell tell, PlantedHabit habit)
    {
        var both = Both(tell, habit);
        return SignFits(tell, habit) && (2 * both >= tell.Rows.Count || 2 * both >= habit.Rows.Count);
    }

    // Expected difference, in the tell's direction, from the plays of the same games outside it.
    private static double Truth(Tell tell, double[] odds, PlayLog plays)
    {
        var inside = tell.Rows.ToHashSet();
        var games = plays.Category(ColumnNames.Game);
        var outside = Enumerable.Range(0, plays.Rows).Where(r => !inside.Contains(r)).GroupBy(r => games.Codes[r]).ToDictionary(g => g.Key, g => g.Average(r => odds[r]));
        var expected = tell.Rows.Sum(r => outside.GetValueOrDefault(games.Codes[r], odds[r]));
        return (tell.Outcome == "run" ? 1 : -1) * (tell.Rows.Sum(r => odds[r]) - expected) / tell.Rows.Count;
    }
}
