using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Breakdown.Fronts.Protections;

/// <summary>A front that puts a rusher on the man side, and its price against the run.</summary>
/// <param name="RushThere">Rush rating on that side, expert opinion, -2 to 2.</param>
/// <param name="Cost">Success it allows on runs above the front that allows least.</param>
public sealed record RusherFront(string Front, double RushThere, double SuccessAllowed, double Cost);

/// <summary>Where the featured rusher lines up.</summary>
/// <param name="Habit">All their passes with a man side.</param>
/// <param name="Side">The side of the back to put him on; null while the share could be even.</param>
/// <param name="Fronts">Best rush on that side first; for an undecided side on the back's.</param>
public sealed record RusherPlan(SlideHabit Habit, RunTo? Side, IReadOnlyList<RusherFront> Fronts, string Sentence)
{
    /// <returns>Null when no slide is charted.</returns>
    public static RusherPlan? Of(PlayLog log, FrontCheck check, LikelyRanges ranges)
    {
        var rows = SlideHabit.ManSides(log);
        if (rows.Length == 0)
        {
            return null;
        }

        var habit = SlideHabit.Count(log, "all passes", rows, ranges);
        RunTo? side = !habit.IsHabit ? null : habit.ShareAway > 0.5 ? RunTo.ToBack : RunTo.Away;
        var fronts = Rushing(check, side ?? RunTo.ToBack, BackIsStrong(log, rows));
        return new RusherPlan(habit, side, fronts, Say(habit, side, fronts));
    }

    private static IReadOnlyList<RusherFront> Rushing(FrontCheck check, RunTo side, double strong)
    {
        var allowed = check.Ranking.Ranks.ToDictionary(r => r.Front, r => r.SuccessAllowed, StringComparer.Ordinal);
        if (allowed.Count == 0)
        {
            return [];
        }

        var least = allowed.Values.Min();
        return [.. check.Matrix.Fronts
            .Select(f => new RusherFront(f.Name, RushAt(f, side, strong), allowed[f.Name], allowed[f.Name] - least))
            .OrderByDescending(f => f.RushThere)
            .ThenBy(f => f.Cost)];
    }

    /// <summary>A front set by strength meets the back on either side, as often as he stands there.</summary>
    private static double RushAt(Front front, RunTo side, double strong)
    {
        var toIsThere = front.SetBy == SetBy.Back ? 1 : strong;
        var atBack = (toIsThere * front.RushTo) + ((1 - toIsThere) * front.RushOff);
        var atOther = (toIsThere * front.RushOff) + ((1 - toIsThere) * front.RushTo);
        return side == RunTo.ToBack ? atBack : atOther;
    }

    private static double BackIsStrong(PlayLog log, int[] rows)
    {
        var backs = log.Category(ColumnNames.BackSide);
        var known = rows.Where(r => backs[r] is "strong" or "weak").ToArray();
        return known.Length == 0 ? 0.5 : (double)known.Count(r => backs[r] == "strong") / known.Length;
    }

    private static string Say(SlideHabit habit, RunTo? side, IReadOnlyList<RusherFront> fronts)
    {
        var counts = $"{habit.Away} of {habit.Plays}";
        if (side is null)
        {
            return $"The slide gives no side away: away from the back on {counts}.";
        }

        var where = side == RunTo.ToBack ? "on the back's side" : "away from the back";
        var turns = side == RunTo.ToBack ? $"The slide goes away from him on {counts}" : $"The slide comes to him on {habit.Plays - habit.Away} of {habit.Plays}";
        var price = fronts.Count == 0 ? ""
            : fronts[0].Cost < 0.005 ? $" {FrontWord.Of(fronts[0].Front)} does it at no cost against the run."
            : $" {FrontWord.Of(fronts[0].Front)} does it and costs {100 * fronts[0].Cost:0} points of success against the run.";
        return $"Put the rusher {where}. {turns}.{price}";
    }
}
