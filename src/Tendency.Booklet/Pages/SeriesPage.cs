using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>How do they open a series, and what follows a run or a pass?</summary>
internal static class SeriesPage
{
    public static Page? Compose(Study study)
    {
        var first = study.Plays.Where(ColumnNames.FirstOfSeries, "yes");
        if (first.Rows == 0)
        {
            return null;
        }

        var rows = Rows(study, first).ToArray();
        return new Page("first-of-series", "First of series", CallFinding.Of(study, rows, CallFinding.None(study, first, "on the first snap of a series")))
        {
            Deck = CallTable.Deck,
            Blocks = [CallTable.Of(study, "Situation", rows)],
        };
    }

    private static IEnumerable<Situation> Rows(Study study, PlayLog first)
    {
        var plays = study.Plays;
        yield return Situation.Total(plays);
        yield return new Situation("First snap", "of a series", first) { Spoken = "on the first snap of a series" };
        yield return new Situation("Later snaps", "of a series", plays.Where(ColumnNames.FirstOfSeries, "no"));
        yield return Situation.Group("Later snaps, by the call before", first);
        yield return new Situation("After a run", "", plays.Where(ColumnNames.PreviousCall, "run")) { Spoken = "after a run" };
        yield return new Situation("After a pass", "", plays.Where(ColumnNames.PreviousCall, "pass")) { Spoken = "after a pass" };
        foreach (var row in Split(first, ColumnNames.FieldZone, "First snap, by field zone", 4, zone => $"on a first snap {InZone(zone)}"))
        {
            yield return row;
        }

        foreach (var row in Split(first, ColumnNames.Formation, "First snap, by formation", 4, formation => $"from {Words.Plain(formation)} on a first snap"))
        {
            yield return row;
        }
    }

    // Zones in field order, formations by count; crumbs under five plays stay off the page.
    private static IEnumerable<Situation> Split(PlayLog first, string column, string group, int most, Func<string, string> spoken)
    {
        var levels = first.Category(column).Levels;
        var kept = CrossTab.Values(first, column).Where(value => value.Count >= Share.FewestPlays).Take(most).Select(value => value.Value).ToArray();
        if (kept.Length < 2)
        {
            yield break;
        }

        yield return Situation.Group(group, first);
        foreach (var value in column == ColumnNames.FieldZone ? levels.Where(kept.Contains) : kept)
        {
            yield return new Situation(Words.Title(value), "", first.Where(column, value)) { Spoken = spoken(value) };
        }
    }

    internal static string InZone(string zone) => zone switch
    {
        "backed up" => "backed up",
        "coming out" => "coming out from deep",
        "goal line" => "on the goal line",
        _ => $"in the {zone}",
    };
}
