using System.CommandLine;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Charts.Workbooks;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Weeks;
using Tendency.Files;
using Tendency.Input;

namespace Tendency.Commands;

/// <summary>An empty workbook to chart into.</summary>
internal static class WorkbookCommand
{
    public static Command Create()
    {
        var output = new Option<string>("-o", "--output") { Description = "Workbook to write.", HelpName = "FILE.xlsx", Required = true };
        var week = new Option<string?>("--week") { Description = "Week file whose glossary fills the drop-downs.", HelpName = "FILE" };
        var command = new ChartCommand(
            "workbook",
            "A workbook to chart into: our columns, drop-downs of the words, what each column means.",
            "-o chart.xlsx",
            "--week charts/week.toml -o chart.xlsx")
        { output, week };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(output), parsed.GetValue(week)));
        return command;
    }

    private static int Run(string path, string? weekFile)
    {
        var folder = weekFile is null ? null : WeekFolder.Open(weekFile);
        OutputFile.Check(path);
        KeepCharts(path, folder);
        var bytes = WorkbookWriter.Write(folder?.Glossary ?? Glossary.BuiltIn);
        OutputFile.Write(path, stream => stream.Write(bytes));
        return ProblemReport.Write(folder?.Problems ?? []);
    }

    // An empty workbook in the place of one with a game in it would be the game lost.
    private static void KeepCharts(string path, WeekFolder? folder)
    {
        if (new FileInfo(path) is { Exists: true, Length: > 0 } && !SpecialFiles.IsOne(path)
            && ChartReader.Read([new ChartSource(Path.GetFileName(path), () => File.OpenRead(path))], WeekPlan.Default, folder?.Glossary ?? Glossary.BuiltIn).Plays.Rows > 0)
        {
            throw new CommandException($"{path} holds a chart; name another file to write.");
        }
    }
}
