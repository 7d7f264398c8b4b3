using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>How well calls can be guessed from what is seen before the snap, scored on games held out.</summary>
internal static class GuessCommand
{
    public static Command Create()
    {
        var of = new Option<string>("--of") { Description = "Outcome: a column or dimension of a few answers (default call).", HelpName = "OUTCOME", DefaultValueFactory = _ => ColumnNames.Call, CustomParser = Outcome };
        var forward = new Option<int>("--forward") { Description = "Guess each game from the N games before it (default: from all other games).", HelpName = "N", CustomParser = Games };
        var command = new ChartCommand(
            "guess",
            "How well calls can be guessed from what is seen before the snap, scored on games the guess was not trained on.",
            "sample-logs/port-halden",
            "sample-logs/port-halden --of run_family --only call=run",
            "charts/ --forward 4 --format csv")
        { of, forward };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetRequiredValue(of), parsed.GetValue(forward)));
        return command;
    }

    private static int Run(Request request, string of, int forward)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request);
        var report = Guess.Run(studied.Plays, of, new GuessOptions { Forward = forward, Seed = request.Seed, Level = week.Week.Level });
        OutputFile.Write(request.Output, request.Format == OutputFormat.Text ? GuessText.Of(report, studied.Plays) : TableText.Write(Table(report), request.Format));
        NotCharted.Report(studied.Plays, [of], request.Quiet);
        Say(report, request.Quiet);
        return ProblemReport.Write(week, studied, request.Quiet);
    }

    private static void Say(GuessReport report, bool quiet)
    {
        if (!quiet && report.WhyNot.Length > 0)
        {
            Console.Error.WriteLine($"nothing to score: {report.WhyNot}");
        }

        if (!quiet && report.Undecided > 0)
        {
            Console.Error.WriteLine($"not guessed {report.Undecided}: neither {string.Join(" nor ", report.Outcomes)}");
        }
    }

    private static OutputTable Table(GuessReport report) => new(
        ["model", "plays", "accuracy", "log_loss", "brier", "bits_saved"],
        [.. report.Rows.Select(r => (object?[])[r.Model, r.Plays, r.Accuracy, r.LogLoss, r.Brier, r.BitsSaved])]);

    private static string Outcome(ArgumentResult result)
    {
        var name = NameOptions.One(result);
        if (UnguessableColumns.WhyNot(name) is { Length: > 0 } why)
        {
            result.AddError($"--of: {why}");
        }

        return name;
    }

    private static int Games(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var games) || games is < 1 or > 1000)
        {
            result.AddError($"--forward takes a number of games from 1 up, not '{text}'.");
        }

        return games;
    }
}
