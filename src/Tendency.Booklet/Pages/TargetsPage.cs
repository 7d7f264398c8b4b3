using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages;

/// <summary>Who gets the ball, and who gets it when it matters?</summary>
internal static class TargetsPage
{
    private const int MostTargets = 6;

    public static Page? Compose(Study study)
    {
        var thrown = study.Plays.Where(row => study.Plays.Category(ColumnNames.Target)[row].Length > 0);
        if (thrown.Rows == 0)
        {
            return null;
        }

        var mix = Mix.Of(study, thrown, ColumnNames.Target, 8);
        return new Page("targets", "Targets", Finding(study, thrown, mix))
        {
            Blocks =
            [
                new Heading("Who they throw to", $"Share of {Words.Figured(thrown.Rows, "pass", "passes")} with a charted target. Bars are likely for all at once."),
                MixTable.Of(study, "Target", ColumnNames.Target, thrown, mix, MixStops.Wide, [.. MixTable.Gains(study)]),
                .. MixBeside.Of(
                    study,
                    MostTargets,
                    new MixSide("On third down", "Target", ColumnNames.Target, thrown.Where(ColumnNames.Down, "3")),
                    new MixSide("In the red zone", "Target", ColumnNames.Target, thrown.Where(ColumnNames.FieldZone, "red zone", "tight red", "goal line"))),
                .. Concepts(thrown),
            ],
        };
    }

    private static string Finding(Study study, PlayLog thrown, Mix mix)
    {
        if (thrown.Rows < Share.FewestPlays)
        {
            return $"Only {Words.Figured(thrown.Rows, "pass", "passes")} with a charted target: too few to read a mix.";
        }

        var (first, second) = (mix.Parts[0], mix.Parts.ElementAtOrDefault(1));
        var leads = second is null || first.Share.Likely!.Value.Low > second.Share.Likely!.Value.High;
        var third = Mix.Of(study, thrown.Where(ColumnNames.Down, "3"), ColumnNames.Target, 2);
        var (one, two) = (third.Parts.ElementAtOrDefault(0), third.Parts.ElementAtOrDefault(1));
        var thirdLeads = one is not null && two is not null && !one.Share.TooFew && one.Share.Likely!.Value.Low > two.Share.Likely!.Value.High;
        return Headline.Of(
            leads
                ? $"The {Words.Plain(first.Value)} is their first target: {Figures.CountOf(first.Share)}."
                : $"No target stands clear: {Words.Join(mix.Parts.Take(2).Select(part => $"{Words.Plain(part.Value)} ({part.Share.Count})"))} lead {Figures.Count(mix.Plays)} passes.",
            thirdLeads ? $"On third down it is the {Words.Plain(one!.Value)}." : "");
    }

    // Which concept and which formation find which man: counts alone, for the cells are small.
    private static IEnumerable<Block> Concepts(PlayLog thrown)
    {
        var targets = CrossTab.Values(thrown, ColumnNames.Target).Take(5).Select(target => target.Value).ToArray();
        (string Name, string Column)[] ways = [("Concept", ColumnNames.PassConcept), ("Formation", ColumnNames.Formation), ("Coverage", ColumnNames.Coverage)];
        var rows = ways.Where(way => thrown.IsCharted(way.Column))
            .Select(way => new TableRow([Cells.Name(way.Name), .. targets.Select(target => Cells.Counts(Frequent.Values(thrown.Where(ColumnNames.Target, target), way.Column)))])).ToArray();
        if (rows.Length == 0 || targets.Length == 0)
        {
            yield break;
        }

        const double First = 66;
        var width = (516 - First) / targets.Length;
        yield return new Heading("What each is thrown", "counts of passes, the three most frequent");
        yield return new Table([new Column("By", 0, First - 6), .. targets.Select((target, i) => new Column(Words.Title(target), First + (i * width), width - 10))], rows) { Caption = "Concept, formation and coverage by target" };
    }
}
