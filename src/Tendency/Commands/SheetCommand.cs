using System.CommandLine;
using Tendency.Booklet.Pages.Sheets;
using Tendency.Booklet.Pdf;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Situations;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>The sideline sheet, or the players' tip sheet.</summary>
internal static class SheetCommand
{
    public static Command Create()
    {
        var players = new Option<bool>("--players") { Description = "The players' tip sheet instead: one page, plain words, only what is seen before the snap." };
        var paper = PaperOption.Create();
        var command = new ChartCommand(
            "sheet",
            "The sideline sheet: situation, what they call, our front, what to remember. One landscape sheet, front and back. Writes a PDF, or HTML for a name that ends so.",
            "sample-logs/port-halden -o sideline.pdf",
            "sample-logs/port-halden --players -o tips.pdf",
            "charts/ --only quarter=1,2,3 --paper a4 -o sideline.pdf")
        { players, paper };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetValue(players), parsed.GetValue(paper)));
        return command;
    }

    private static int Run(Request request, bool players, PaperSize paper)
    {
        var path = request.Output ?? throw new CommandException("Name the file to write with -o, for example -o sideline.pdf.");
        var week = Progress.Of("reading charts", request, () => ChartedWeek.From(request));
        var studied = week.Choose(request, Unit.Offense);
        var weights = WeekWeights.Of(week, studied, request);
        var study = Progress.Of("counting", request, () => BookletStudy.Of(week, studied, weights.Games, request.Seed));
        var dated = BookletStudy.Dated(week.Week);
        var sheet = Progress.Of("composing", request, () => players
            ? PlayerTips.Compose(study, dated)
            : SidelineSheet.Compose(study, FrontOptions.From(week.Week) with { Seed = request.Seed, Weights = weights.Games }, dated));
        _ = Progress.Of($"printing {path}", request, () => PrintedFile.Write(sheet, path, paper));
        return ProblemReport.Write(week.With(weights.Problems), studied, request.Quiet);
    }
}
