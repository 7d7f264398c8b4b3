using System.CommandLine;
using Tendency.Input;

namespace Tendency.Commands;

/// <summary>The scouting booklet.</summary>
internal static class BookletCommand
{
    public static Command Create()
    {
        var command = new ChartCommand(
            "booklet",
            "The scouting booklet: what they do, how sure it is, and what to line up in.",
            "sample-logs/port-halden -o port-halden.pdf");
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed)));
        return command;
    }

    private static int Run(Request request)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request);
        return ProblemReport.Write(week, studied, request.Quiet);
    }
}
