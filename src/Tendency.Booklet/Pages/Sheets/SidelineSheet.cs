using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>What a coordinator holds on the sideline: one landscape sheet, situations on the front, formations, calls and tells on the back.</summary>
public static class SidelineSheet
{
    /// <param name="study">The plays, the front check, the tells.</param>
    /// <param name="options">Level and seed of the front in each situation.</param>
    /// <param name="dated">Written into the file.</param>
    public static ScoutingBooklet Compose(Study study, FrontOptions options, DateTimeOffset dated)
    {
        ArgumentNullException.ThrowIfNull(study);
        study = study with { FrontCard = study.Fronts is { } check ? FrontCard.Of(study.Plays, [new CardSituation("all plays", _ => true)], check, options) : [] };
        var back = SheetBack.Of(study);
        var front = new Page("sideline-sheet", "Sideline sheet", $"{study.Side}, sideline sheet")
        {
            Kind = PageKind.Sheet,
            Blocks =
            [
                new Heading("Run or pass", Key(study)) { Bare = true },
                SituationTable.Of(study, options),
                .. SheetFoot.Of(study, tells: back is null),
                .. Missing(study),
            ],
        };
        Page[] pages = back is null ? [front] : [front, back];
        return new ScoutingBooklet(study.Opponent, study.Side, $"{study.Opponent} {study.Side}, sideline sheet", Footprint.Of(study), [new Section("Sideline sheet", pages)], dated)
        {
            Contents = false,
            Kind = "Sideline sheet",
            LikelyMeans = $"Black: sure run. Boxed: sure pass. Gray: could be even. Hatched: under {Share.FewestPlays} plays",
        };
    }

    private static string Key(Study study)
    {
        var cell = $"percent to expect (few plays lean on row and team) over k/n, range at {Figures.Number(study.Level * 100, 0)}%. Sure: it leaves out an even split.";
        return study.Fronts is null or { Sample.Runs.Count: 0 } || study.FrontCard.Count == 0 ? cell
            : $"{cell} Our front{(study.Weights.IsOn ? ", by weighted games" : "")}: {Words.Title(study.FrontCard[0].Front)}, unless the row names another";
    }

    private static IEnumerable<Block> Missing(Study study)
    {
        string[] used = [ColumnNames.BackSide, ColumnNames.Formation, ColumnNames.RunScheme, ColumnNames.PassConcept, ColumnNames.BallOn];
        var missing = used.Where(column => !study.Plays.IsCharted(column)).ToArray();
        return missing.Length == 0 ? [] : [Paragraph.Note($"Not charted: {string.Join(", ", missing)}.")];
    }
}
