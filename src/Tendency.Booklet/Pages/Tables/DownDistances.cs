using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Weeks;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>Down and distance, a row a situation.</summary>
internal static class DownDistances
{
    /// <summary>All plays, first downs, then second and third by distance, fourth; rows that never occurred stay, for a plan needs to know that too.</summary>
    public static IEnumerable<Situation> Of(Study study)
    {
        var plays = study.Ranges.Plays;
        var limits = study.Week.Boundaries;
        yield return Situation.Total(plays);
        yield return new Situation("1st & 10", "", plays.Where(ColumnNames.DownDistance, "1 & 10")) { Spoken = "first and 10" };
        var goal = plays.Where(ColumnNames.DownDistance, "1 & goal");
        if (goal.Rows > 0)
        {
            yield return new Situation("1st & goal", "", goal) { Spoken = "first and goal" };
        }

        var other = plays.Where(ColumnNames.DownDistance, "1 & short", "1 & medium", "1 & long", "1 & extra long");
        if (other.Rows > 0)
        {
            yield return new Situation("1st, other", "not 10 to go", other);
        }

        foreach (var (down, ordinal, word) in new[] { ("2", "2nd", "second"), ("3", "3rd", "third") })
        {
            foreach (var band in Bands(plays, down, ordinal, word, limits))
            {
                yield return band;
            }
        }

        yield return new Situation("4th", "went for it", plays.Where(ColumnNames.Down, "4")) { Spoken = "fourth down" };
    }

    private static IEnumerable<Situation> Bands(PlayLog plays, string down, string ordinal, string word, Boundaries limits)
    {
        PlayLog Of(params string[] bands) => plays.Where(ColumnNames.DownDistance, [.. bands.Select(band => $"{down} & {band}")]);
        yield return new Situation($"{ordinal} short", $"1 to {limits.ShortMost}", Of("short")) { Spoken = $"{word} and short" };
        yield return new Situation($"{ordinal} medium", $"{limits.ShortMost + 1} to {limits.MediumMost}", Of("medium")) { Spoken = $"{word} and medium" };
        yield return new Situation($"{ordinal} long", $"{limits.MediumMost + 1} or more", Of("long", "extra long")) { Spoken = $"{word} and long" };
    }
}
