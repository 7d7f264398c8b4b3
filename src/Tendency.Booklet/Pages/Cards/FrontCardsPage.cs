using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>A front drawn against the runs they call most: who fits which gap, what hits it, what happens when he is late.</summary>
internal static class FrontCardsPage
{
    /// <summary>The front that allows least.</summary>
    public static (string Anchor, string Name, Func<FrontRanking, FrontRank?> Front) First { get; } =
        ("front-cards", "Front cards, first choice", ranking => ranking.Ranks.Count > 0 ? ranking.Ranks[0] : null);

    /// <summary>The likeliest front beside it.</summary>
    public static (string Anchor, string Name, Func<FrontRanking, FrontRank?> Front) Second { get; } =
        ("front-cards-next", "Front cards, second choice", ranking => ranking.Ranks.Count > 0 ? FrontVerdict.Next(ranking) : null);

    public static Page? Compose(Study study, (string Anchor, string Name, Func<FrontRanking, FrontRank?> Front) choice)
    {
        if (study.Fronts is not { } check || choice.Front(check.Ranking) is not { } rank)
        {
            return null;
        }

        var cards = FrontCardCell.Of(study, check, rank.Front);
        if (cards.Count == 0)
        {
            return null;
        }

        return new Page(choice.Anchor, choice.Name, CardVerdict.Headline([.. cards.Select(card => card.Ledger)]))
        {
            Deck = "Heavy arrow: our fit, dashed: late. Thin dashes: their block. Dots: the ball. Gap on black: nobody’s, on gray: a late man’s.",
            Blocks = [.. cards.Select(card => Card(study, check, card))],
        };
    }

    private static Together Card(Study study, FrontCheck check, FrontCardCell card) => new(
    [
        new Heading(Against(card), Called(study, check, card)),
        Paragraph.Call(RichText.Strong(CardVerdict.Of(card.Ledger))),
        CardPicture.Of(card.Ledger, card.Look),
        new Space(5),
        LedgerTable.Of(study, check, card),
        new Paragraph(RichText.Strong("The ledger counts hats. ") + card.Ledger.Sentence + (card.SurfaceIsCharted ? "" : " Surface not charted: one tight end to the play is taken."), TextStyle.Deck),
        new SideBySide([new Side(250, [new Paragraph(RichText.Strong("The rating judges angles. ") + Opinion(card.Cell), TextStyle.Deck)]), new Side(254, [Results(study, check, card)])]),
    ]);

    private static string Against(FrontCardCell card) => Words.Title(card.Run.Scheme.Name) + (card.Side.Length == 0 ? "" : " " + card.Side);

    /// <summary>How often they call the scheme, and how often to this side.</summary>
    private static string Called(Study study, FrontCheck check, FrontCardCell card)
    {
        var all = check.Sample.Runs.Where(run => run.Scheme == card.Run.Scheme).ToArray();
        var sided = all.Count(run => run.RunTo is not null);
        var share = study.Of(new Tally(all.Length, check.Sample.Runs.Count), study.Plays.Take([.. check.Sample.Runs.Select(run => run.Row)]), ColumnNames.RunScheme, null);
        return Figures.Evidence(share, "runs") + (sided == 0 ? "" : $"; {Figures.CountOf(all.Count(run => run.RunTo == card.Run.Side), sided)} {card.Side}");
    }

    private static string Opinion(MatrixCell cell)
    {
        var opinion = cell.Opinion is { } said
            ? $"{Figures.Signed(said.Value, said.Value % 1 == 0 ? 0 : 1)} on −2 to +2: {said.Reason}. Confidence {said.Confidence}."
            : "Not rated: it counts as even.";
        return $"{opinion} With film: {Figures.Percent(cell.SuccessAllowed)} gain enough, likely {Figures.Range(new Interval(cell.Low, cell.High))}.";
    }

    private static Share Success(Study study, ChartedRun[] runs, double line) => study.Of(study.Plays.Take([.. runs.Select(run => run.Row)]), ColumnNames.Success, "yes", line);

    private static Table Results(Study study, FrontCheck check, FrontCardCell card)
    {
        var judged = card.Film(check).Where(run => run.IsRush && run.Success is not null).ToArray();
        var film = Success(study, judged, check.Expected);
        var here = Success(study, [.. judged.Where(run => run.Front == card.Cell.Front)], check.Expected);
        return new Table(
            [
                new Column("Gained enough", 0, 72),
                new Column("", 74, 64) { Axis = StripAxis.Shares($"usual {Figures.Percent(check.Expected)}", check.Expected) },
                new Column("Share, likely", 146, 108),
            ],
            [
                new TableRow(Cells.Text("film, any front"), Cells.Strip(film), new ShareCell(film) { Form = ShareForm.OneLine }),
                new TableRow(Cells.Text($"film, {Words.Title(card.Cell.Front)}"), Cells.Strip(here), new ShareCell(here) { Form = ShareForm.OneLine }),
            ])
        { Caption = "Success on film" };
    }
}
