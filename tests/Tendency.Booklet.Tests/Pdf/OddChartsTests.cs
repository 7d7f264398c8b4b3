using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.Scripts;
using Tendency.Booklet.Pages.Sheets;
using Tendency.Booklet.Pdf;
using Tendency.Booklet.Tests.Demo;
using Tendency.Breakdown.Counts.Scripts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Tests.Pdf;

/// <summary>Every printed piece of charts of odd shapes, on both papers, reopened: no word clipped, lost, printed over another or outside its margins.</summary>
public sealed class OddChartsTests
{
    public static TheoryData<string> Shapes => [.. OddCharts.All.Keys];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Print_OddChart_ReadsBackWithoutFaults(string shape)
    {
        var chart = OddCharts.All[shape];
        var study = chart.Study();
        var faults = new List<string>();
        foreach (var (name, piece) in Pieces(study))
        {
            foreach (var paper in new[] { PaperSize.Letter, PaperSize.A4 })
            {
                using var stream = new MemoryStream();
                var printed = PdfPrinter.Print(piece, paper, stream);
                var inspection = PdfCheck.Inspect(stream);
                faults.AddRange(inspection.Findings.Where(finding => finding.Fault != PageFault.HalfEmpty).Select(finding => $"{name} {paper} page {finding.Page}: {finding.Fault} {finding.Words}"));
                faults.AddRange(inspection.Pages.SelectMany(page => Unwanted(page.Text, chart.LongWords).Select(words => $"{name} {paper} page {page.Number}: {words}")));
                Assert.Equal(printed.Pages, inspection.Pages.Count);
                if (name == "booklet" && !chart.Scarce)
                {
                    // A page is not parted for the sake of a sheet that is nearly half full.
                    Assert.All(inspection.Pages, page => Assert.True(page.Used > .3, $"{paper} page {page.Number}: {page.Used:P0} used"));
                    Assert.InRange(inspection.Findings.Count(finding => finding.Fault == PageFault.HalfEmpty), 0, 2);
                }

                if (printed.ReplacedLetters.Count > 0)
                {
                    Assert.Contains(inspection.Pages, page => page.Text.Contains($"[U+{printed.ReplacedLetters[0]:X4}]", StringComparison.Ordinal));
                }
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    private static IEnumerable<(string Name, ScoutingBooklet Piece)> Pieces(Study study)
    {
        yield return ("booklet", BookletOrder.Compose(study, DemoBooklet.Dated));
        yield return ("sheet", SidelineSheet.Compose(study, new FrontOptions { Draws = 300, CardDraws = 100 }, DemoBooklet.Dated));
        yield return ("tips", PlayerTips.Compose(study, DemoBooklet.Dated));
        yield return ("script", ScriptCards.Compose(study, PracticeScript.Draw(study.Plays, ScriptPeriod.All[0], 12, 1), DemoBooklet.Dated));
    }

    /// <summary>Words that say a thing went wrong behind the page; an ellipsis only where a chart's words are longer than their place.</summary>
    private static IEnumerable<string> Unwanted(string text, bool longWords)
    {
        string[] wrong = ["NaN", "∞", "Infinity", "no no ", "{", "}", .. longWords ? Array.Empty<string>() : ["…"]];
        return wrong.Where(words => text.Replace("[U+…]", "", StringComparison.Ordinal).Contains(words, StringComparison.Ordinal))
            .Select(words => $"\"{words}\" in \"{Around(text, words)}\"");
    }

    private static string Around(string text, string words)
    {
        var at = text.IndexOf(words, StringComparison.Ordinal);
        return text[Math.Max(0, at - 60)..Math.Min(text.Length, at + 20)].ReplaceLineEndings(" ");
    }
}
