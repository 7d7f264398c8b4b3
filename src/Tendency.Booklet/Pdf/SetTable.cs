using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>A table set in type. Parts between rows, never right after a group head; every part repeats the column heads.</summary>
internal sealed class SetTable : SetBlock
{
    private const double GroupHeight = 17;
    private const double LeastRow = 17;
    private const double Padding = 4.5;
    private readonly double width;
    private readonly Table table;
    private readonly TableHead head;
    private readonly IReadOnlyList<Row> rows;

    private SetTable(Table table, double width, TableHead head, IReadOnlyList<Row> rows)
    {
        (this.table, this.width, this.head, this.rows) = (table, width, head, rows);
        Height = head.Height + rows.Sum(row => row.Height);
    }

    private sealed record Row(TableRow Content, double Height, IReadOnlyList<SetCell> Cells);

    public override double Height { get; }

    /// <param name="table">What to set.</param>
    /// <param name="width">Points the rules run over.</param>
    /// <param name="letters">Measures the words.</param>
    /// <param name="ruled">Whether a heavy rule closes the head above; not under a heading, which has its own.</param>
    public static SetTable Of(Table table, double width, Letters letters, bool ruled)
    {
        var heads = new TableHead(table.Columns, width, letters, ruled && !table.Bare, !table.Bare);
        var shown = table.Rows.Count > 0 ? table.Rows : [new TableRow(Cells.Text("no plays to show"))];
        var shares = table.Columns.Select((column, i) => ShareStops.Of(
            shown.Where(row => i < row.Cells.Count).Select(row => row.Cells[i]).OfType<ShareCell>(), column, letters, compact: table.Bare)).ToList();
        return new SetTable(table, width, heads, [.. shown.Select(row => SetRow(row, table, letters, shares))]);
    }

    public override void Draw(Ink ink, double x, double y)
    {
        head.Draw(ink, x, y);
        y += head.Height;
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            if (i > 0 && !table.Bare)
            {
                var heavy = row.Content.RuleAbove || row.Content.Group.Length > 0 || rows[i - 1].Content.Kind == RowKind.Total;
                ink.Rule(x, y, width, heavy ? 0.75 : 0.3);
            }

            DrawRow(ink, row, x, y);
            y += row.Height;
        }

        if (!table.Bare)
        {
            ink.Rule(x, y, width, 0.3);
        }
    }

    public override Parting? Split(double room)
    {
        const int FewestRows = 2;
        var used = head.Height;
        var fit = 0;
        while (fit < rows.Count && used + rows[fit].Height <= room)
        {
            used += rows[fit].Height;
            fit++;
        }

        fit = Math.Min(fit, rows.Count - FewestRows);
        while (fit > 0 && rows[fit - 1].Content.Group.Length > 0)
        {
            fit--;
        }

        if (fit < FewestRows)
        {
            return null;
        }

        var again = head.Ruled(true);
        return new Parting(new SetTable(table, width, head, [.. rows.Take(fit)]), new SetTable(table, width, again, [.. rows.Skip(fit)]));
    }

    private static Row SetRow(TableRow row, Table table, Letters letters, List<ShareStops> shares)
    {
        if (row.Group.Length > 0)
        {
            return new Row(row, GroupHeight, []);
        }

        var cells = row.Cells.Take(table.Columns.Count).Select((cell, i) => CellSetter.Set(cell, table.Columns[i], letters, shares[i])).ToList();
        var content = cells.Count == 0 ? 0 : cells.Max(cell => cell.Height);
        var least = table.RowHeight > 0 ? table.RowHeight : LeastRow;
        return new Row(row, Math.Max(least, table.Bare ? content : content + Padding), cells);
    }

    private void DrawRow(Ink ink, Row row, double x, double y)
    {
        if (row.Content.Group.Length > 0)
        {
            var name = new Style(9, Bold: true);
            var text = ink.Letters.Cut(row.Content.Group, name, width * 0.6);
            var end = ink.Text(x, y + 12, text, name);
            var remark = new Style(8.5);
            ink.Text(x + end + 8, y + 12, ink.Letters.Cut(row.Content.GroupRemark, remark, width - end - 8), remark);
            return;
        }

        for (var i = 0; i < row.Cells.Count; i++)
        {
            row.Cells[i].Draw(ink, x + table.Columns[i].Stop, y, row.Height);
        }
    }
}
