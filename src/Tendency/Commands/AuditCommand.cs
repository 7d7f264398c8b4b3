using System.CommandLine;
using Tendency.Breakdown.Audits;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Corrections;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Situations;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>What is wrong with the charts.</summary>
internal static class AuditCommand
{
    public static Command Create()
    {
        var fixes = new Option<string?>("--fix-list") { Description = "File for the proposed corrections, for a person to accept.", HelpName = "OUT.csv" };
        var command = new ChartCommand(
            "audit",
            "What is wrong with the charts: place, value, reason, what to do. The charts are never changed.",
            "sample-logs/port-halden-tired",
            "charts/ --format csv -o problems.csv",
            "charts/ --fix-list corrections.csv")
        { fixes };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetValue(fixes)));
        return command;
    }

    private static int Run(Request request, string? fixes)
    {
        var week = ChartedWeek.From(request);
        var report = Audit.Run(week.Read, week.Log, week.Week, week.Glossary);
        var problems = week.Folder.Problems.Concat(report.Problems).ToArray();
        OutputFile.Write(request.Output, request.Format == OutputFormat.Text ? Text(report with { Problems = problems }) : TableText.Write(Table(problems), request.Format));
        if (fixes is not null)
        {
            OutputFile.Write(fixes, TableText.Write(Corrections(report.ProposedCorrections), OutputFormat.Csv));
        }

        Console.Error.WriteLine(Rows(week, request));
        return week.Log.Rows == 0 ? ExitCode.NotDone
            : problems.Any(p => p.Rule.Severity != Severity.Note) ? ExitCode.DoneWithProblems : ExitCode.Done;
    }

    // What the counts would use; an audit needs no subject, and where the charts name none it has used every readable row.
    private static RowTally Rows(ChartedWeek week, Request request) =>
        StudiedPlays.Choose(week.Log, week.Week, request.Only, null, out _) is { } studied
            ? week.Rows(studied)
            : new RowTally(week.Read.RowsRead, week.Log.Rows, week.Read.RowsLeftOut, week.Read.RowsSetAside);

    private static string Text(AuditReport report)
    {
        var text = new StringWriter { NewLine = "\n" };
        AuditText.Write(report, text, "what --format csv -o FILE writes");
        return text.ToString();
    }

    private static OutputTable Table(IReadOnlyList<Problem> problems) => new(
        ["file", "line", "column", "rule", "severity", "value", "message", "suggestion"],
        [
            .. problems.Select(p => (object?[])
            [
                p.Place.File, p.Place.Line == 0 ? null : p.Place.Line, p.Place.Column, p.Rule.Code, p.Rule.Severity.ToString().ToLowerInvariant(), p.Value, p.Message, p.Suggestion,
            ]),
        ]);

    private static OutputTable Corrections(IReadOnlyList<Correction> corrections) => new(
        ["file", "line", "column", "old", "new"],
        [.. corrections.Select(c => (object?[])[c.File, c.Line, c.Column, c.Old, c.New])]);
}
