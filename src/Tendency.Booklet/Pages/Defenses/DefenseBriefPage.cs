using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Brief;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>What must an offensive coordinator know of this defense if he reads one page?</summary>
internal static class DefenseBriefPage
{
    public static Page? Compose(Study study)
    {
        var tried = DefenseClaims.Tried(study);
        var all = DefenseClaims.All(study);
        var claims = Choice.Of(study, all, tried);
        var note = Choice.Note(study, claims, all, tried, "calls and situations");
        return new Page("brief", "Scouting brief", claims.Count == 0 ? "No habit stands out." : claims[0].Sentence)
        {
            Kind = PageKind.Brief,
            Blocks =
            [
                .. FewPlays.Warning(study),
                .. WeightNote.Of(study),
                new KeyFigures([.. Keys(study).Take(5)]),
                Sentences(study, claims, tried),
                .. claims.Count == 0 || note.Length == 0 ? [] : (Block[])[Paragraph.Note(note)],
                new Heading("How good the charts are"),
                new Paragraph(ChartQuality.Of(study) + (EffectiveCounts.InShort(study) is { Length: > 0 } counted ? " " + counted : "")),
            ],
        };
    }

    private static IEnumerable<KeyFigure> Keys(Study study)
    {
        var plays = ExtraRush.Plays(study);
        if (plays.IsCharted(ColumnNames.Rushers))
        {
            yield return new KeyFigure("Five or more rush", study.Of(plays, OwnColumns.ExtraRush, "yes"));
        }

        foreach (var column in new[] { ColumnNames.Front, ColumnNames.Coverage })
        {
            if (CrossTab.Values(plays, column) is [var most, ..])
            {
                yield return new KeyFigure($"{Words.Title(column)}: {Words.Plain(most.Value)}", study.Of(plays, column, most.Value));
            }
        }

        if (plays.IsCharted(ColumnNames.Success))
        {
            yield return new KeyFigure("Gained enough", study.Of(plays, ColumnNames.Success, "yes"));
            yield return new KeyFigure("Third downs given up", study.Of(plays.Where(ColumnNames.Down, "3"), ColumnNames.Success, "yes"));
        }

        yield return new KeyFigure("Runs they faced", study.Of(plays, ColumnNames.Call, "run"));
    }

    private static Block Sentences(Study study, IReadOnlyList<Claim> claims, int tried) => claims.Count == 0
        ? Paragraph.Lead(RichText.Strong($"No habit stands out in {Words.Figured(study.Plays.Rows, "play")}.") +
            $" {Figures.Count(tried)} calls and situations were looked at; none with eight plays or more is sure to leave its usual rate.")
        : new EvidenceList(
            claims.Count == 1 ? "What they do, in one sentence" : $"What they do, in {Words.Number(claims.Count)} sentences",
            [.. claims.Select(claim => new Evidence(claim.Sentence, claim.Share, claim.Unit, claim.LineName, Support(study, claim)) { Plays = study.ListOf(claim.Plays.Where(claim.Column, claim.Value)) })]);

    private static RichText Support(Study study, Claim claim)
    {
        RichText games = claim.Games(study);
        return study.Anchors.Contains(claim.Anchor) ? games + RichText.PageOf(claim.Anchor) + "." : games;
    }
}
