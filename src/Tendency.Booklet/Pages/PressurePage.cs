using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>How do they hold up when more men come than usual, and from which side?</summary>
internal static class PressurePage
{
    private const int MostAnswers = 4;

    public static Page? Compose(Study study)
    {
        var passes = study.Ranges.Plays.Where(ColumnNames.Call, "pass");
        if (passes.Rows == 0)
        {
            return null;
        }

        Situation[] rows = [.. RushTable.Rows(passes), .. From(passes)];
        var blitz = rows[3].Plays;
        return new Page("pressure", "Against pressure", Finding(study, rows))
        {
            Deck = "Dot: share of passes that gained enough. Bar: likely range. Line: all passes with charted rushers. Solid dot, bold percent: differs from it.",
            Blocks =
            [
                RushTable.Of(study, rows, "Sacked", row => Cells.Share(study.Of(row.Plays, OwnColumns.Sacked, "yes"))),
                Paragraph.Note($"Gained enough: {study.Week.Boundaries.SuccessFirst}, {study.Week.Boundaries.SuccessSecond} and {study.Week.Boundaries.SuccessLate}% of the yards to go on 1st, 2nd, and 3rd or 4th down. A scramble counts as the pass it was called."),
                .. MixBeside.Of(
                    study, MostAnswers, new MixSide("Concepts against five or more", "Concept", ColumnNames.PassConcept, blitz), new MixSide("Protections against five or more", "Protection", ColumnNames.Protection, blitz)),
                .. Calls(study),
            ],
        };
    }

    private static IEnumerable<Situation> From(PlayLog passes)
    {
        if (!passes.IsCharted(ColumnNames.PressureTo))
        {
            yield break;
        }

        yield return Situation.Group("Extra rusher came from", passes, "back offset");
        yield return new Situation("Back's side", "", passes.Where(ColumnNames.PressureTo, "to back")) { Spoken = "against pressure from the back's side" };
        yield return new Situation("Other side", "", passes.Where(ColumnNames.PressureTo, "away")) { Spoken = "against pressure away from the back" };
    }

    private static string Finding(Study study, Situation[] rows)
    {
        var line = study.Of(rows[0].Plays, ColumnNames.Success, "yes").Value;
        var said = rows.Where(row => row.Spoken.Length > 0).Select(row => (row.Spoken, Share: study.Of(row.Plays, ColumnNames.Success, "yes", line), Moves: study.Moves(row.Plays, ColumnNames.Success, "yes", line, rows[0].Plays)))
            .Where(row => row.Share.Plays >= CallVerdict.FewestPlays && row.Share.Differs)
            .OrderByDescending(row => row.Moves)
            .Select(row => $"{(row.Share.Lean() == Lean.Above ? "Their passes work more often" : "Their passes fail more often")} {row.Spoken}.").ToArray();
        if (said.Length > 0)
        {
            return Headline.Of(said);
        }

        var blitz = study.Of(rows[3].Plays, ColumnNames.Success, "yes", line);
        return blitz.Plays < Share.FewestPlays
            ? $"Too few passes against five or more rushers to read: {blitz.Plays}."
            : $"No rush is sure to hurt them: against five or more {Figures.Percent(blitz)} gained enough, likely {Figures.Range(blitz)}.";
    }

    private static IEnumerable<Block> Calls(Study study)
    {
        var plays = study.Plays;
        if (!plays.IsCharted(ColumnNames.Box))
        {
            yield break;
        }

        var box = plays.Number(ColumnNames.Box);
        Situation[] rows =
        [
            .. new[] { (0, 5, "5 or fewer"), (6, 6, "6"), (7, 7, "7"), (8, 11, "8 or more") }.Select(men =>
                new Situation(men.Item3, "in the box", plays.Where(row => box[row] is int count && count >= men.Item1 && count <= men.Item2))),
        ];
        yield return new Heading("What they call against the box", "men in the box before the snap");
        yield return CallTable.Of(study, "Box", rows.Where(row => row.Plays.Rows > 0));
    }
}
