using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Brief;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages;

/// <summary>What must a coordinator know if he reads one page?</summary>
internal static class BriefPage
{
    public static Page? Compose(Study study)
    {
        var claims = Choice.Of(study, Claims.All(study), Claims.Tried(study));
        return new Page("brief", "Scouting brief", claims.Count == 0 ? "No habit stands out." : claims[0].Sentence)
        {
            Kind = PageKind.Brief,
            Blocks =
            [
                .. FewPlays.Warning(study),
                .. WeightNote.Of(study),
                new KeyFigures([.. Keys(study).Take(5)]),
                .. Sentences(study, claims),
                .. Front(study),
                new Heading("How good the charts are"),
                new Paragraph(ChartQuality.Of(study) + (EffectiveCounts.InShort(study) is { Length: > 0 } counted ? " " + counted : "")),
            ],
        };
    }

    private static IEnumerable<KeyFigure> Keys(Study study)
    {
        var plays = study.Plays;
        var limits = study.Week.Boundaries;
        yield return Key(study, "Run share", plays, ColumnNames.Call, "run");
        if (plays.IsCharted(ColumnNames.Success))
        {
            yield return Key(study, "Gained enough", plays, ColumnNames.Success, "yes");
            yield return Key(study, $"Long plays, {limits.ExplosiveRun}+ / {limits.ExplosivePass}+", plays, ColumnNames.Explosive, "yes");
            yield return Key(study, "Third downs converted", plays.Where(ColumnNames.Down, "3"), ColumnNames.Success, "yes");
        }

        if (plays.IsCharted(ColumnNames.FieldZone))
        {
            yield return Key(study, "Red zone plays run", plays.Where(ColumnNames.FieldZone, "red zone", "tight red", "goal line"), ColumnNames.Call, "run");
        }

        yield return Key(study, "First downs run", plays.Where(ColumnNames.Down, "1"), ColumnNames.Call, "run");
    }

    private static KeyFigure Key(Study study, string label, PlayLog plays, string column, string value) =>
        new(label, study.Of(plays, column, value)) { Weighted = study.Weights.IsOn ? Weighing.Short(study.Weighted(plays, column, value)) : "" };

    private static IEnumerable<Block> Sentences(Study study, IReadOnlyList<Claim> claims)
    {
        if (claims.Count == 0)
        {
            yield return new Heading("What they do");
            yield return Paragraph.Lead(RichText.Strong($"No habit stands out in {Words.Figured(study.Plays.Rows, "play")}.") +
                $" {Claims.Tried(study)} situations and directions were looked at; none with eight plays or more is sure to leave the team's own rate.");
            yield break;
        }

        yield return new EvidenceList(
            claims.Count == 1 ? "What they do, in one sentence" : $"What they do, in {Words.Number(claims.Count)} sentences",
            [.. claims.Select(claim => new Evidence(claim.Sentence, claim.Share, claim.Unit, claim.LineName, Support(study, claim)) { Plays = study.ListOf(claim.Plays.Where(claim.Column, claim.Value)) })]);
        if (Choice.Note(study, claims, Claims.All(study), Claims.Tried(study), "situations and directions") is { Length: > 0 } note)
        {
            yield return Paragraph.Note(note);
        }
    }

    private static IEnumerable<Block> Front(Study study)
    {
        if (study.Fronts is not { } check || check.Ranking.Ranks.Count == 0)
        {
            yield break;
        }

        var ranks = check.Ranking.Ranks.OrderByDescending(rank => rank.ProbabilityBest).Take(5).Select(rank => new Bar(Words.Title(rank.Front), rank.ProbabilityBest, check.Ranking.HasClearWinner && rank.Rank == 1));
        RichText turn = FrontVerdict.Turn(study, check);
        var link = study.Anchors.Contains("front-check") ? " " + RichText.PageOf("front-check") + "." : RichText.Empty;
        yield return new SideBySide(
        [
            new Side(328,
            [
                new Heading("Front to start in"),
                Paragraph.Lead(RichText.Strong(FrontVerdict.Lead(check.Ranking)) + " " + FrontVerdict.Evidence(check.Ranking)),
                new Paragraph(WithPasses(study, check) + turn + link),
            ]),
            new Side(0, [new Heading("Chance of being best on runs"), new Bars([.. ranks]) { LabelWidth = 70 }]),
        ]);
    }

    private static RichText WithPasses(Study study, FrontCheck check)
    {
        RichText passes = FrontVerdict.WithPasses(study.FrontCard, check.Ranking.Ranks[0].Front);
        return study.FrontCard.Count == 0 ? passes
            : passes + " " + (study.Anchors.Contains("front-situation") ? RichText.PageOf("front-situation") + ". " : RichText.Empty);
    }

    private static RichText Support(Study study, Claim claim)
    {
        var steady = claim.Games(study);
        var done = claim.Plays.Where(claim.Column, claim.Value);
        var calls = CrossTab.Values(done, claim.Value == "pass" || claim.Column == ColumnNames.SlideTo ? ColumnNames.PassConcept : ColumnNames.RunScheme)
            .Take(2).Select(call => $"{Words.Plain(call.Value)} {call.Count}").ToArray();
        // Where a weighted share is said too, the commonest calls give up their line: the page named has them.
        var most = calls.Length == 0 || study.Weights.IsOn ? "" : $"Most: {string.Join(", ", calls)}. ";
        var weighed = study.Weights.IsOn ? Weighing.Said(study.Weighted(claim.Plays, claim.Column, claim.Value)) + " " : "";
        RichText text = weighed + steady + most;
        return study.Anchors.Contains(claim.Anchor) ? text + RichText.PageOf(claim.Anchor) + "." : text;
    }
}
