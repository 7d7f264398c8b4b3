using System.CommandLine;
using System.CommandLine.Parsing;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pdf;
using Tendency.Breakdown.Findings.Reviews;
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
        var title = new Option<string?>("--title") { Description = "Title of the document, printed on its cover.", HelpName = "TEXT" };
        var logo = LogoOption.Create();
        var cutUps = new Option<string?>("--cutups") { Description = "Write the plays behind every number as lists for the film room.", HelpName = "FILE.csv" };
        var since = new Option<string?>("--since") { Description = "Findings saved by an earlier print: adds a page of what changed.", HelpName = "FILE.findings.json" };
        var command = new ChartCommand(
            "booklet",
            "The scouting booklet: what they do, how sure it is, and what to line up in. Writes a PDF, or HTML for a name that ends so.",
            "sample-logs/port-halden -o port-halden.pdf",
            "sample-logs/port-halden -o port-halden.html",
            "sample-logs/port-halden -o port-halden.pdf --cutups cut-ups.csv --title \"Week 12\" --logo ours.png",
            "sample-logs/port-halden -o wednesday.pdf --since monday.findings.json",
            "charts/ --paper a4 --only quarter=1,2,3 --pages brief,run-game -o short.pdf")
        { paper, pages, title, logo, cutUps, since };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), new Printing(
            parsed.GetValue(paper),
            parsed.GetValue(pages) is { Length: > 0 } named ? named : null,
            parsed.GetValue(title) ?? "",
            LogoOption.Read(parsed.GetValue(logo)),
            parsed.GetValue(cutUps),
            parsed.GetValue(since))));
        return command;
    }

    private sealed record Printing(PaperSize Paper, IReadOnlyCollection<string>? Only, string Title, ReadOnlyMemory<byte>? Logo, string? CutUps, string? Since);

    private static int Run(Request request, Printing printing)
    {
        if (request.Output is null && printing.CutUps is null)
        {
            throw new CommandException("Name the file to write with -o, for example -o booklet.pdf.");
        }

        var prepared = Task.Run(PdfPrinter.Prepare); // type and drawing library load while the charts are read
        var week = Progress.Of("reading charts", request, () => ChartedWeek.From(request));
        var studied = week.Choose(request);
        var weights = WeekWeights.Of(week, studied, request);
        var study = Progress.Of("counting", request, () => BookletStudy.Of(week, studied, weights.Games, request.Seed));
        var findings = SavedFile.Of(study);
        if (printing.Since is { } earlier)
        {
            study = study with { Changes = Changes.Between(SavedFile.Read(earlier), findings) };
        }

        var booklet = Progress.Of("composing pages", request, () => Dressed(BookletOrder.Compose(study, BookletStudy.Dated(week.Week), printing.Only), printing));
        prepared.GetAwaiter().GetResult();
        if (request.Output is { } path)
        {
            var saved = Task.Run(() => SavedFile.Write(findings, path));
            Progress.Of($"printing {path}", request, () => PrintedFile.Write(booklet, path, printing.Paper));
            saved.GetAwaiter().GetResult();
        }

        if (printing.CutUps is { } lists)
        {
            CutUpFile.Write(booklet, lists);
        }

        return ProblemReport.Write(week.With(weights.Problems), studied, request.Quiet);
    }

    private static ScoutingBooklet Dressed(ScoutingBooklet booklet, Printing printing) =>
        (printing.Title.Length == 0 ? booklet : booklet with { Title = printing.Title, Kind = printing.Title }) with { Logo = printing.Logo };

    private static string[] Pages(ArgumentResult result)
    {
        var names = result.Tokens.SelectMany(t => t.Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)).ToArray();
        foreach (var name in names.Where(name => !BookletOrder.Anchors.Contains(name)))
        {
            result.AddError($"--pages: there is no page '{name}'. Pages: {string.Join(", ", BookletOrder.Anchors)}.");
        }

        return names;
    }
}
