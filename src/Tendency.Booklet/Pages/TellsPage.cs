using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
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
            .OrderByDescending(found => found.Tell.ExpectedDifference * Math.Sign(found.Tell.Difference)).ToArray();
        var held = tells.Where(found => found.Tell.HeldUp).Take(MostTells).ToArray();
        var not = tells.Where(found => !found.Tell.HeldUp).Take(MostTells - held.Length).ToArray();
        return new Page("tells", "Tells", Finding(study, tells, held))
        {
            Deck = "Ranked by what to expect next time: few plays lean on the looks they are part of. Tick: usual rate. Solid dot, bold percent: differs from it.",
            Blocks = tells.Length == 0 ? [Nothing(study)] : [new Paragraph(Tried(study, tells), TextStyle.Deck), TableOf(study, held, not), Paragraph.Note(Notes(study, tells.Length - held.Length - not.Length))],
        };
    }

    // More of one call is less of another: of one situation only what they do there is told.
    private static IEnumerable<Tell> Distinct(IEnumerable<Tell> tells) =>
        tells.GroupBy(tell => tell.Situation, StringComparer.Ordinal).Select(group => group.OrderByDescending(tell => tell.Difference > 0).ThenByDescending(tell => Math.Abs(tell.Difference)).First());

    private static string Finding(Study study, Found[] tells, Found[] held)
    {
        return tells.Length == 0 ? "No tell: nothing they show before the snap gives the call away for sure."
            : study.Games.Count < 2 ? $"{Words.Capital(Words.Counted(tells.Length, "tell"))} in one game; none could be tried on another."
            : held.Length == 0 ? $"No tell holds: {Words.Number(tells.Length)} found, none held on games left out."
            : held.Length == 1 ? "One tell is found again with a game left out, and holds there."
            : $"{Words.Capital(Words.Number(held.Length))} tells are found again with a game left out, and hold there.";
    }

    /// <summary>What the search owes its reader: how many pairs were tried, and how many of the list may be luck.</summary>
    private static RichText Tried(Study study, Found[] tells)
    {
        var luck = tells.Length * study.Tells[0].Fdr;
        return RichText.Strong($"{Figures.Count(study.Tells.Sum(report => report.Searched))} pairs of situation and call were tried.")
            + $" The list stops where one in {Words.Number((int)Math.Round(1 / study.Tells[0].Fdr))} may be a false alarm: of these {Words.Number(tells.Length)}, {(luck < 1 ? "at most one or so" : $"about {Words.Number((int)Math.Round(luck))}")}."
            + (study.TellsAnew is not { } anew ? "" : $" Searched again without each game in turn, what was listed came {Figures.Percent((double)anew.Count / anew.Plays)} of the time in that game ({Figures.CountOf(new Share(anew.Count, anew.Plays))}), {Figures.Percent(anew.ShareFound)} where it was found, {Figures.Percent(anew.UsualShare)} as usual.");
    }

    private static EmptyState Nothing(Study study) => new(
        RichText.Strong("No tell holds.") + $" {Figures.Count(study.Tells.Sum(report => report.Searched))} pairs of situation and call were looked at, over {Words.Join(study.Tells[0].Dimensions.Select(name => name.Replace('_', ' ')))}; none beat the usual rate once the search is paid for.");

    private static Table TableOf(Study study, Found[] held, Found[] not)
    {
        var rows = held.Select((found, i) => RowOf(study, found, i + 1)).ToList();
        if (not.Length > 0)
        {
            var thin = not.Where(found => !found.Tell.WasTried).ToArray();
            var failed = not.Except(thin).ToArray();
            rows.AddRange(Group(study, "Not put to the test", $"tried on under {Words.Counted(Share.FewestPlays, "play")} of games left out, or on none", thin, held.Length));
            rows.AddRange(Group(study, "Did not hold", "on games left out no more than usual", failed, held.Length + thin.Length));
        }

        return new Table(
            [
                new Column("", 0, 14, Align.Right),
                new Column("When you see it, and what comes", 22, 170),
                new Column("How often", 206, 86) { Axis = StripAxis.OwnBaselines() },
                new Column("Count, likely", 304, 70),
                new Column("Game by game", 380, 56),
                new Column("Held out; games", 442, 74),
            ],
            rows)
        { Caption = "Tells", RowHeight = 43.5 };
    }

    private static IEnumerable<TableRow> Group(Study study, string name, string remark, Found[] tells, int before) =>
        tells.Length == 0 ? [] : tells.Select((found, i) => RowOf(study, found, before + i + 1)).Prepend(TableRow.GroupHead(name, remark));

    private static TableRow RowOf(Study study, Found found, int rank)
    {
        var tell = found.Tell;
        var seen = study.Plays.Take([.. tell.Rows]);
        var share = study.Of(seen, found.Column, tell.Outcome, tell.BaseShare);
        var plays = study.ListOf(seen);
        var games = study.Games.Select(game => tell.ByGame.FirstOrDefault(own => own.Game == game) is { Plays: > 0 } own ? new Share(own.Count, own.Plays) : new Share(0, 0));
        var heldOut = study.Of(seen.Where(ColumnNames.Game, [.. tell.ByGame.Where(game => game.FoundWithoutIt).Select(game => game.Game)]), found.Column, tell.Outcome);
        return new TableRow(
            Cells.Figure(RichText.Strong(Figures.Count(rank))),
            Cells.Cue(RichText.Strong(SituationWords.Of(tell.Conditions)), (RichText)"they " + RichText.Strong(Outcome(found)) + $", expect {Figures.Percent(tell.ShrunkShare)}", plays),
            Cells.Strip(share),
            new ShareCell(share) { Form = ShareForm.WithBase },
            Cells.Spark(games, tell.BaseShare),
            Cells.Text(
                heldOut.None ? "not found again" : RichText.Plain(Figures.CountOf(heldOut)) + (heldOut.TooFew ? "" : $", {Figures.Percent(heldOut)}"),
                heldOut.TooFew && !heldOut.None ? "too few" : $"found in {tell.ByGame.Count(game => game.FoundWithoutIt)} of {tell.Games}",
                $"same way {tell.GamesSameWay} of {tell.Games}"))
        {
            Plays = plays,
        };
    }

    // Said against the usual: a rate under it is a habit not to.
    private static string Outcome(Found found) =>
        Words.Plain(SituationWords.Outcome(found.Column, found.Tell.Outcome)) + (found.Tell.Difference < 0 ? " less" : "");

    private static RichText Notes(Study study, int others)
    {
        return Words.Sentences(
            string.Join(", ", study.Games.Select(game => $"{study.ShortGames[game]} {game}")) + ".",
            "Held out: counts in the games without which it is found too; found in: how many those are. Same way: games in which it lay on the same side of that game’s own rate.",
            others > 0 ? $"{Words.Figured(others, "more tell")} not shown." : "",
            "Play numbers are the first; the cut-up file has all.");
    }
}
