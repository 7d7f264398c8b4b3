using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>What comes on third down, and where does it turn from run to pass?</summary>
internal static class ThirdDownPage
{
    private const int LastColumn = 11;

    public static Page? Compose(Study study)
    {
        var third = study.Plays.Where(ColumnNames.Down, "3");
        if (third.Rows == 0)
        {
            return null;
        }

        var bands = Bands(study, third).ToArray();
        return new Page("third-down", "Third down", Turn(study, bands) ?? CallFinding.Of(study, bands, CallFinding.None(study, third, "on third down")))
        {
            Blocks =
            [
                .. Plot(study, third),
                new Heading("By yards to go"),
                TwoShareTable.Of(study, "Third and", "Converted", ColumnNames.Success, third, bands.Prepend(Situation.Total(third, "All"))),
                .. Looks(study, third),
            ],
        };
    }

    private static IEnumerable<Situation> Bands(Study study, PlayLog third)
    {
        var limits = study.Week.Boundaries;
        PlayLog Of(params string[] bands) => third.Where(ColumnNames.DistanceBand, bands);
        yield return new Situation("Short", $"1 to {limits.ShortMost}", Of("short")) { Spoken = "on third and short" };
        yield return new Situation("Medium", $"{limits.ShortMost + 1} to {limits.MediumMost}", Of("medium")) { Spoken = "on third and medium" };
        yield return new Situation("Long", $"{limits.MediumMost + 1} to {limits.LongMost}", Of("long")) { Spoken = "on third and long" };
        yield return new Situation("Extra long", $"{limits.LongMost + 1} or more", Of("extra long")) { Spoken = "on third and extra long" };
    }

    private static IEnumerable<Block> Plot(Study study, PlayLog third)
    {
        var judged = study.Of(third, ColumnNames.Success, "yes");
        if (judged.None)
        {
            yield break;
        }

        var distances = third.Number(ColumnNames.Distance);
        var stacks = Enumerable.Range(1, LastColumn).Select(yards => new PlayStack(
            yards == LastColumn ? $"{yards}+" : Figures.Count(yards),
            true,
            [.. Enumerable.Range(0, third.Rows).Where(row => distances[row] is int left && Math.Min(left, LastColumn) == yards)])).ToArray();
        yield return new Heading("Every third down", $"{Words.Figured(judged.Plays, "play")}. Solid: run. Open: pass. Above: converted ({judged.Count}). Below: stopped ({judged.Plays - judged.Count}).");
        yield return EveryPlay.Of(third, stacks, "converted", "yards to go", "stopped");
        if (judged.Plays < third.Rows)
        {
            yield return Paragraph.Note($"{Words.Figured(third.Rows - judged.Plays, "third down")} without a charted gain or wiped out by a penalty: not drawn, still counted as a call.");
        }
    }

    // What can be seen before the snap on third down.
    private static IEnumerable<Block> Looks(Study study, PlayLog third)
    {
        Situation[] rows =
        [
            .. Look(third, "By formation", DirectionTable.By(third, ColumnNames.Formation, 4)),
            .. Look(third, "By where the back stands", BackSpots.Of(third).Where(spot => spot.Plays.Rows >= Share.FewestPlays)),
        ];
        if (rows.Length > 0)
        {
            yield return new Heading("By what they show", "looks seen on five or more third downs");
            yield return TwoShareTable.Of(study, "Look", "Converted", ColumnNames.Success, third, rows, compact: true);
        }
    }

    private static IEnumerable<Situation> Look(PlayLog third, string name, IEnumerable<Situation> looks)
    {
        var rows = looks.ToArray();
        return rows.Length < 2 ? [] : rows.Prepend(Situation.Group(name, third));
    }

    /// <summary>"They throw on third and 7 or more": said at the distance from which every band leans one way.</summary>
    private static string? Turn(Study study, IReadOnlyList<Situation> bands)
    {
        var limits = study.Week.Boundaries;
        int[] from = [1, limits.ShortMost + 1, limits.MediumMost + 1, limits.LongMost + 1];
        int[] to = [limits.ShortMost, limits.MediumMost, limits.LongMost];
        var verdicts = bands.Select(band => CallVerdict.Of(study, band.Plays)).ToArray();
        var passFrom = verdicts.Length - verdicts.Reverse().TakeWhile(verdict => verdict.SurePass || verdict.Run.None).Count();
        var runTo = verdicts.TakeWhile(verdict => verdict.SureRun).Count();
        var throws = passFrom < verdicts.Length && verdicts.Skip(passFrom).Any(verdict => verdict.SurePass);
        var pass = throws ? passFrom == 0 ? "They throw on third down at any distance." : $"They throw on third and {from[passFrom]} or more." : "";
        var run = runTo > 0 ? runTo == verdicts.Length ? "They run on third down at any distance." : $"They run on third and {to[runTo - 1]} or less." : "";
        return pass.Length + run.Length == 0 ? null : Headline.Of(pass, run);
    }
}
