using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Protections;

/// <summary>Which way their line slides from the back in one group of passes.</summary>
/// <param name="Plays">Passes with a slide that leaves a man side, the back offset and both charted.</param>
/// <param name="Away">Slides away from the back: the man side, where a blocker stands alone with the back, is his.</param>
/// <param name="Range">Range of the share away.</param>
/// <param name="Expected">The share away to go by: one group of few passes leans on all of them.</param>
public sealed record SlideHabit(string Group, int Plays, int Away, Interval Range, double Expected)
{
    private const int MostFormations = 6;
    private const int FewestPlays = 5;

    public double ShareAway => (double)Away / Plays;

    /// <summary>Whether the interval leaves out an even split.</summary>
    public bool IsHabit => !Range.Contains(0.5);

    /// <summary>All such passes, then by down, by distance on third down, by the back's side and by formation.</summary>
    public static IReadOnlyList<SlideHabit> Of(PlayLog log, LikelyRanges ranges)
    {
        var rows = ManSides(log);
        var downs = log.Category(ColumnNames.Down);
        var bands = log.Category(ColumnNames.DistanceBand);
        var backs = log.Category(ColumnNames.BackSide);
        var formations = log.Category(ColumnNames.Formation);
        var habits = new List<SlideHabit>();
        void Add(string group, Func<int, bool> holds)
        {
            var here = rows.Where(holds).ToArray();
            if (here.Length >= FewestPlays)
            {
                habits.Add(Count(log, group, here, ranges));
            }
        }

        Add("all passes", _ => true);
        foreach (var (down, name) in new[] { ("1", "first down"), ("2", "second down"), ("3", "third down") })
        {
            Add(name, r => downs[r] == down);
        }

        foreach (var band in bands.Levels.Skip(1))
        {
            Add($"third & {band}", r => downs[r] == "3" && bands[r] == band);
        }

        Add("back strong", r => backs[r] == "strong");
        Add("back weak", r => backs[r] == "weak");
        var main = rows.Where(r => formations[r].Length > 0).GroupBy(r => formations[r], StringComparer.Ordinal).OrderByDescending(g => g.Count()).Take(MostFormations);
        foreach (var formation in main.Select(g => g.Key).ToArray())
        {
            Add(formation, r => formations[r] == formation);
        }

        return habits;
    }

    /// <summary>Passes whose slide leaves a man side; a full slide, a sprint-out or a screen leaves none.</summary>
    internal static int[] ManSides(PlayLog log)
    {
        var calls = log.Category(ColumnNames.Call);
        var slides = log.Category(ColumnNames.SlideTo);
        var protections = log.Category(ColumnNames.Protection);
        return [.. Enumerable.Range(0, log.Rows).Where(r =>
            calls[r] == "pass" && slides[r].Length > 0 && protections[r] is not ("full slide" or "sprint pro" or "screen pro"))];
    }

    internal static SlideHabit Count(PlayLog log, string group, int[] rows, LikelyRanges ranges)
    {
        var here = log.Take(rows);
        var away = CrossTab.Share(here, ColumnNames.SlideTo, RunToWords.Away);
        var expected = Shrunk.Share([log.Take(ManSides(log)), here], ColumnNames.SlideTo, RunToWords.Away, ranges.Level).Share;
        return new SlideHabit(group, rows.Length, away.Count, ranges.Of(here, ColumnNames.SlideTo, RunToWords.Away), expected);
    }
}
