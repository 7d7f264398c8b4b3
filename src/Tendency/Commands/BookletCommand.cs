using System.CommandLine;
using System.CommandLine.Parsing;
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
        var paper = PaperOption.Create();
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
        Progress.Of($"printing {path}", request, () => PrintedFile.Write(booklet, path, paper));
        return ProblemReport.Write(week, studied, request.Quiet);
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
