using System.CommandLine;
using Tendency.Breakdown.Problems;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>What is wrong with the charts.</summary>
internal static class AuditCommand
{
    public static Command Create()
    {
        var command = new ChartCommand(
            "audit",
            "What is wrong with the charts: place, value, reason, what to do.",
            "sample-logs/port-halden-tired",
            "charts/ --format csv -o problems.csv");
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed)));
        return command;
    }

    private static int Run(Request request)
    {
        var week = ChartedWeek.From(request);
        var table = Table(week.Problems);
        OutputFile.Write(request.Output, TableText.Write(table, request.Format));
        return ProblemReport.Write(week, week.Choose(request), quiet: true);
    }

    private static OutputTable Table(IReadOnlyList<Problem> problems) => new(
        ["file", "line", "column", "rule", "severity", "value", "message", "suggestion"],
        [
            .. problems.Select(p => (object?[])
            [
                p.Place.File, p.Place.Line, p.Place.Column, p.Rule.Code, p.Rule.Severity.ToString().ToLowerInvariant(), p.Value, p.Message, p.Suggestion,
            ]),
        ]);
}
