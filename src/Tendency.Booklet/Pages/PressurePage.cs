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
    private const string Sacked = "sacked";
    private const int FourRush = 4;
    private const int MostAnswers = 4;

    public static Page? Compose(Study study)
    {
        var passes = WithSacks(study.Plays.Where(ColumnNames.Call, "pass"));
        if (passes.Rows == 0)
        {
            return null;
        }

        var rushers = passes.Number(ColumnNames.Rushers);
        PlayLog Rush(Func<int, bool> wanted) => passes.Where(row => rushers[row] is int men && wanted(men));
        var charted = Rush(_ => true);
        var blitz = Rush(men => men > FourRush);
        Situation[] rows =
        [
            Situation.Total(charted, "All passes"),
            new("3 or fewer", "rushers", Rush(men => men < FourRush)) { Spoken = "against three rushers" },
            new("4", "rushers", Rush(men => men == FourRush)) { Spoken = "against four" },
            new("5 or more", "rushers", blitz) { Spoken = "against five or more" },
            .. From(passes),
        ];
        return new Page("pressure", "Against pressure", Finding(study, rows))
        {
            Deck = "Dot: share of passes that gained enough. Bar: likely range. Line: all passes with charted rushers. Solid dot, bold percent: differs from it.",
            Blocks =
            [
                Outcomes(study, rows, charted),
                Paragraph.Note($"Gained enough: {study.Week.Boundaries.SuccessFirst}, {study.Week.Boundaries.SuccessSecond} and {study.Week.Boundaries.SuccessLate}% of the yards to go on 1st, 2nd, and 3rd or 4th down. A scramble counts as the pass it was called."),
                .. MixBeside.Of(
                    study, MostAnswers, new MixSide("Concepts against five or more", "Concept", ColumnNames.PassConcept, blitz), new MixSide("Protections against five or more", "Protection", ColumnNames.Protection, blitz)),
                .. Calls(study),
            ],
        };
    }

    private static PlayLog WithSacks(PlayLog passes)
    {
        var results = passes.Category(ColumnNames.Result);
        return passes.With(CategoryColumn.FromWords(Sacked, Enumerable.Range(0, passes.Rows).Select(row => results[row] switch { "" or "penalty" => "", "sack" => "yes", _ => "no" })));
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
        var said = rows.Where(row => row.Spoken.Length > 0).Select(row => (row.Spoken, Share: study.Of(row.Plays, ColumnNames.Success, "yes", line)))
            .Where(row => row.Share.Plays >= CallVerdict.FewestPlays && row.Share.Differs)
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

    private static Table Outcomes(Study study, Situation[] rows, PlayLog charted)
    {
        var line = study.Of(charted, ColumnNames.Success, "yes").Value;
        return new Table(
            [
                new Column("Rush", 0, 82),
                new Column("Passes", 82, 32, Align.Right),
                new Column("Gained enough", 130, 106) { Axis = StripAxis.Shares(line is { } rate ? $"all {Figures.Percent(rate)}" : "", line) },
                new Column("Share, likely", 250, 84),
                new Column("Yards", 336, 60, Align.Right),
                new Column("Sacked", 416, 100),
            ],
            [.. rows.Select(row => RowOf(study, row, line))])
        { Caption = "Passes by rush" };
    }

    private static TableRow RowOf(Study study, Situation row, double? line)
    {
        if (row.IsGroup)
        {
            return TableRow.GroupHead(row.Name, row.Remark);
        }

        var enough = study.Of(row.Plays, ColumnNames.Success, "yes", line);
        var sacked = study.Of(row.Plays, Sacked, "yes");
        return new TableRow(
            Cells.Name(row.Name, row.Remark), Cells.Count(row.Plays.Rows), Cells.Strip(enough), Cells.Share(enough), Cells.Figure(Yards.Of(study, row.Plays).Printed), Cells.Share(sacked))
        {
            Kind = row.IsTotal ? RowKind.Total : RowKind.Plain,
            Plays = row.IsTotal ? null : study.ListOf(row.Plays),
        };
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
