using System.CommandLine;
using System.CommandLine.Parsing;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Html;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pdf;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>The scouting booklet.</summary>
internal static class BookletCommand
{
    public static Command Create()
    {
        var paper = new Option<PaperSize>("--paper") { Description = "Sheet to print on (default letter).", HelpName = "letter|a4", CustomParser = Paper };
        var pages = new Option<string[]>("--pages") { Description = "Only these pages, by name; an unknown name lists them all.", HelpName = "a,b,c", CustomParser = Pages };
        var command = new ChartCommand(
            "booklet",
            "The scouting booklet: what they do, how sure it is, and what to line up in. Writes a PDF, or HTML for a name that ends so.",
            "sample-logs/port-halden -o port-halden.pdf",
            "sample-logs/port-halden -o port-halden.html",
            "charts/ --paper a4 --only quarter=1,2,3 --pages brief,run-game -o short.pdf")
        { paper, pages };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetValue(paper), parsed.GetValue(pages) is { Length: > 0 } named ? named : null));
        return command;
    }

    private static int Run(Request request, PaperSize paper, IReadOnlyCollection<string>? only)
    {
        var path = request.Output ?? throw new CommandException("Name the file to write with -o, for example -o booklet.pdf.");
        var week = Progress.Of("reading charts", request, () => ChartedWeek.From(request));
        var studied = week.Choose(request);
        var study = Progress.Of("counting", request, () => BookletStudy.Of(week, studied, request.Seed));
        var booklet = Progress.Of("composing pages", request, () => BookletOrder.Compose(study, BookletStudy.Dated(week.Week), only));
        Progress.Of($"printing {path}", request, () => Print(booklet, path, paper));
        return ProblemReport.Write(week, studied, request.Quiet);
    }

    private static int Print(ScoutingBooklet booklet, string path, PaperSize paper)
    {
        var html = Path.GetExtension(path).ToLowerInvariant() is ".html" or ".htm";
        OutputFile.Write(path, stream =>
        {
            if (html)
            {
                HtmlPrinter.Print(booklet, stream);
            }
            else
            {
                PdfPrinter.Print(booklet, paper, stream);
                Reopen(path, stream);
            }
        });
        return 0;
    }

    /// <summary>Reads what was printed with another library, before it takes the file's place: a page nobody can read is a bug, not a booklet.</summary>
    private static void Reopen(string path, Stream stream)
    {
        foreach (var finding in PdfCheck.Inspect(stream).Findings.Where(f => f.Fault is not PageFault.HalfEmpty))
        {
            Console.Error.WriteLine($"{path}, page {finding.Page}: {finding.Fault}: {finding.Words}");
        }
    }

    private static PaperSize Paper(ArgumentResult result)
    {
        var text = result.Tokens[0].Value.ToLowerInvariant();
        if (text is not ("letter" or "a4"))
        {
            result.AddError($"--paper takes letter or a4, not '{text}'.");
        }

        return text == "a4" ? PaperSize.A4 : PaperSize.Letter;
    }

    private static string[] Pages(ArgumentResult result)
    {
        var names = result.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToArray();
        foreach (var name in names.Where(name => BookletOrder.Pages.All(page => page.Anchor != name)))
        {
            result.AddError($"--pages: there is no page '{name}'. Pages: {string.Join(", ", BookletOrder.Pages.Select(page => page.Anchor))}.");
        }

        return names;
    }
}
