using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Brief;

/// <summary>Every sentence the brief may choose from, true or not: the choice tests them.</summary>
internal static class Claims
{
    public static IEnumerable<Claim> All(Study study) =>
    [
        .. Situations(study).SelectMany(situation => Calls(study, situation)),
        .. Directions(study).SelectMany(way => Ways(study, way)),
    ];

    internal sealed record When(string Topic, string Anchor, string Words, PlayLog Plays);

    private sealed record Direction(string Topic, string Anchor, string Column, PlayLog Plays, string Unit, string One, string OneSays, string Other, string OtherSays);

    // What is known before the snap. Run schemes and results are left out: they say run or pass by themselves.
    internal static IEnumerable<When> Situations(Study study)
    {
        var plays = study.Plays;
        foreach (var spot in BackSpots.Of(plays).Where(spot => spot.Name != "No back"))
        {
            yield return new When("back", "back-side", Words.Capital(spot.Spoken), spot.Plays);
        }

        foreach (var row in DownDistances.Of(study).Where(row => row.Spoken.Length > 0))
        {
            yield return new When("down", "down-distance", $"On {row.Spoken}", row.Plays);
        }

        var limits = study.Week.Boundaries;
        yield return new When("down", "down-distance", "On second or third and short", plays.Where(ColumnNames.DownDistance, "2 & short", "3 & short"));
        yield return new When("down", "third-down", $"On third and {limits.ShortMost + 1} or more", plays.Where(ColumnNames.DownDistance, "3 & medium", "3 & long", "3 & extra long"));
        yield return new When("down", "down-distance", $"On second or third and {limits.MediumMost + 1} or more", plays.Where(ColumnNames.DownDistance, "2 & long", "2 & extra long", "3 & long", "3 & extra long"));
        yield return new When("series", "first-of-series", "On the first snap of a series", plays.Where(ColumnNames.FirstOfSeries, "yes"));
        yield return new When("zone", "red-zone", "In the red zone", plays.Where(ColumnNames.FieldZone, "red zone", "tight red", "goal line"));
        foreach (var (column, topic, anchor, words) in new (string, string, string, Func<string, string>)[]
        {
            (ColumnNames.Formation, "formation", "formation", value => $"From {Words.Plain(value)}"),
            (ColumnNames.Personnel, "personnel", "personnel", value => $"With {value} personnel"),
            (ColumnNames.PreviousCall, "series", "first-of-series", value => $"After a {value}"),
        })
        {
            foreach (var (value, count) in CrossTab.Values(plays, column).Where(value => value.Count < plays.Rows))
            {
                yield return new When(topic, anchor, words(value), plays.Where(column, value));
            }
        }
    }

    private static IEnumerable<Direction> Directions(Study study)
    {
        var plays = study.Plays;
        var offset = plays.Where(ColumnNames.RunTo, "to back", "away");
        yield return new Direction("run way", "back-side", ColumnNames.RunTo, offset, "runs, back offset",
            "away", "Runs go away from an offset back.", "to back", "Runs go to the back's side.");
        yield return new Direction("run strength", "run-game", ColumnNames.RunToStrength, plays.Where(ColumnNames.RunToStrength, "to strength", "to weak"), "runs",
            "to strength", "Runs go to the strength.", "to weak", "Runs go away from the strength.");
        yield return new Direction("slide", "back-side", ColumnNames.SlideTo, plays.Where(ColumnNames.SlideTo, "to back", "away"), "slides",
            "away", "The slide goes away from the back.", "to back", "The slide goes to the back's side.");
    }

    private static IEnumerable<Claim> Calls(Study study, When when)
    {
        var verdict = CallVerdict.Of(study, when.Plays);
        if (verdict.DoingRun is { } runs)
        {
            yield return new Claim(when.Topic, when.Anchor, $"{when.Words}, they {runs}.", verdict.Run, "plays", "team run rate", when.Plays, ColumnNames.Call, "run");
        }
        else if (verdict.DoingPass is { } throws)
        {
            yield return new Claim(when.Topic, when.Anchor, $"{when.Words}, they {throws}.", verdict.Pass, "plays", "team pass rate", when.Plays, ColumnNames.Call, "pass");
        }
    }

    private static IEnumerable<Claim> Ways(Study study, Direction way)
    {
        var share = study.Of(way.Plays, way.Column, way.One, .5);
        var (value, sentence) = share.Lean() == Lean.Below ? (way.Other, way.OtherSays) : (way.One, way.OneSays);
        yield return new Claim(way.Topic, way.Anchor, sentence, study.Of(way.Plays, way.Column, value, .5), way.Unit, "even split", way.Plays, way.Column, value);
    }

    /// <summary>How many places were looked at: what the choice pays for.</summary>
    public static int Tried(Study study) => Situations(study).Count() + Directions(study).Count();
}
