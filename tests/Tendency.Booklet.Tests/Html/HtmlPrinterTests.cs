using System.Text;
using System.Text.RegularExpressions;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Html;
using Tendency.Booklet.Tests.Demo;

namespace Tendency.Booklet.Tests.Html;

public sealed partial class HtmlPrinterTests
{
    [Fact]
    public void Print_EveryBlock_EveryPageAndItsWordsAreThere()
    {
        var booklet = DemoBooklet.Make();
        var html = Print(booklet);
        Assert.Contains("<html lang=\"en\">", html, StringComparison.Ordinal);
        foreach (var page in booklet.Pages)
        {
            Assert.Contains($"<section id=\"{page.Anchor}\"", html, StringComparison.Ordinal);
            Assert.Contains($"href=\"#{page.Anchor}\"", html, StringComparison.Ordinal);
            Assert.Contains(Markup.Escape(page.Headline), html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Print_EveryBlock_FetchesNothing()
    {
        var html = Print(DemoBooklet.Make()).Replace("http://www.w3.org/", "", StringComparison.Ordinal); // SVG's own namespaces
        Assert.DoesNotContain("http", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Print_WordsThatLookLikeMarkup_StayWords()
    {
        var html = Print(DemoBooklet.Of(new Page("a", "<b>&", "<script>alert(1)</script>")));
        Assert.DoesNotContain("<script>", html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Print_Tags_CloseInOrder()
    {
        var open = new Stack<string>();
        foreach (Match tag in Tag().Matches(Print(DemoBooklet.Make())))
        {
            var name = tag.Groups["name"].Value;
            if (name is "meta" or "br" or "img" || tag.Value.EndsWith("/>", StringComparison.Ordinal))
            {
                continue;
            }

            if (tag.Value[1] == '/')
            {
                Assert.Equal(open.Pop(), name);
            }
            else
            {
                open.Push(name);
            }
        }

        Assert.Empty(open);
    }

    [Fact]
    public void Print_PlayLists_OpenToEveryPlay()
    {
        var html = Print(DemoBooklet.Make());
        Assert.Contains("<summary>16 plays</summary>", html, StringComparison.Ordinal);
        Assert.Contains("<li>Ash Ferry 63, Ash Ferry 63</li>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Print_DrawnCells_SayWhatTheyShow() =>
        Assert.Contains("aria-label=\"solid dot against 52%\"", Print(DemoBooklet.Make()), StringComparison.Ordinal);

    [Fact]
    public void Print_Twice_SameBytes() => Assert.Equal(Print(DemoBooklet.Make()), Print(DemoBooklet.Make()));

    private static string Print(ScoutingBooklet booklet)
    {
        using var stream = new MemoryStream();
        HtmlPrinter.Print(booklet, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    [GeneratedRegex("</?(?<name>[a-z0-9]+)[^>]*>", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Tag();
}
