using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Protections;

/// <summary>A situation in which four rushers with one extra man at the man side are worth a call: they pass, and the man side is known.</summary>
/// <param name="PassShare">Share of passes among runs and passes.</param>
/// <param name="ManSide">The side of the back where a blocker stands alone.</param>
/// <param name="ManSideRange">Range of its share.</param>
/// <param name="Expected">The share to go by, leaning on all passes with a man side: what spots are ranked by.</param>
public sealed record PressureSpot(string Situation, int Passes, double PassShare, RunTo ManSide, int Plays, int Count, Interval ManSideRange, double Expected)
{
    private const double MostlyPass = 0.5;
    private const int FewestPlays = 8;

    /// <summary>How to say it on the practice field.</summary>
    public string Call => ManSide == RunTo.ToBack
        ? "add the linebacker on the back's side, drop the end away"
        : "add the linebacker away from the back, drop the end on his side";

    /// <summary>Situations of the front card that are mostly passes and whose man side's range leaves out an even split, the highest expected share first.</summary>
    public static IReadOnlyList<PressureSpot> Of(PlayLog log, LikelyRanges ranges)
    {
        var calls = log.Category(ColumnNames.Call);
        var slides = SlideHabit.ManSides(log);
        var spots = new List<PressureSpot>();
        foreach (var situation in CardSituation.Of(log))
        {
            var here = slides.Where(situation.Holds).ToArray();
            var passes = Enumerable.Range(0, log.Rows).Count(r => situation.Holds(r) && calls[r] == "pass");
            var runs = Enumerable.Range(0, log.Rows).Count(r => situation.Holds(r) && calls[r] == "run");
            if (here.Length < FewestPlays || passes < MostlyPass * (passes + runs))
            {
                continue;
            }

            var habit = SlideHabit.Count(log, situation.Name, here, ranges);
            if (habit.IsHabit)
            {
                var toBack = habit.ShareAway > 0.5;
                var count = toBack ? habit.Away : habit.Plays - habit.Away;
                spots.Add(new PressureSpot(
                    situation.Name,
                    passes,
                    (double)passes / (passes + runs),
                    toBack ? RunTo.ToBack : RunTo.Away,
                    here.Length,
                    count,
                    toBack ? habit.Range : new Interval(1 - habit.Range.High, 1 - habit.Range.Low),
                    toBack ? habit.Expected : 1 - habit.Expected));
            }
        }

        return [.. spots.OrderByDescending(s => s.Expected)];
    }
}
