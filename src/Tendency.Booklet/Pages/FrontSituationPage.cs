using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages;

/// <summary>Which front in which situation?</summary>
internal static class FrontSituationPage
{
    public static Page? Compose(Study study)
    {
        var card = study.FrontCard;
        if (card.Count == 0)
        {
            return null;
        }

        return new Page("front-situation", "Front by situation", Finding(card))
        {
            Deck = "Runs and passes in their present share. Sure: in how many of 100 re-draws the front allows least. Second: the next front, and what it gives away.",
            Blocks =
            [
                new Table(
                    [
                        new Column("Situation", 0, 96),
                        new Column("Plays", 96, 26, Align.Right),
                        new Column("Run share", 132, 54) { Axis = StripAxis.Shares($"team {Figures.Percent(study.Runs.Share ?? 0)}", study.Runs.Share) },
                        new Column("", 192, 82),
                        new Column("Top runs", 280, 100),
                        new Column("Our front", 390, 58),
                        new Column("Sure", 446, 24, Align.Right),
                        new Column("Second", 478, 38),
                    ],
                    [.. card.Select((line, i) => RowOf(study, line, i == 0))]) { Caption = "Front by situation" },
                Paragraph.Note("A thin situation leans on the whole mix by eight plays. “No clear winner”: under 60 of 100; then personnel decides."),
            ],
        };
    }

    private static string Finding(IReadOnlyList<FrontCardLine> card)
    {
        var sure = card.Where(line => line.Verdict == "best").ToArray();
        var fronts = card.Select(line => line.Front).Distinct().ToArray();
        return sure.Length > 0
            ? Headline.Of(
                $"{Words.Title(sure[0].Front)} is best {(sure.Length == card.Count ? "in every situation" : $"in {sure.Length} of {card.Count} situations")}.",
                sure.Select(line => line.Front).Distinct().Count() > 1 ? $"Others call for {Words.Join(sure.Select(line => line.Front).Distinct().Skip(1))}." : "")
            : fronts.Length == 1
                ? $"{Words.Title(fronts[0])} leads everywhere, and nowhere is it sure: no situation parts the fronts."
                : "No situation parts the fronts: none is best in 60 of 100 draws.";
    }

    private static TableRow RowOf(Study study, FrontCardLine line, bool total)
    {
        var run = new Share(line.Runs, line.Plays, line.RunShareRange, study.Runs.Share);
        return new TableRow(
            Cells.Name(Words.Title(line.Situation)),
            Cells.Count(line.Plays),
            Cells.Strip(run),
            Cells.Share(run),
            Cells.Counts(line.TopRuns.Select(top => new NamedCount(Words.Title(top.Run), top.Plays))),
            Cells.Text(RichText.Strong(Words.Title(line.Front)), line.Verdict == "best" ? "best" : "no clear winner"),
            Cells.Figure(Figures.Number(line.Sure * 100, 0)),
            Cells.Text(Words.Title(line.Second), line.Second.Length == 0 ? "" : $"+{Figures.Number(line.Cost * 100, 0)} pts"))
        {
            Kind = total ? RowKind.Total : RowKind.Plain,
        };
    }
}
