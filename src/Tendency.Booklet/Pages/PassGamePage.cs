using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>Which concepts, from what drop, behind what protection?</summary>
internal static class PassGamePage
{
    private const int MostKinds = 7;
    private const int MostConcepts = 11;

    public static Page? Compose(Study study)
    {
        var passes = study.Plays.Where(ColumnNames.Call, "pass");
        var charted = new[] { ColumnNames.PassConcept, ColumnNames.Drop, ColumnNames.Protection }.Where(passes.IsCharted).ToArray();
        if (charted.Length == 0)
        {
            return null;
        }

        return new Page("pass-game", "Passes and protection", Finding(study, passes))
        {
            Blocks = [.. Concepts(study, passes), .. MixBeside.Of(study, MostKinds, new MixSide("Drops", "Drop", ColumnNames.Drop, passes), new MixSide("Protections", "Protection", ColumnNames.Protection, passes)), .. When(passes)],
        };
    }

    private static string Finding(Study study, PlayLog passes)
    {
        if (passes.Rows < Share.FewestPlays)
        {
            return $"Only {Words.Figured(passes.Rows, "pass", "passes")}: too few to read a mix.";
        }

        var leaders = new[] { (ColumnNames.PassConcept, "concepts"), (ColumnNames.Protection, "protections"), (ColumnNames.Drop, "drops") }
            .Select(kind => Leader(study, passes, kind.Item1, kind.Item2)).OfType<string>().ToArray();
        var clear = leaders.Any(leader => leader.Contains("concepts", StringComparison.Ordinal));
        return Headline.Of([.. leaders, clear ? "" : "No concept stands clear of the next."]);
    }

    // The first of a mix leads when the ranges, which hold for all rows at once, part it from the second.
    private static string? Leader(Study study, PlayLog passes, string column, string kinds)
    {
        var mix = Mix.Of(study, passes, column, 2);
        if (mix.Plays < Share.FewestPlays)
        {
            return null;
        }

        var (first, second) = (mix.Parts[0], mix.Parts.ElementAtOrDefault(1));
        var leads = second is null || first.Share.Likely!.Value.Low > second.Share.Likely!.Value.High;
        return leads ? $"{Words.Title(first.Value)} leads their {kinds}: {Figures.CountOf(first.Share)}." : null;
    }

    private static IEnumerable<Block> Concepts(Study study, PlayLog passes)
    {
        if (!passes.IsCharted(ColumnNames.PassConcept))
        {
            yield break;
        }

        var mix = Mix.Of(study, passes, ColumnNames.PassConcept, MostConcepts);
        yield return new Heading("Concepts", $"Share of {Words.Figured(mix.Plays, "pass", "passes")} with a charted concept. Bars are likely for all at once.");
        yield return MixTable.Of(study, "Concept", ColumnNames.PassConcept, passes, mix, MixStops.Wide, [.. MixTable.Gains(study)]);
    }

    // Counts alone: the cells are small, the question is what to drill.
    private static IEnumerable<Block> When(PlayLog passes)
    {
        if (!passes.IsCharted(ColumnNames.PassConcept))
        {
            yield break;
        }

        (string Head, PlayLog Plays)[] times =
        [
            ("1st down", passes.Where(ColumnNames.Down, "1")),
            ("2nd down", passes.Where(ColumnNames.Down, "2")),
            ("3rd down", passes.Where(ColumnNames.Down, "3")),
            ("Red zone", passes.Where(ColumnNames.FieldZone, "red zone", "tight red", "goal line")),
        ];
        var shown = times.Where(time => time.Plays.Rows > 0).ToArray();
        var width = 516d / shown.Length;
        yield return new Heading("What they throw, and when", "counts of passes, the three most frequent");
        yield return new Table(
            [.. shown.Select((time, i) => new Column(time.Head, i * width, width - 20) { Remark = Words.Figured(time.Plays.Rows, "pass", "passes") })],
            [new TableRow([.. shown.Select(time => Cells.Counts(Frequent.Values(time.Plays, ColumnNames.PassConcept)))])])
        { Caption = "Concepts by down" };
    }
}
