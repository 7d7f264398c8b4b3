using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.SelfScouts;

namespace Tendency.Booklet.Pages.SelfScouts;

/// <summary>Every tell of ours, by what they want to know.</summary>
internal static class OwnTellsPage
{
    private const int MostOfAQuestion = 6;

    public static Page? Compose(Study study, SelfScoutReport report) => report.Tells.Count == 0 ? null
        : new Page("own-tells", "All we give away", Finding(report))
        {
            Deck = "Dot and bar: share and likely range; tick: our usual rate. Price: snaps a game they guess better, by the share to expect next time. Break: snaps of the next game to call otherwise, and whether that hides the tell on film, thins it or is not enough.",
            Blocks = [new Table(Columns, [.. report.Tells.GroupBy(t => t.Question.Name).SelectMany(question => Rows(study, question))]) { Caption = "Our tells" }],
        };

    private static readonly Column[] Columns =
    [
        new("Look", 0, 150),
        new("", 156, 76) { Axis = StripAxis.OwnBaselines() },
        new("Share, likely", 240, 86),
        new("Price", 334, 30, Align.Right),
        new("Break", 374, 78),
        new("On film", 460, 56),
    ];

    private static string Finding(SelfScoutReport report)
    {
        var first = report.Tells[0];
        var look = first.Tell.Conditions.Count == 0 ? $"all {first.Question.Among}" : string.Join(", ", first.Tell.Conditions.Select(condition => SituationWords.Of(condition.Name, condition.Value)));
        return Headline.First(
            $"{Words.Capital(Words.Counted(report.Tells.Count, "tell"))}; the dearest: {look}, {Words.Plain(SituationWords.Outcome(first.Question.Outcome, first.Tell.Outcome))}.",
            $"{Words.Capital(Words.Counted(report.Tells.Count, "tell"))}.");
    }

    private static IEnumerable<TableRow> Rows(Study study, IGrouping<string, SelfTell> question)
    {
        var tells = question.ToArray();
        yield return TableRow.GroupHead(question.Key, tells.Length > MostOfAQuestion ? $"{MostOfAQuestion} of {tells.Length}, dearest first" : "");
        foreach (var tell in tells.Take(MostOfAQuestion))
        {
            var share = study.Of(tell.Plays, tell.Question.Outcome, tell.Tell.Outcome, tell.Tell.BaseShare);
            yield return new TableRow(
                Cells.Name(
                    tell.Tell.Conditions.Count == 0 ? $"All {tell.Question.Among}" : SituationWords.Of(tell.Tell.Conditions),
                    Words.Plain(SituationWords.Outcome(tell.Question.Outcome, tell.Tell.Outcome))),
                Cells.Strip(share),
                Cells.Share(share),
                Cells.Figure(Figures.Number(tell.Cost)),
                Break(tell),
                Cells.Text(tell.History.IsSeen ? Figures.CountOf(tell.History.SeenCount, tell.History.SeenPlays) : "old", Since(tell)))
            { Plays = study.ListOf(tell.Plays) };
        }
    }

    private static Cell Break(SelfTell tell) => tell switch
    {
        { Advice: Advice.Keep } => Cells.Text("keep it", "it wins"),
        { Break: { NextGame: 0, CallsOnFilm: not null } } => Cells.Text("none", "the film hides it"),
        { Break.CallsOnFilm: not null } => Cells.Text(Snaps(tell.Break), "hides it"),
        { Break.CallsToThin: not null } => Cells.Text(Snaps(tell.Break), "thins it"),
        _ => Cells.Text(Snaps(tell.Break), "not enough"),
    };

    private static string Snaps(BreakCount plan) => Figures.CountOf(plan.NextGame, plan.SnapsAGame);

    private static string Since(SelfTell tell) =>
        tell.History.Since.Length > 0 ? $"since {tell.History.Since}" : tell.History.Faded.Length > 0 ? $"less since {tell.History.Faded}" : "all season";
}
