using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages;

/// <summary>What gives the call away before the snap, tried on games it was not found in?</summary>
internal static class TellsPage
{
    private const int MostTells = 12;

    private sealed record Found(Tell Tell, string Column);

    public static Page? Compose(Study study)
    {
        if (study.Tells.Count == 0 || study.Tells.All(report => report.Searched == 0))
        {
            return null;
        }

        var tells = study.Tells.SelectMany(report => Distinct(report.Tells).Select(tell => new Found(tell, report.OutcomeColumn)))
            .OrderByDescending(found => Math.Max(found.Tell.DifferenceRange.Low, -found.Tell.DifferenceRange.High)).ToArray();
        var held = tells.Where(found => found.Tell.HeldUp).Take(MostTells).ToArray();
        var not = tells.Where(found => !found.Tell.HeldUp).Take(MostTells - held.Length).ToArray();
        return new Page("tells", "Tells", Finding(study, tells, held))
        {
            Deck = "Ranked by how far the likely range clears the usual rate (tick). Solid dot, bold percent: differs from it.",
            Blocks = tells.Length == 0 ? [Nothing(study)] : [TableOf(study, held, not), Paragraph.Note(Notes(study, tells.Length - held.Length - not.Length))],
        };
    }

    // More of one call is less of another: of one situation only what they do there is told.
    private static IEnumerable<Tell> Distinct(IEnumerable<Tell> tells) =>
        tells.GroupBy(tell => tell.Situation, StringComparer.Ordinal).Select(group => group.OrderByDescending(tell => tell.Difference > 0).ThenByDescending(tell => Math.Abs(tell.Difference)).First());

    private static string Finding(Study study, Found[] tells, Found[] held)
    {
        var searched = study.Tells.Sum(report => report.Searched);
        return tells.Length == 0 ? "No tell: nothing they show before the snap gives the call away for sure."
            : study.Games.Count < 2 ? $"{Words.Capital(Words.Counted(tells.Length, "tell"))} in one game; none could be tried on another."
            : held.Length == 0 ? $"No tell holds: {Words.Number(tells.Length)} found in {searched} places, none on games left out."
            : held.Length == 1 ? "One tell holds up on games it was not found in."
            : $"{Words.Capital(Words.Number(held.Length))} tells hold up on games they were not found in{Thin(held)}.";
    }

    // Five plays are the least a rate is printed for; a tell tried on fewer has not been put to much of a test.
    private static string Thin(Found[] held) => held.Count(found => found.Tell.HeldOutPlays < Share.FewestPlays) is var thin and > 0
        ? $"; {Words.Number(thin)} of them {(thin == 1 ? "was" : "were")} tried on under {Words.Counted(Share.FewestPlays, "play")}" : "";

    private static EmptyState Nothing(Study study) => new(
        RichText.Strong("No tell holds.") + $" {Figures.Count(study.Tells.Sum(report => report.Searched))} pairs of situation and call were looked at, over {Words.Join(study.Tells[0].Dimensions.Select(name => name.Replace('_', ' ')))}; none beat the usual rate once the search is paid for.");

    private static Table TableOf(Study study, Found[] held, Found[] not)
    {
        var rows = held.Select((found, i) => RowOf(study, found, i + 1)).ToList();
        if (not.Length > 0)
        {
            rows.Add(TableRow.GroupHead("Not yet", "held-out counts are no more than the usual rate, or no game could be left out"));
            rows.AddRange(not.Select((found, i) => RowOf(study, found, held.Length + i + 1)));
        }

        return new Table(
            [
                new Column("", 0, 14, Align.Right),
                new Column("When you see it, and what comes", 22, 170),
                new Column("How often", 206, 86) { Axis = StripAxis.OwnBaselines() },
                new Column("Count, likely", 304, 70),
                new Column("Game by game", 380, 56),
                new Column("Held out", 444, 72),
            ],
            rows)
        { Caption = "Tells", RowHeight = 43.5 };
    }

    private static TableRow RowOf(Study study, Found found, int rank)
    {
        var tell = found.Tell;
        var share = new Share(tell.Count, tell.Plays, tell.Range, tell.BaseShare);
        var plays = study.ListOf(study.Plays.Take([.. tell.Rows]));
        var games = study.Games.Select(game => tell.ByGame.FirstOrDefault(own => own.Game == game) is { Plays: > 0 } own ? new Share(own.Count, own.Plays) : new Share(0, 0));
        var heldOut = new Share(tell.HeldOutCount, tell.HeldOutPlays, tell.HeldOutPlays == 0 ? null : study.Of(new Breakdown.Counts.Tally(tell.HeldOutCount, tell.HeldOutPlays)).Likely);
        return new TableRow(
            Cells.Figure(RichText.Strong(Figures.Count(rank))),
            Cells.Cue(RichText.Strong(SituationWords.Of(tell.Conditions)), (RichText)"they " + RichText.Strong(Outcome(found)), plays),
            Cells.Strip(share),
            new ShareCell(share) { Form = ShareForm.WithBase },
            Cells.Spark(games, tell.BaseShare),
            heldOut.None ? Cells.Text("not found with", "a game left out") : new ShareCell(heldOut) { Form = ShareForm.Stacked })
        {
            Plays = plays,
        };
    }

    // Said against the usual: a rate under it is a habit not to.
    private static string Outcome(Found found) =>
        Words.Plain(SituationWords.Outcome(found.Column, found.Tell.Outcome)) + (found.Tell.Difference < 0 ? " less" : "");

    private static RichText Notes(Study study, int others)
    {
        var searched = study.Tells.Sum(report => report.Searched);
        return Words.Sentences(
            string.Join(", ", study.Games.Select(game => $"{study.ShortGames[game]} {game}")) + ".",
            $"{Figures.Count(searched)} pairs of situation and call were looked at; about one in ten of those listed may be luck.",
            "Held out: counts in games left out of the search that found it.",
            others > 0 ? $"{Words.Figured(others, "more tell")} not shown." : "",
            "Play numbers are the first; the cut-up file has all.");
    }
}
