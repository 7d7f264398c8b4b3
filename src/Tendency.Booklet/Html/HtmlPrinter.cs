using System.Text;
using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Html;

/// <summary>Prints a booklet as one self-contained HTML file from the same blocks: headings, tables that read aloud, marks as inline SVG, play lists that open.</summary>
public static class HtmlPrinter
{
    /// <param name="booklet">What to print.</param>
    /// <param name="output">UTF-8 without a byte order mark.</param>
    public static void Print(ScoutingBooklet booklet, Stream output)
    {
        ArgumentNullException.ThrowIfNull(booklet);
        ArgumentNullException.ThrowIfNull(output);
        var to = new Markup();
        to.Raw("<!DOCTYPE html>\n").Open("html", "lang=\"en\"").Line().Open("head").Raw("<meta charset=\"utf-8\">").Line();
        to.Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">").Line();
        to.Element("title", booklet.Title).Line();
        if (booklet.Author.Length > 0)
        {
            to.Raw($"<meta name=\"author\" content=\"{Markup.Escape(booklet.Author)}\">").Line();
        }

        to.Open("style").Raw(HtmlStyle.Sheet).Close("style").Line().Close("head").Line().Open("body").Line();
        Header(to, booklet);
        if (booklet.Contents)
        {
            Contents(to, booklet);
        }

        var blocks = new HtmlBlocks(to, booklet);
        to.Open("main").Line();
        foreach (var page in booklet.Pages)
        {
            to.Open("section", $"id=\"{Markup.Escape(page.Anchor)}\" class=\"{(page.Kind == PageKind.Sheet ? "sheet" : "page")}\" aria-labelledby=\"{Markup.Escape(page.Anchor)}-head\"").Line();
            to.Element("p", page.Name, "class=\"name\"");
            to.Element("h2", page.Headline, $"id=\"{Markup.Escape(page.Anchor)}-head\"").Line();
            to.Element("p", page.Deck, "class=\"deck\"");
            blocks.Write(page.Blocks, page.Kind == PageKind.Sheet ? 720 : 516);
            to.Close("section").Line();
        }

        to.Close("main").Line().Open("footer").Element("p", $"{booklet.Footprint}. {booklet.LikelyMeans}").Close("footer").Line();
        to.Close("body").Line().Close("html").Line();
        output.Write(Encoding.UTF8.GetBytes(to.ToString()));
    }

    private static void Header(Markup to, ScoutingBooklet booklet)
    {
        to.Open("header");
        if (booklet.Logo is { } logo)
        {
            to.Raw($"<img alt=\"\" src=\"data:image/png;base64,{Convert.ToBase64String(logo.Span)}\">");
        }

        to.Open("h1").Words(booklet.Opponent).Raw(" ").Element("span", booklet.Subject).Close("h1");
        to.Element("p", string.Join(". ", new[] { booklet.Kind, booklet.Occasion, booklet.Footprint }.Where(words => words.Length > 0)));
        to.Close("header").Line();
    }

    private static void Contents(Markup to, ScoutingBooklet booklet)
    {
        to.Open("nav", "aria-label=\"Contents\"").Element("h2", "Contents").Line();
        foreach (var section in booklet.Sections.Where(section => section.Pages.Count > 0))
        {
            if (section.Pages.Count > 1)
            {
                to.Element("h3", section.Name);
            }

            to.Open("ul");
            foreach (var page in section.Pages)
            {
                to.Open("li").Open("a", $"href=\"#{Markup.Escape(page.Anchor)}\"").Element("b", page.Name).Raw(" ").Words(page.Headline).Close("a").Close("li");
            }

            to.Close("ul").Line();
        }

        to.Close("nav").Line();
    }
}
