using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>What changes inside the red zone?</summary>
internal static class RedZonePage
{
    public static Page? Compose(Study study)
    {
        var red = study.Ranges.Plays.Where(ColumnNames.FieldZone, "red zone", "tight red", "goal line");
        if (red.Rows == 0)
        {
            return null;
        }

        var zones = Zones(study, red).ToArray();
        var downs = Downs(red).ToArray();
        return new Page("red-zone", "Red zone", CallFinding.Of(study, [.. zones, .. downs], CallFinding.None(study, red, "in the red zone")))
        {
            Blocks =
            [
                .. Plot(study, red),
                new Heading("By ball spot"),
                TwoShareTable.Of(study, "Ball on", "Touchdown", OwnColumns.Scored, red, zones.Prepend(Situation.Total(red, "All red zone"))),
                new Heading("By down", "inside the red zone"),
                CallTable.Of(study, "Down", downs),
                .. TriesPage.StandAlone(study, TriesPage.Tries(study).Rows) ? [] : TriesPage.List(study),
            ],
        };
    }

    private static IEnumerable<Situation> Zones(Study study, PlayLog red)
    {
        var limits = study.Week.Boundaries;
        yield return new Situation($"{limits.RedZoneMost} to {limits.TightRedMost + 1}", "", red.Where(ColumnNames.FieldZone, "red zone")) { Spoken = $"from the {limits.RedZoneMost} to the {limits.TightRedMost + 1}" };
        yield return new Situation($"{limits.TightRedMost} to {limits.GoalLineMost + 1}", "", red.Where(ColumnNames.FieldZone, "tight red")) { Spoken = $"from the {limits.TightRedMost} to the {limits.GoalLineMost + 1}" };
        yield return new Situation($"{limits.GoalLineMost} and in", "", red.Where(ColumnNames.FieldZone, "goal line")) { Spoken = $"inside the {limits.GoalLineMost + 1}" };
    }

    private static IEnumerable<Situation> Downs(PlayLog red)
    {
        foreach (var (down, name, word) in new[] { ("1", "1st down", "first"), ("2", "2nd down", "second"), ("3", "3rd down", "third"), ("4", "4th down", "fourth") })
        {
            var plays = red.Where(ColumnNames.Down, down);
            if (plays.Rows > 0)
            {
                yield return new Situation(name, "", plays) { Spoken = $"on {word} down in the red zone" };
            }
        }
    }

    private static IEnumerable<Block> Plot(Study study, PlayLog red)
    {
        var judged = study.Of(red, ColumnNames.Success, "yes");
        if (judged.None)
        {
            yield break;
        }

        var toGoal = red.Number(ColumnNames.YardsToGoal);
        var most = study.Week.Boundaries.RedZoneMost;
        var bin = (most + 24) / 25;
        var stacks = Enumerable.Range(0, (most + bin - 1) / bin).Select(i => most - (i * bin)).Select(yards => new PlayStack(
            Figures.Count(yards),
            yards % 5 == 0,
            [.. Enumerable.Range(0, red.Rows).Where(row => toGoal[row] is int left && left <= yards && left > yards - bin)])).ToArray();
        yield return new Heading("Every play", $"{Words.Figured(judged.Plays, "play")}. Solid: run. Open: pass. Above: gained enough ({judged.Count}). Below: did not ({judged.Plays - judged.Count}).");
        yield return EveryPlay.Of(red, stacks, "enough", "ball on", "stopped", goalLine: true);
    }
}
