using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>What do they call when the clock, or the score, presses?</summary>
internal static class ClockPage
{
    private const int MostSnaps = 7;

    public static Page? Compose(Study study)
    {
        var plays = study.Plays;
        var two = plays.Where(ColumnNames.ClockState, "two minute");
        var four = plays.Where(ColumnNames.ClockState, "four minute");
        if (two.Rows + four.Rows == 0)
        {
            return null;
        }

        var limits = study.Week.Boundaries;
        Situation[] rows =
        [
            Situation.Total(plays),
            new("Two minute", "late in a half", two) { Spoken = "in the two-minute drill" },
            new("Four minute", "protecting a lead", four) { Spoken = "in the four-minute drill" },
            new("Other times", "", plays.Where(ColumnNames.ClockState, "normal")),
            .. Scores(plays),
        ];
        var snaps = two.Rows >= four.Rows ? two : four;
        return new Page("clock", "Clock and score", CallFinding.Of(study, rows, None(study, two, four)))
        {
            Deck = CallTable.Deck,
            Blocks =
            [
                CallTable.Of(study, "Situation", rows),
                Paragraph.Note($"Two minute: the last {Words.Number(limits.TwoMinuteSeconds / 60)} minutes of a half, in the second half only when not leading. Four minute: the last {Words.Number(limits.FourMinuteSeconds / 60)} minutes of the game with a lead of 1 to {limits.FourMinuteLead}."),
                new Heading(two.Rows >= four.Rows ? "Two-minute snaps" : "Four-minute snaps", Words.Figured(snaps.Rows, "play")),
                SnapTable.Of(study, snaps, MostSnaps),
            ],
        };
    }

    private static IEnumerable<Situation> Scores(PlayLog plays)
    {
        var scores = plays.Category(ColumnNames.ScoreState);
        if (!scores.IsCharted)
        {
            yield break;
        }

        yield return Situation.Group("By the score", plays, "offense's lead before the snap");
        foreach (var level in scores.Levels.Skip(1))
        {
            var own = plays.Where(ColumnNames.ScoreState, level);
            if (own.Rows > 0)
            {
                yield return new Situation(Words.Title(level), "", own) { Spoken = level == "tied" ? "when tied" : $"when {level}" };
            }
        }
    }

    private static string None(Study study, PlayLog two, PlayLog four) =>
        CallFinding.None(study, two.Rows >= four.Rows ? two : four, two.Rows >= four.Rows ? "in the two-minute drill" : "in the four-minute drill");
}
