using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>What follows a long play, a loss, an incompletion, a takeaway?</summary>
internal static class AfterPage
{
    private const int MostSnaps = 12;

    public static Page? Compose(Study study)
    {
        var plays = study.Plays.With(SnapBefore.Column(study.Plays));
        PlayLog After(string what) => plays.Where(SnapBefore.Name, what);
        var sudden = plays.Where(ColumnNames.SuddenChange, "yes");
        Situation[] rows =
        [
            Situation.Total(plays),
            new("Long play", "the snap after it", After(SnapBefore.Long)) { Spoken = "after a long play" },
            new("Loss or sack", "the snap after it", After(SnapBefore.Loss)) { Spoken = "after a loss" },
            new("Incompletion", "the snap after it", After(SnapBefore.Incomplete)) { Spoken = "after an incompletion" },
            new("Other gain", "the snap after it", After(SnapBefore.Gain)) { Spoken = "after an ordinary gain" },
            .. Sudden(plays, sudden),
        ];
        if (rows.Skip(1).All(row => row.IsGroup || row.Plays.Rows == 0))
        {
            return null;
        }

        var limits = study.Week.Boundaries;
        return new Page("after", "After a long play or a loss", CallFinding.Of(study, rows, "No sure change of call after what just happened: every row could be the team rate."))
        {
            Deck = CallTable.Deck,
            Blocks =
            [
                CallTable.Of(study, "After", rows),
                Paragraph.Note($"Long play: a run of {limits.ExplosiveRun} yards or more, a pass of {limits.ExplosivePass} or more. Only the next snap of the same series counts."),
                .. List(study, sudden, After(SnapBefore.Long)),
            ],
        };
    }

    private static IEnumerable<Situation> Sudden(PlayLog plays, PlayLog sudden)
    {
        if (!plays.IsCharted(ColumnNames.SuddenChange))
        {
            yield break;
        }

        yield return Situation.Group("Sudden change", plays, "the series after a takeaway or a failed fourth down");
        yield return new Situation("First snap", "", sudden.Where(ColumnNames.FirstOfSeries, "yes")) { Spoken = "on the first snap after a takeaway" };
        yield return new Situation("Whole series", "", sudden) { Spoken = "on a series after a takeaway" };
    }

    private static IEnumerable<Block> List(Study study, PlayLog sudden, PlayLog afterLong)
    {
        var first = sudden.Where(ColumnNames.FirstOfSeries, "yes");
        var (title, snaps) = first.Rows > 0 ? ("First snap after a takeaway", first) : ("The snap after a long play", afterLong);
        if (snaps.Rows > 0)
        {
            yield return new Heading(title, Words.Figured(snaps.Rows, "play"));
            yield return SnapTable.Of(study, snaps, MostSnaps);
        }

        if (!study.Plays.IsCharted(ColumnNames.SuddenChange))
        {
            yield return Paragraph.Note("Sudden change is not shown: it needs series and both teams' snaps in the chart.");
        }
    }
}
