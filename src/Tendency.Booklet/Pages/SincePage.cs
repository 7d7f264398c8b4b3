using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.Reviews;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Pages;

/// <summary>What is different from the last print?</summary>
internal static class SincePage
{
    private const int MostRows = 12;

    public static Page? Compose(Study study) => study.Changes is not { } changes ? null
        : new Page("since", "What changed since the last print", Finding(changes))
        {
            Deck = "A claim stands when its range leaves the usual rate out; it moved when its share is five points or more from the last print.",
            Blocks =
            [
                new Paragraph(Added(changes)),
                .. Rows("New", "did not stand in the last print", changes.New),
                .. Rows("Gone", "stood in the last print, stand no longer", changes.Gone),
                .. Rows("Moved", "stand in both", changes.Moved),
            ],
        };

    private static string Finding(Changes changes)
    {
        var front = changes.FrontBefore == changes.FrontNow || changes.FrontNow.Length == 0 || changes.FrontBefore.Length == 0 ? ""
            : $"First front now: {Words.Plain(changes.FrontNow)}, not {Words.Plain(changes.FrontBefore)}.";
        return changes.New.Count + changes.Gone.Count + changes.Moved.Count == 0
            ? Headline.Of("No claim of the last print changed.", front)
            : Headline.Of(
                $"{Words.Capital(Words.Counted(changes.New.Count, "claim"))} new, {Words.Number(changes.Gone.Count)} gone, {Words.Number(changes.Moved.Count)} moved.", front);
    }

    private static string Added(Changes changes) => changes switch
    {
        { NewGames.Count: > 0 } => $"Charted since: {Words.Join(changes.NewGames)}; {Words.Figured(Math.Max(0, changes.NewPlays), "play")} more.",
        { NewPlays: 0 } => "The same games and plays as then.",
        { NewPlays: > 0 } => $"The same games, {Words.Figured(changes.NewPlays, "play")} more.",
        _ => $"{Words.Figured(-changes.NewPlays, "play")} fewer than then.",
    };

    private static IEnumerable<Block> Rows(string title, string remark, IReadOnlyList<ChangedClaim> claims)
    {
        if (claims.Count == 0)
        {
            yield break;
        }

        var shown = claims.Take(MostRows).ToArray();
        yield return new Heading(title, shown.Length == claims.Count ? remark : $"{remark}; {MostRows} of {claims.Count}");
        yield return new Table(
            [
                new Column("Situation", 0, 190),
                new Column("They do", 196, 70),
                new Column("Then", 272, 118),
                new Column("Now", 398, 118),
            ],
            [.. shown.Select(claim => new TableRow(
                Cells.Name(SituationWords.Of(claim.Claim.Conditions)),
                Cells.Text(SituationWords.Outcome(claim.Claim.Column, claim.Claim.Outcome)),
                Said(claim.Before),
                Said(claim.Now)))])
        { Caption = title };
    }

    private static Cell Said(SavedClaim? claim) => claim is null
        ? Cells.Text("did not stand")
        : Cells.Share(new Share(claim.Count, claim.Plays, new Interval(claim.Low, claim.High), claim.Usual));
}
