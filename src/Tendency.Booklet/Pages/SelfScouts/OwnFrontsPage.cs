using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.SelfScouts;

/// <summary>What did our fronts give up, by run scheme?</summary>
internal static class OwnFrontsPage
{
    private const int MostSchemes = 4;

    public static Page? Compose(Study study, IReadOnlyList<FilmRow> film)
    {
        var totals = film.Where(row => row.RunScheme.Length == 0).ToArray();
        if (totals.Length == 0)
        {
            return null;
        }

        var all = new Tally(totals.Sum(row => row.Successes), totals.Sum(row => row.Plays));
        return new Page("own-fronts", "What our fronts gave up", Finding(study, totals, all))
        {
            Deck = "Share of their runs that gained enough, runs seen five times. Line: all our fronts. The front check counts the same snaps when it is given them (fronts --film).",
            Blocks =
            [
                new Table(
                    [
                        new Column("Front, run", 0, 140),
                        new Column("Gained enough", 160, 150) { Axis = StripAxis.Shares($"all {Figures.Percent(all.Share ?? 0)}", all.Share) },
                        new Column("Share, likely", 322, 130),
                        new Column("Yards", 460, 56, Align.Right),
                    ],
                    [.. totals.SelectMany(total => Rows(study, total, film, all.Share))]) { Caption = "Runs against our fronts" },
            ],
        };
    }

    private static string Finding(Study study, FilmRow[] totals, Tally all)
    {
        var apart = totals.Where(row => Gained(study, row, all.Share).Differs).ToArray();
        return apart.Length == 0
            ? $"No front of ours stands apart: runs gained enough on {Figures.CountOf(all.Count, all.Plays)}."
            : Headline.First(
                $"Apart from the rest: {Words.Join(apart.Select(row => $"{Words.Title(row.Front)}, {Figures.CountOf(row.Successes, row.Plays)}"))}.",
                $"{Words.Capital(Words.Counted(apart.Length, "front"))} of ours stand apart.");
    }

    private static IEnumerable<TableRow> Rows(Study study, FilmRow total, IReadOnlyList<FilmRow> film, double? line)
    {
        yield return RowOf(study, total, Words.Title(total.Front), "all runs", line) with { RuleAbove = true };
        foreach (var row in film.Where(row => row.Front == total.Front && row.RunScheme.Length > 0 && row.Plays >= Share.FewestPlays).Take(MostSchemes))
        {
            yield return RowOf(study, row, "", $"{Words.Plain(row.RunScheme)} {row.Side?.Word()}", line);
        }
    }

    private static Share Gained(Study study, FilmRow row, double? line) => study.Of(study.Plays.Take([.. row.Rows]), ColumnNames.Success, "yes", line);

    private static TableRow RowOf(Study study, FilmRow row, string name, string remark, double? line)
    {
        var share = Gained(study, row, line);
        return new TableRow(
            name.Length > 0 ? Cells.Name(name, remark) : Cells.Text(remark),
            Cells.Strip(share),
            new ShareCell(share) { Form = ShareForm.OneLine },
            row.Yards is { } yards ? Cells.Figure(Figures.Number(yards)) : Cells.Blank);
    }
}
