using System.Text;

namespace Tendency.Booklet.Blocks;

/// <summary>Pages as plain text: what every block says, mark by mark, without sizes. Golden tests read it, and so can a person.</summary>
internal static class BlockText
{
    /// <summary>All pages of a booklet, in order.</summary>
    public static string Of(ScoutingBooklet booklet)
    {
        ArgumentNullException.ThrowIfNull(booklet);
        var text = new StringBuilder();
        text.Append($"{booklet.Title}\n{booklet.Footprint}\n");
        foreach (var page in booklet.Pages)
        {
            text.Append('\n').Append(Of(page));
        }

        return text.ToString();
    }

    public static string Of(Page page)
    {
        ArgumentNullException.ThrowIfNull(page);
        var text = new StringBuilder();
        text.Append($"== {page.Name} [{page.Anchor}]\n");
        Line(text, "", page.Headline);
        Line(text, "", page.Deck);
        Append(text, page.Blocks, "");
        return text.ToString();
    }

    public static string Of(IEnumerable<Block> blocks)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        var text = new StringBuilder();
        Append(text, blocks, "");
        return text.ToString();
    }

    private static void Append(StringBuilder text, IEnumerable<Block> blocks, string indent)
    {
        foreach (var block in blocks)
        {
            Append(text, block, indent);
        }
    }

    private static void Append(StringBuilder text, Block block, string indent)
    {
        var deeper = indent + "  ";
        switch (block)
        {
            case Heading heading:
                Line(text, indent, heading.Remark.Length == 0 ? $"-- {heading.Title}" : $"-- {heading.Title} | {heading.Remark}");
                break;
            case Paragraph paragraph:
                Line(text, indent, $"{(paragraph.Style == TextStyle.Prose ? "" : $"({paragraph.Style.ToString().ToLowerInvariant()}) ")}{Marked(paragraph.Text)}");
                break;
            case EmptyState empty:
                Line(text, indent, $"[{Marked(empty.Text)}]");
                break;
            case KeyFigures figures:
                foreach (var figure in figures.Figures)
                {
                    Line(text, indent, $"{figure.Label}: {CellText.Of(figure.Share)}{(figure.Weighted.Length > 0 ? $". {figure.Weighted}" : "")}");
                }

                break;
            case EvidenceList list:
                Line(text, indent, $"-- {list.Title}");
                foreach (var (claim, number) in list.Claims.Select((claim, i) => (claim, i + 1)))
                {
                    Line(text, indent, $"{number}. {claim.Claim}");
                    Line(text, deeper, $"{Figures.Evidence(claim.Share, claim.Unit)} {CellText.Mark(claim.Share)}, {claim.LineName}");
                    Line(text, deeper, Marked(claim.Support));
                }

                break;
            case Bars bars:
                foreach (var bar in bars.Items)
                {
                    Line(text, indent, CellText.Of(bar));
                }

                break;
            case Table table:
                AppendTable(text, table, indent);
                break;
            case SmallMultiples multiples:
                foreach (var panel in multiples.Panels)
                {
                    Line(text, indent, $"# {panel.Title} | {panel.Remark}{(panel.Marked ? " (marked)" : "")}");
                    Line(text, deeper, panel.Subtitle);
                    Append(text, panel.Body, deeper);
                }

                break;
            case SideBySide beside:
                foreach (var side in beside.Sides)
                {
                    Line(text, indent, "|");
                    Append(text, side.Blocks, deeper);
                }

                break;
            case Together together:
                Append(text, together.Blocks, indent);
                break;
            case Diagram diagram:
                Line(text, indent, $"<picture: {diagram.Description}>");
                var words = diagram.Shapes.OfType<WordShape>().Select(word => word.Text).ToList();
                Line(text, deeper, string.Join(" / ", words));
                break;
            case Plot plot:
                Line(text, indent, $"<plot: {plot.Description}>");
                AppendPlot(text, plot, deeper);
                break;
            case PlayListing listing:
                Line(text, indent, $"{listing.Title}: {string.Join("; ", listing.List.Items())}");
                break;
            case Space:
                break;
            default:
                throw new InvalidOperationException($"{block.GetType().Name} has no text form.");
        }
    }

    private static void AppendTable(StringBuilder text, Table table, string indent)
    {
        Line(text, indent, string.Join(" | ", table.Columns.Select(column =>
            $"{column.Head}{(column.Remark.Length == 0 ? "" : $" ({column.Remark})")}{(column.Axis is { LineName.Length: > 0 } axis ? $" [{axis.LineName}]" : "")}")));
        foreach (var row in table.Rows)
        {
            Line(text, indent, row.Group.Length > 0
                ? $"* {row.Group} {row.GroupRemark}".TrimEnd()
                : $"{(row.Kind == RowKind.Total ? "= " : "")}{string.Join(" | ", row.Cells.Select(CellText.Of))}");
        }

        if (table.Rows.Count == 0)
        {
            Line(text, indent, "(no rows)");
        }
    }

    private static void AppendPlot(StringBuilder text, Plot plot, string indent)
    {
        Line(text, indent, $"across: {plot.Across.Words}; up: {plot.Up.Words}");
        foreach (var line in plot.Lines)
        {
            var points = line.X.Zip(line.Y, (x, y) => $"{Figures.Number(x, 3)},{Figures.Number(y, 3)}");
            Line(text, indent, $"line {line.Name}{(line.Winner ? " (winner)" : "")}: {string.Join(' ', points)}");
        }

        foreach (var dot in plot.Dots)
        {
            var range = dot.Low is { } low && dot.High is { } high ? $" ({Figures.Number(low, 3)} to {Figures.Number(high, 3)})" : "";
            Line(text, indent, $"{(dot.Solid ? "solid" : "open")} {Figures.Number(dot.X, 3)},{Figures.Number(dot.Y, 3)}{range} {dot.Label}");
        }

        foreach (var band in plot.Bands)
        {
            Line(text, indent, $"band {Figures.Number(band.Low, 3)} to {Figures.Number(band.High, 3)} {band.Words}");
        }

        foreach (var rule in plot.Rules)
        {
            Line(text, indent, $"rule at {Figures.Number(rule.At, 3)} {rule.Words}");
        }

        foreach (var ring in plot.Rings)
        {
            Line(text, indent, $"ring {Figures.Number(ring.X, 3)},{Figures.Number(ring.Y, 3)} {ring.Words}");
        }
    }

    /// <summary>Bold stretches between asterisks, so that a golden shows a change of weight.</summary>
    internal static string Marked(RichText rich) => string.Concat(rich.Runs.Select(run =>
        run.Bold ? $"*{run.Text}*" : run.Anchor is null ? run.Text : $"{run.Text}[{run.Anchor}]"));

    private static void Line(StringBuilder text, string indent, string words)
    {
        if (words.Length > 0)
        {
            text.Append(indent).Append(words.TrimEnd()).Append('\n');
        }
    }
}
