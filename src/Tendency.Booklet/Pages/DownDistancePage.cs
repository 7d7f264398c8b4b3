using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>What do they call on this down and distance?</summary>
internal static class DownDistancePage
{
    private const int MostZones = 4;

    public static Page? Compose(Study study)
    {
        var rows = DownDistances.Of(study).ToArray();
        return new Page("down-distance", "Down and distance", Finding(study, rows))
        {
            Deck = CallTable.Deck,
            Blocks =
            [
                CallTable.Of(study, "Situation", rows.Concat(Zones(study))),
                Paragraph.Note("Counts at the right of each name are plays; ties keep the order in which they were first called. Rows under 5 plays show the count only."),
            ],
        };
    }

    // The field tells apart what the down alone does not; zones with too few plays would only fill the page.
    private static IEnumerable<Situation> Zones(Study study)
    {
        var zones = CrossTab.Values(study.Plays, ColumnNames.FieldZone).Where(zone => zone.Count >= Share.FewestPlays).Take(MostZones).Select(zone => zone.Value).ToArray();
        if (zones.Length < 2)
        {
            yield break;
        }

        yield return Situation.Group("By field zone", study.Plays, "(also counted in the rows above)");
        foreach (var zone in study.Plays.Category(ColumnNames.FieldZone).Levels.Where(zones.Contains))
        {
            yield return new Situation(Words.Title(zone), "", study.Plays.Where(ColumnNames.FieldZone, zone));
        }
    }

    internal static string Finding(Study study, IReadOnlyList<Situation> rows)
    {
        var verdicts = rows.Where(row => row.Spoken.Length > 0).Select(row => (row.Spoken, Verdict: CallVerdict.Of(study, row.Plays))).ToArray();
        var runs = Downs([.. verdicts.Where(row => row.Verdict.SureRun).Select(row => row.Spoken)]);
        var passes = Downs([.. verdicts.Where(row => row.Verdict.SurePass).Select(row => row.Spoken)]);
        var leans = verdicts.Where(row => row.Verdict is { SureRun: false, SurePass: false } && row.Verdict.Doing is not null)
            .Select(row => $"they {row.Verdict.Doing} on {row.Spoken}").ToArray();
        return (runs.Length, passes.Length) switch
        {
            ( > 0, > 0) => Headline.First($"They run on {runs}; they throw on {passes}.", $"Runs on {runs}; passes on {passes}.", "Several downs give the call away, both ways: the solid dots below."),
            ( > 0, 0) => Headline.First($"They run on {runs}. No down is a sure pass.", $"They run on {runs}."),
            (0, > 0) => Headline.First($"They throw on {passes}. No down is a sure run.", $"They throw on {passes}."),
            _ when leans.Length > 0 => Headline.First(Words.Capital($"{Words.Join(leans)}."), Words.Capital($"{leans[0]}.")),
            _ => "No down and distance gives run or pass away.",
        };
    }

    /// <summary>Said together where they can be: "second or third and short", "third and medium or long".</summary>
    private static string Downs(string[] spoken)
    {
        var pairs = spoken.Select(words => words.Split(" and ", 2)).ToArray();
        string Rest(string[] pair) => pair.Length > 1 ? pair[1] : "";
        var byDistance = pairs.GroupBy(Rest).Any(group => group.Key.Length > 0 && group.Count() > 1);
        var together = byDistance
            ? pairs.GroupBy(Rest).SelectMany(group => group.Key.Length == 0
                ? group.Select(pair => pair[0])
                : [$"{Words.Join(group.Select(pair => pair[0]), "or")} and {group.Key}"])
            : pairs.GroupBy(pair => pair[0]).Select(group => Rest(group.First()).Length == 0 ? group.Key : $"{group.Key} and {Words.Join(group.Select(Rest), "or")}");
        return Words.Join(together);
    }
}
