using System.Globalization;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Html;

/// <summary>Blocks as HTML elements: one line a kind of block.</summary>
internal sealed class HtmlBlocks(Markup to, ScoutingBooklet booklet)
{
    private readonly HtmlTables tables = new(to);
    private int plots;

    public void Write(IEnumerable<Block> blocks, double width)
    {
        foreach (var block in blocks)
        {
            Write(block, width);
            to.Line();
        }
    }

    private void Write(Block block, double width)
    {
        switch (block)
        {
            case Heading heading:
                to.Open("h3").Words(heading.Title).Element("small", heading.Remark).Close("h3");
                break;
            case Paragraph paragraph:
                to.Open("p", paragraph.Style == TextStyle.Prose ? "" : $"class=\"{paragraph.Style.ToString().ToLowerInvariant()}\"");
                Write(paragraph.Text);
                to.Close("p");
                break;
            case EmptyState empty:
                to.Open("p", "class=\"empty\"");
                Write(empty.Text);
                to.Close("p");
                break;
            case Table table:
                tables.Write(table);
                break;
            case KeyFigures figures:
                Write(figures);
                break;
            case EvidenceList list:
                Write(list);
                break;
            case Bars bars:
                to.Open("table", "class=\"bare\"").Open("tbody");
                foreach (var bar in bars.Items)
                {
                    to.Open("tr").Element("th", bar.Label, "scope=\"row\"").Open("td");
                    Svg.Write(to, CellMarks.Of(bar, bars.Full, 200, 16), (200, 16), "");
                    to.Close("td").Close("tr");
                }

                to.Close("tbody").Close("table");
                break;
            case SmallMultiples multiples:
                Write(multiples, width);
                break;
            case SideBySide beside:
                to.Open("div", "class=\"beside\"");
                foreach (var side in beside.Sides)
                {
                    var wide = side.Width > 0 ? side.Width : width / beside.Sides.Count;
                    to.Open("div", $"style=\"flex:{Markup.Number(wide)} 1 {Markup.Number(Math.Min(wide, 320))}px\"");
                    Write(side.Blocks, wide);
                    to.Close("div");
                }

                to.Close("div");
                break;
            case Together together:
                Write(together.Blocks, width);
                break;
            case Diagram diagram:
                to.Open("figure");
                Svg.Write(to, diagram.Shapes, (diagram.Width, diagram.Height), diagram.Description);
                to.Close("figure");
                break;
            case Plot plot:
                to.Open("figure").Raw(PlotSvg.Of(plot, width, ++plots)).Close("figure");
                break;
            case PlayListing listing:
                HtmlTables.Plays(to, listing.Title, listing.List);
                break;
            case Space:
                break;
            default:
                throw new InvalidOperationException($"{block.GetType().Name} has no HTML form.");
        }
    }

    private void Write(RichText text)
    {
        foreach (var run in text.Runs)
        {
            if (run.Anchor is { } anchor)
            {
                // On screen a page has a name, not a number.
                var name = booklet.Pages.FirstOrDefault(page => page.Anchor == anchor)?.Name ?? anchor;
                to.Element("a", run.Text + "“" + name + "”", $"href=\"#{Markup.Escape(anchor)}\"");
            }
            else if (run.Bold)
            {
                to.Element("b", run.Text);
            }
            else
            {
                to.Words(run.Text);
            }
        }
    }

    private void Write(KeyFigures figures)
    {
        to.Open("div", "class=\"figures\"");
        foreach (var figure in figures.Figures)
        {
            var share = figure.Share;
            var under = share.TooFew ? "too few for a percentage" : share.None ? "" : $"{Figures.CountOf(share)}, likely {Figures.Range(share)}";
            to.Open("div").Words(figure.Label).Element("strong", Figures.Percent(share)).Element("small", under);
            if (figure.Weighted.Length > 0)
            {
                to.Open("br").Element("small", figure.Weighted);
            }

            to.Close("div");
        }

        to.Close("div");
    }

    private void Write(EvidenceList list)
    {
        to.Element("h3", list.Title).Open("ol", "class=\"claims\"");
        foreach (var claim in list.Claims)
        {
            to.Open("li").Open("div", "class=\"claim\"").Open("div").Element("strong", claim.Claim, "class=\"say\"");
            to.Words(Figures.Evidence(claim.Share, claim.Unit) + ".").Open("br");
            Write(claim.Support);
            if (claim.Plays is { } plays)
            {
                HtmlTables.Plays(to, string.Create(CultureInfo.InvariantCulture, $"{plays.Plays.Count} plays"), plays);
            }

            to.Close("div");
            var axis = new StripAxis(0, 1, [0, .25, .5, .75, 1]) { Line = claim.Share.Baseline, LineName = claim.LineName };
            Svg.Write(to, StripMarks.Of(claim.Share, axis, 152, 34), (152, 34), $"{CellText.Mark(claim.Share)}, {claim.LineName}");
            to.Close("div").Close("li").Line();
        }

        to.Close("ol");
    }

    private void Write(SmallMultiples multiples, double width)
    {
        var columns = Math.Max(1, multiples.Columns);
        var wide = (width - (12 * (columns - 1))) / columns;
        to.Open("div", $"class=\"panels\" style=\"--across:{columns}\"");
        foreach (var panel in multiples.Panels)
        {
            to.Open("div").Open("h4", panel.Marked ? "class=\"marked\"" : "").Words(panel.Title).Element("small", panel.Remark).Close("h4");
            if (panel.Subtitle.Length > 0)
            {
                to.Open("p", "class=\"note\"").Element(panel.Marked ? "b" : "span", panel.Subtitle).Close("p");
            }

            Write(panel.Body, wide);
            to.Close("div").Line();
        }

        to.Close("div");
    }
}
