using System.CommandLine;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Charters;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>How far two charts of the same game agree, and both made one.</summary>
internal static class AgreeCommand
{
    private const int Shown = 20;

    public static Command Create()
    {
        var merge = new Option<string?>("--merge") { Description = "File for both charts as one, disagreements marked in the note.", HelpName = "OUT.csv" };
        var list = new Option<string?>("--list") { Description = "File for every cell on which the charts differ.", HelpName = "OUT.csv" };
        var command = new ChartCommand(
            "agree",
            "Agreement of two charts of the same game: column by column, with Cohen's kappa and its interval.",
            "first.csv second.csv",
            "first.csv second.csv --list differences.csv --merge both.csv")
        { merge, list };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetValue(merge), parsed.GetValue(list)));
        return command;
    }

    private static int Run(Request request, string? merge, string? list)
    {
        if (request.Charts.Count != 2)
        {
            throw new CommandException($"agree compares two charts; {request.Charts.Count} given. Name two files of the same game.");
        }

        var (one, two) = (ChartedWeek.From(request with { Charts = [request.Charts[0]] }), ChartedWeek.From(request with { Charts = [request.Charts[1]] }));
        var agreement = Agreement.Compare(one.Log, two.Log, one.Week.Level, one.Glossary);
        var code = ProblemReport.Write(request.Quiet ? [] : [.. one.Problems, .. two.Problems]);
        var rows = Rows(one, two, agreement);
        if (agreement.Pairs.Count == 0)
        {
            throw new CommandException("The charts have no snap in common; are they of the same game?");
        }

        OutputFile.Write(request.Output, TableText.Write(Columns(agreement), request.Format) + (request.Format == OutputFormat.Text ? Differences(one.Log, agreement) : ""));
        if (list is not null)
        {
            OutputFile.Write(list, TableText.Write(List(one.Log, two.Log, agreement), OutputFormat.Csv));
        }

        if (merge is not null)
        {
            var merged = MergedChart.Of(one.Log, two.Log, agreement);
            OutputFile.Write(merge, TableText.Write(new OutputTable(merged.Headers, [.. merged.Rows.Select(row => (object?[])[.. row])]), OutputFormat.Csv));
        }

        Console.Error.WriteLine(rows);
        return code;
    }

    private static RowTally Rows(ChartedWeek one, ChartedWeek two, Agreement agreement)
    {
        var used = 2 * agreement.Pairs.Count;
        var readable = one.Log.Rows + two.Log.Rows;
        return new RowTally(
            one.Read.RowsRead + two.Read.RowsRead, used, one.Read.RowsLeftOut + two.Read.RowsLeftOut + readable - used, one.Read.RowsSetAside + two.Read.RowsSetAside);
    }

    private static OutputTable Columns(Agreement agreement) => new(
        ["column", "plays", "agreement", "kappa", "low", "high"],
        [.. agreement.Columns.Select(c => (object?[])[c.Column, c.Plays, c.Share, c.Kappa, c.Low, c.High])]);

    private static string Differences(PlayLog log, Agreement agreement)
    {
        var text = new System.Text.StringBuilder($"\n{agreement.Pairs.Count} snaps in both charts, {agreement.OnlyA.Count} only in the first, {agreement.OnlyB.Count} only in the second; {agreement.Disagreements.Count} cells differ.\n");
        foreach (var differ in agreement.Disagreements.Take(Shown))
        {
            _ = text.Append($"  {log.Category(ColumnNames.Game)[differ.RowA]}:{log.Number(ColumnNames.Play)[differ.RowA]} {differ.Column}: {differ.ValueA} | {differ.ValueB}\n");
        }

        return agreement.Disagreements.Count > Shown ? text.Append($"  … and {agreement.Disagreements.Count - Shown} more; all with --list OUT.csv\n").ToString() : text.ToString();
    }

    private static OutputTable List(PlayLog one, PlayLog two, Agreement agreement) => new(
        ["game", "play", "play_second", "column", "first", "second"],
        [
            .. agreement.Disagreements.Select(d => (object?[])
            [
                one.Category(ColumnNames.Game)[d.RowA], one.Number(ColumnNames.Play)[d.RowA], two.Number(ColumnNames.Play)[d.RowB], d.Column, d.ValueA, d.ValueB,
            ]),
        ]);
}
