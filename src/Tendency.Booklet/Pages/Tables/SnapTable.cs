using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Tables;

/// <summary>Snaps one by one: where few of them are a list tells more than a share.</summary>
internal static class SnapTable
{
    /// <param name="study">Short names of the games.</param>
    /// <param name="snaps">In film order.</param>
    /// <param name="most">Rows printed; the rest are counted in a closing row.</param>
    public static Table Of(Study study, PlayLog snaps, int most)
    {
        var columns = new List<(Column Column, Func<int, Cell> Cell)>
        {
            (new Column("Play", 0, 52), row => Cells.Text(RichText.Strong($"{study.ShortGames.GetValueOrDefault(snaps.Category(ColumnNames.Game)[row], snaps.Category(ColumnNames.Game)[row])} {snaps.Number(ColumnNames.Play)[row]}"))),
            (new Column("Down", 56, 54), row => Cells.Text(DownOf(snaps, row))),
        };
        var stop = 114d;
        foreach (var (head, width, words) in new (string, double, Func<PlayLog, int, string>)[]
        {
            ("Ball on", 44, (log, row) => log.Category(ColumnNames.BallOn)[row]),
            ("Look", 112, Look),
            ("Call", 162, (log, row) => CallOf(log, row)),
        })
        {
            columns.Add((new Column(head, stop, width - 4), row => Cells.Text(words(snaps, row))));
            stop += width;
        }

        if (snaps.IsCharted(ColumnNames.Gain))
        {
            columns.Add((new Column("Gain", stop, 26, Align.Right), row => Cells.Figure(snaps.Number(ColumnNames.Gain)[row] is int gain ? Figures.Signed(gain, 0) : "")));
        }

        columns.Add((new Column("Result", 465, 51), row => Cells.Text(snaps.Category(ColumnNames.Touchdown)[row] == "yes" ? "touchdown" : snaps.Category(ColumnNames.Result)[row])));
        var rows = Enumerable.Range(0, Math.Min(most, snaps.Rows)).Select(row => new TableRow([.. columns.Select(column => column.Cell(row))])).ToList();
        if (snaps.Rows > most)
        {
            rows.Add(new TableRow(Cells.Text($"+{snaps.Rows - most} more")));
        }

        return new Table([.. columns.Select(column => column.Column)], rows) { Caption = "Play by play" };
    }

    /// <summary>"3 &amp; 7".</summary>
    public static string DownOf(PlayLog log, int row) =>
        log.Category(ColumnNames.Down)[row] is "try" ? "try" : $"{log.Category(ColumnNames.Down)[row]} & {log.Number(ColumnNames.Distance)[row]}";

    /// <summary>"Run, power left" or "Pass, stick".</summary>
    public static string CallOf(PlayLog log, int row)
    {
        var call = log.Category(ColumnNames.Call)[row];
        var kind = log.Category(ColumnNames.RunScheme)[row] is { Length: > 0 } scheme && call != "pass" ? scheme : log.Category(ColumnNames.PassConcept)[row];
        var side = call == "run" ? log.Category(ColumnNames.RunSide)[row] switch { "L" => " left", "R" => " right", _ => "" } : "";
        return Words.Title(call == "rpo" ? "RPO" : call) + (kind.Length == 0 ? side : $", {Words.Plain(kind)}{side}");
    }

    private static string Look(PlayLog log, int row)
    {
        var formation = log.Category(ColumnNames.Formation)[row];
        var back = log.Category(ColumnNames.BackSide)[row] switch { "" or "none" => "", var side => $", back {side}" };
        return Words.Title(formation) + (formation.Length == 0 ? back.TrimStart(',', ' ') : back);
    }
}
