using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>The gap ledger as printed: a row a gap, its fitter, how he gets there, how often the ball hits it, who is behind him.</summary>
internal static class LedgerTable
{
    private static readonly string[] s_letters = ["A", "B", "C", "D", "E", "F"];

    public static Table Of(Study study, FrontCheck check, FrontCardCell card)
    {
        var film = study.Plays.Take([.. card.Film(check).Select(run => run.Row)]).Where(ColumnNames.Gap, s_letters);
        var hits = Hits(card.Ledger, film);
        var total = hits.Sum();
        var ranges = study.Ranges.OfMix(hits, film, ColumnNames.Gap);
        return new Table(
            [
                new Column("Gap", 0, 114),
                new Column("Fitter", 116, 104),
                new Column("How", 222, 112),
                new Column("Hit there", 338, 76) { Remark = "on film", Axis = StripAxis.Shares() },
                new Column("", 418, 40, Align.Right),
                new Column("If he is late", 466, 50),
            ],
            [
                .. Side(Flank.Play, "To the play", card.Ledger.Play),
                .. Side(Flank.Back, "Backside", card.Ledger.Back),
            ])
        {
            Caption = "Gap ledger",
        };

        IEnumerable<TableRow> Side(Flank flank, string name, FlankCount count) => card.Ledger.Fits.Where(fit => fit.Flank == flank)
            .Select(fit => RowOf(card.Ledger, fit, Hit(fit)))
            .Prepend(TableRow.GroupHead(name, Remark(count)));

        Share? Hit(GapFit fit) => fit.Flank == Flank.Play && !fit.Place.IsAdded && fit.Place.Part == 0
            ? new Share(hits[fit.Place.From], total, total == 0 ? null : ranges[fit.Place.From])
            : null;
    }

    private static string Remark(FlankCount count) =>
        $"{Words.Counted(count.Gaps, "gap")}, {Words.Counted(count.Now, "man", "men")} at the snap{(count.Late > count.Now ? $", {Words.Number(count.Late)} with the safety" : "")}";

    /// <summary>Charted gaps of the runs, by the gap between linemen; one farther out than the surface reaches counts at its edge.</summary>
    private static int[] Hits(GapLedger ledger, PlayLog runs)
    {
        var gaps = runs.Category(ColumnNames.Gap);
        var hits = new int[ledger.Surface.BaseGaps(Flank.Play)];
        foreach (var gap in Enumerable.Range(0, runs.Rows).Select(row => Array.IndexOf(s_letters, gaps[row])))
        {
            hits[Math.Min(gap, hits.Length - 1)]++;
        }

        return hits;
    }

    private static TableRow RowOf(GapLedger ledger, GapFit fit, Share? hit) => new(
        Cells.Name(CardVerdict.Short(fit)),
        fit.Man is { } man
            ? Cells.Text(RichText.Strong(CardLetters.Of(man, ledger)) + $" {CardLetters.Place(man)}{(fit.IsLate ? ", late" : "")}")
            : Cells.Text(RichText.Strong("open")),
        Cells.Text(FitWords.How(fit, ledger)),
        hit is { None: false } ? Cells.Strip(hit) : Cells.Blank,
        Cells.Text(hit is null ? "" : Figures.CountOf(hit)),
        Cells.Text(FitWords.IfLate(fit, ledger)));
}
