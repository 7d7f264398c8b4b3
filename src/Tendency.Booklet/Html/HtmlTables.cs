using System.Globalization;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Html;

/// <summary>Tables with scoped heads and a caption; every drawn cell also says in words what it shows.</summary>
internal sealed class HtmlTables(Markup to)
{
    public void Write(Table table)
    {
        to.Open("div", "class=\"scroll\" tabindex=\"0\"").Open("table", table.Bare ? "class=\"bare\"" : "").Element("caption", table.Caption);
        if (table.Columns.Any(column => column.Head.Length > 0 || column.Axis is not null))
        {
            to.Open("thead").Open("tr");
            foreach (var column in table.Columns)
            {
                Head(column);
            }

            to.Close("tr").Close("thead");
        }

        to.Open("tbody").Line();
        foreach (var row in table.Rows)
        {
            Write(row, table.Columns);
            to.Line();
        }

        if (table.Rows.Count == 0)
        {
            to.Open("tr").Element("td", "no plays to show").Close("tr");
        }

        to.Close("tbody").Close("table").Close("div");
    }

    /// <summary>A list that opens: every play with its game, number and clip.</summary>
    public static void Plays(Markup to, string title, PlayList list)
    {
        to.Open("details").Element("summary", title).Open("ul", "class=\"plays\"");
        foreach (var play in list.Plays)
        {
            var clip = play.Clip.Length > 0 ? $", {play.Clip}" : "";
            to.Element("li", string.Create(CultureInfo.InvariantCulture, $"{play.Game} {play.Play}{clip}"));
        }

        to.Close("ul").Close("details");
    }

    private void Head(Column column)
    {
        to.Open("th", "scope=\"col\"" + Class(column.Align)).Words(column.Head).Element("small", column.Remark);
        if (column.Axis is { } axis)
        {
            to.Element("small", axis.LineName.Length > 0 ? $"line: {axis.LineName}" : "");
            var labels = axis.Ticks.Select((tick, i) => (Shape)new WordShape(StripMarks.Place(axis, tick, column.Width), 8, Pdf.TableHead.Label(axis, i), 7.5));
            Svg.Write(to, labels, (column.Width, 10), "");
        }

        to.Close("th");
    }

    private void Write(TableRow row, IReadOnlyList<Column> columns)
    {
        if (row.Group.Length > 0)
        {
            to.Open("tr", "class=\"group\"").Open("th", $"scope=\"rowgroup\" colspan=\"{columns.Count}\"").Element("b", row.Group).Raw(" ").Words(row.GroupRemark).Close("th").Close("tr");
            return;
        }

        var kind = row.Kind == RowKind.Total ? "class=\"total\"" : row.RuleAbove ? "class=\"rule\"" : "";
        to.Open("tr", kind);
        var named = false;
        for (var i = 0; i < Math.Min(row.Cells.Count, columns.Count); i++)
        {
            // The first cell of words names the row.
            var names = !named && row.Cells[i] is TextCell { Numeric: false };
            named |= names;
            Cell(row.Cells[i], columns[i], names ? "th" : "td", row.Plays);
        }

        to.Close("tr");
    }

    private void Cell(Cell cell, Column column, string tag, PlayList? rowPlays)
    {
        var scope = tag == "th" ? "scope=\"row\"" : "";
        var drawn = cell is not (TextCell or ShareCell or CountsCell);
        to.Open(tag, drawn ? "class=\"mark\"" : (scope + Class(column.Align)).Trim());
        switch (cell)
        {
            case TextCell text:
                for (var i = 0; i < text.Lines.Count; i++)
                {
                    to.Raw(i > 0 ? "<br>" : "");
                    foreach (var run in text.Lines[i].Runs)
                    {
                        to.Element(run.Bold ? "b" : i > 0 ? "small" : "span", run.Text);
                    }
                }

                if ((text.Plays ?? (tag == "th" ? rowPlays : null)) is { } plays)
                {
                    Plays(to, string.Create(CultureInfo.InvariantCulture, $"{plays.Plays.Count} plays"), plays);
                }

                break;
            case ShareCell share:
                Share(share);
                break;
            case CountsCell counts:
                to.Open("div", "class=\"counts\"");
                foreach (var item in counts.Counts)
                {
                    to.Element("span", item.Name).Element("span", Figures.Count(item.Count), "class=\"right\"");
                }

                to.Close("div");
                break;
            default:
                const double High = 30;
                Svg.Write(to, Shapes(cell, column, High), (column.Width, High), CellText.Of(cell).Replace("*", "", StringComparison.Ordinal));
                break;
        }

        to.Close(tag);
    }

    private static IReadOnlyList<Shape> Shapes(Cell cell, Column column, double height) => cell switch
    {
        StripCell strip => StripMarks.Of(strip.Share, column.Axis ?? StripAxis.OwnBaselines(), column.Width, height),
        EstimateCell estimate => StripMarks.Of(estimate, column.Axis ?? StripAxis.OwnBaselines(), column.Width, height),
        SparkCell spark => CellMarks.Of(spark, column.Width, height),
        BarCell bar => CellMarks.Of(bar.Bar, bar.Full, column.Width, height),
        HeatCell heat => CellMarks.Of(heat, column.Width, height),
        CallCell call => CellMarks.Of(call, column.Width, height),
        _ => throw new InvalidOperationException($"{cell.GetType().Name} has no HTML form."),
    };

    private void Share(ShareCell cell)
    {
        var beside = string.Join("; ", Pdf.ShareSetter.Beside(cell));
        to.Element(cell.Share.Differs ? "b" : "span", Pdf.ShareSetter.Percent(cell.Share)).Raw(" ").Element("small", beside, "class=\"of\"");
    }

    private static string Class(Align align) => align switch
    {
        Align.Right => " class=\"right\"",
        Align.Center => " class=\"center\"",
        _ => "",
    };
}
