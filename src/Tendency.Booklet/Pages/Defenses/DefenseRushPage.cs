using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Tables;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Defenses;

/// <summary>How many come on a pass, from where, and does it help them?</summary>
internal static class DefenseRushPage
{
    private const int MostFronts = 4;
    private const double Width = 516;

    public static Page? Compose(Study study)
    {
        var passes = ExtraRush.Plays(study).Where(ColumnNames.Call, "pass");
        var rows = RushTable.Rows(passes);
        if (rows[0].Plays.Rows == 0)
        {
            return null;
        }

        var five = study.Of(rows[0].Plays, OwnColumns.ExtraRush, "yes");
        return new Page("rush", "Rush", five.TooFew
            ? $"Too few passes to read a rush: {Figures.CountOf(five)} met five or more."
            : $"Five or more rush on {Figures.Percent(five)} of passes: {Figures.CountOf(five)}, likely {Figures.Range(five)}.")
        {
            Deck = "Dot: share of passes that gained enough against the rush. Bar: likely range. Line: all passes. Solid dot, bold percent: differs from it.",
            Blocks = [RushTable.Of(study, rows, "Top coverages", row => Cells.Counts(Frequent.Values(row.Plays, ColumnNames.Coverage))), .. From(study)],
        };
    }

    private static IEnumerable<Block> From(Study study)
    {
        var sided = study.Plays.Where(ColumnNames.PressureTo, "to back", "away");
        if (sided.Rows < Share.FewestPlays)
        {
            yield break;
        }

        yield return new Heading("Where the extra rusher comes from", $"{Words.Figured(sided.Rows, "play")} with the back offset");
        Situation[] rows =
        [
            Situation.Total(sided, "All"),
            new("1st down", "", sided.Where(ColumnNames.Down, "1")),
            new("2nd down", "", sided.Where(ColumnNames.Down, "2")),
            new("3rd down", "", sided.Where(ColumnNames.Down, "3")),
            .. DirectionTable.By(sided, ColumnNames.Front, MostFronts),
        ];
        yield return DirectionTable.Of(study, "Plays", "From the back's side", ColumnNames.PressureTo, "to back", rows, Width);
    }
}
