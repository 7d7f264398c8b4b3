using System.CommandLine;
using System.CommandLine.Parsing;
using Tendency.Booklet.Pages;
using Tendency.Booklet.Pages.SelfScouts;
using Tendency.Booklet.Pdf;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.SelfScouts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Situations;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>The same lens on our own calls.</summary>
internal static class SelfScoutCommand
{
    public static Command Create()
    {
        var unit = new Option<Unit?>("--unit") { Description = "Which side of the ball of ours (default: the one our charts hold).", HelpName = "offense|defense", CustomParser = UnitOf };
        var against = new Option<string?>("--against") { Description = "Set beside ours: other charts, or some of ours by name=value or tag=NAME.", HelpName = "CHARTS|name=value" };
        var paper = PaperOption.Create();
        var command = new ChartCommand(
            "selfscout",
            "Our own calls as the next opponent reads them: what each tell costs, since when, and how many calls break it. Prints a booklet for a name that ends in pdf or html.",
            "sample-logs/our-team/offense --unit offense",
            "sample-logs/our-team/offense --unit offense -o us.pdf",
            "sample-logs/our-team/defense --unit defense --format csv -o us.csv",
            "sample-logs/our-team/offense --against sample-logs/port-halden",
            "sample-logs/our-team/offense --against \"game=Iverton,Osk Landing\"",
            "charts/ --against tag=backup")
        { unit, against, paper };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetValue(unit), parsed.GetValue(against), parsed.GetValue(paper)));
        return command;
    }

    private static int Run(Request request, Unit? unit, string? against, PaperSize paper)
    {
        var week = Progress.Of("reading charts", request, () => ChartedWeek.From(request));
        var studied = week.Choose(request, unit);
        var options = new SelfScoutOptions { Level = week.Week.Level, Seed = request.Seed };
        if (against is not null)
        {
            var (ours, theirs) = ComparedSets.Of(request, week, studied, against);
            var rows = ScoutComparison.Of(ours, theirs, studied.Unit, options);
            OutputFile.Write(request.Output, request.Format == OutputFormat.Text ? SelfScoutText.Of(rows, options) : TableText.Write(SelfScoutText.Table(rows), request.Format));
            return ProblemReport.Write(week, studied, request.Quiet);
        }

        var report = Progress.Of("searching", request, () => SelfScout.Run(studied, options));
        var film = studied.Unit == Unit.Defense ? FilmRow.Of(RunSample.Of(studied.Plays, FrontPlan.Open(week.Folder).Book), options.Level) : [];
        if (request.Output is { } path && PrintedFile.IsPrinted(path))
        {
            var study = Study(week, studied, request);
            var booklet = SelfScoutBooklet.Compose(study, report, film, BookletStudy.Dated(week.Week));
            _ = Progress.Of($"printing {path}", request, () => PrintedFile.Write(booklet, path, paper));
        }
        else
        {
            OutputFile.Write(request.Output, request.Format == OutputFormat.Text ? SelfScoutText.Of(report, film) : TableText.Write(SelfScoutText.Table(report), request.Format));
        }

        NotCharted.Report(studied.Plays, report.NotCharted.Select(n => n.Column).Where(ColumnNames.DerivedDimensions.Concat(ColumnCatalogue.All.Select(c => c.Name)).Contains), request.Quiet);
        return ProblemReport.Write(week, studied, request.Quiet);
    }

    /// <summary>Guesses are made of an offense's calls: what the front model sees before the snap is the offense's look.</summary>
    private static Study Study(ChartedWeek week, StudiedPlays studied, Request request) => new(studied, week.Log, week.Read, week.Week)
    {
        Side = studied.Unit == Unit.Offense ? "offense" : "defense",
        Guess = studied.Unit == Unit.Offense
            ? Progress.Of("guessing", request, () => Guess.Run(studied.Plays, ColumnNames.Call, GuessOptions.Default with { Seed = request.Seed, Level = week.Week.Level }))
            : null,
    };

    private static Unit? UnitOf(ArgumentResult result)
    {
        var text = result.Tokens[0].Value.ToLowerInvariant();
        if (text is "offense" or "defense")
        {
            return text == "offense" ? Unit.Offense : Unit.Defense;
        }

        result.AddError($"--unit takes offense or defense, not '{text}'.");
        return null;
    }
}
