using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages;

/// <summary>Which runs, how well, and where do they hit?</summary>
internal static class RunGamePage
{
    private const int MostSchemes = 8;
    private const int MostPictures = 3;

    public static Page? Compose(Study study)
    {
        var runs = study.Plays.Where(row => study.Plays.Category(ColumnNames.RunScheme)[row].Length > 0);
        if (runs.Rows == 0)
        {
            return null;
        }

        var schemes = Mix.Of(study, runs, ColumnNames.RunScheme, MostSchemes);
        var families = Mix.Of(study, runs, ColumnNames.RunFamily, 8);
        return new Page("run-game", "Run game", Headline.Of([.. Finding(study, runs, families, schemes).Take(study.Weights.IsOn ? 1 : 2)]))
        {
            Blocks =
            [
                new Heading("Scheme mix", $"Share of {Words.Figured(runs.Rows, "run")} with a charted scheme. Bars are likely for all at once, so any two rows can be compared."),
                MixTable.Of(study, "Scheme", ColumnNames.RunScheme, runs, schemes, MixStops.Wide with { CountHead = "Runs" }, [.. MixTable.Gains(study)]),
                Paragraph.Note(FamilyNote(study, runs, families)),
                .. Gaps(study, runs, schemes),
            ],
        };
    }

    private static IEnumerable<string> Finding(Study study, PlayLog runs, Mix families, Mix schemes)
    {
        if (runs.Rows < Share.FewestPlays)
        {
            yield return $"Only {Words.Figured(runs.Rows, "run")} with a charted scheme: too few to read a mix.";
            yield break;
        }

        yield return Leader(families, "family") ?? Leader(schemes, "scheme") ?? NoLeader(schemes);
        yield return BackSidePage.Way(study, runs.Where(ColumnNames.RunTo, "to back", "away"), ColumnNames.RunTo, "With the back offset, runs go");
    }

    // The first of a mix leads when the ranges, which hold for all rows at once, part it from the second.
    private static string? Leader(Mix mix, string kind)
    {
        var first = mix.Parts[0];
        var second = mix.Parts.ElementAtOrDefault(1);
        var leads = second is null || first.Share.Likely!.Value.Low > second.Share.Likely!.Value.High;
        var name = Words.Title(first.Value);
        return !leads ? null
            : second is null ? $"Every charted run is {(kind == "family" ? $"a {first.Value} scheme" : Words.Plain(first.Value))}."
            : kind == "family"
                ? $"{name} schemes first: {Figures.CountOf(first.Share)} runs."
                : $"{name} first: {Figures.CountOf(first.Share)} runs.";
    }

    private static string NoLeader(Mix schemes) =>
        $"{Words.Capital(Words.Join(schemes.Parts.Take(2).Select(part => $"{Words.Plain(part.Value)} ({part.Share.Count})")))} lead their runs; no scheme stands clear of the next.";

    private static RichText FamilyNote(Study study, PlayLog runs, Mix families)
    {
        var limits = study.Week.Boundaries;
        var parts = families.Parts.Select(part => $"{part.Value} {Figures.Percent(part.Share)}{(part.Share.TooFew ? "" : $" ({part.Share.Count}, likely {Figures.Range(part.Share)})")}");
        var called = runs.Where(ColumnNames.Call, "run").Rows;
        var note = RichText.Strong("Families") + $" {string.Join(", ", parts)}. " + (called == runs.Rows ? "" : $"{Figures.CountOf(called, runs.Rows)} were called runs; the others have a run scheme too. ");
        return study.Plays.IsCharted(ColumnNames.Gain)
            ? note + RichText.Strong("Gained enough") + $" {limits.SuccessFirst}, {limits.SuccessSecond} and {limits.SuccessLate}% of the yards to go on 1st, 2nd, and 3rd or 4th down. " + RichText.Strong("Yards") + " a run with likely range."
            : note;
    }

    private static IEnumerable<Block> Gaps(Study study, PlayLog runs, Mix schemes)
    {
        var side = runs.IsCharted(ColumnNames.RunTo) ? ColumnNames.RunTo : ColumnNames.RunSide;
        var counts = GapPicture.Counts(runs, side);
        if (counts.Sum() < Share.FewestPlays)
        {
            yield return new Heading("Where runs hit");
            yield return new EmptyState(RichText.Strong("The point of attack was not charted.") +
                $" This picture needs gap and run_side on {Share.FewestPlays} runs; both are filled on {Words.Figured(counts.Sum(), "run")}.");
            yield break;
        }

        var turned = side == ColumnNames.RunTo ? ", back turned to the left. Bars are likely for all eight gaps at once." : ". Bars are likely for all eight gaps at once.";
        yield return new Heading(side == ColumnNames.RunTo ? "Where runs hit, from the back" : "Where runs hit", $"{Words.Figured(counts.Sum(), "run")}{turned}");
        yield return GapPicture.Large(study, runs, side);
        var panels = schemes.Parts.Select(part => (part.Value, Plays: runs.Where(ColumnNames.RunScheme, part.Value)))
            .Select(scheme => (scheme.Value, Counts: GapPicture.Counts(scheme.Plays, side), scheme.Plays))
            .Where(scheme => scheme.Counts.Sum() >= Share.FewestPlays).Take(MostPictures)
            .Select(scheme => Scheme(study, scheme.Value, scheme.Plays, scheme.Counts, side)).ToArray();
        if (panels.Length > 0)
        {
            yield return new SmallMultiples(panels);
        }
    }

    private static Panel Scheme(Study study, string name, PlayLog plays, int[] counts, string side)
    {
        var (_, right) = GapPicture.Ways(side);
        var way = study.Of(plays, side, right, .5);
        return new Panel(Words.Title(name), Words.Figured(counts.Sum(), "run"), [GapPicture.Small(counts, side)])
        {
            Subtitle = $"{(side == ColumnNames.RunTo ? "away" : "right")} {Figures.Percent(way)}, {Figures.CountOf(way)}{(way.TooFew ? "" : $"; likely {Figures.Range(way)}")}",
        };
    }
}
