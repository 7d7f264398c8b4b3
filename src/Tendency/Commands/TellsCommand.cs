using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Tendency.Breakdown.Findings;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>Ranked situations that give the call away.</summary>
internal static class TellsCommand
{
    public static Command Create()
    {
        var of = new Option<string>("--of") { Description = "Outcome: any column or dimension (default call).", HelpName = "OUTCOME", DefaultValueFactory = _ => "call", CustomParser = NameOptions.One };
        var depth = new Option<int>("--depth") { Description = "Most conditions of a situation (default 2).", HelpName = "1..3", DefaultValueFactory = _ => 2, CustomParser = r => Whole(r, 1, 3) };
        var fdr = new Option<double>("--fdr") { Description = "Share of false alarms accepted in the list (default 0.10).", HelpName = "0.10", DefaultValueFactory = _ => 0.10, CustomParser = Rate };
        var minPlays = new Option<int>("--min-plays") { Description = "Least plays of a situation that is looked at (default 8).", HelpName = "8", DefaultValueFactory = _ => 8, CustomParser = r => Whole(r, 2, 10_000) };
        var dimensions = new Option<string[]>("--dimensions") { Description = "What situations are made of (default: what is known before the snap, as far as charted).", HelpName = "a,b", CustomParser = NameOptions.Several };
        var command = new ChartCommand(
            "tells",
            "Situations that give the call away: ranked, paid for how many places were looked at, tried on games they were not found in.",
            "sample-logs/port-halden",
            "sample-logs/port-halden --of run_to --only call=run --depth 1",
            "sample-logs/our-team/defense --of pressure_to",
            "charts/ --fdr 0.05 --format csv -o tells.csv")
        { of, depth, fdr, minPlays, dimensions };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetRequiredValue(of), new TellOptions
        {
            Depth = parsed.GetValue(depth),
            Fdr = parsed.GetValue(fdr),
            MinPlays = parsed.GetValue(minPlays),
            Dimensions = parsed.GetValue(dimensions) ?? [],
            SearchesAll = parsed.GetValue(dimensions) is { Length: > 0 },
        }));
        return command;
    }

    private static int Run(Request request, string of, TellOptions options)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request);
        options = options with { Level = week.Week.Level, Seed = request.Seed };
        var report = Tells.Search(studied.Plays, of, options);
        OutputFile.Write(request.Output, request.Format == OutputFormat.Text
            ? TellText.Of(report, studied.Plays, SearchedAnew.Of(studied.Plays, of, options), request.Seed)
            : TableText.Write(Table(report), request.Format));
        NotCharted.Report(studied.Plays, [of, .. options.Dimensions], request.Quiet);
        return ProblemReport.Write(week, studied, request.Quiet);
    }

    private static OutputTable Table(TellReport report) => new(
        [
            "rank", "situation", "outcome", "plays", "count", "share", "low", "high", "base_share", "difference", "difference_low", "difference_high",
            "p_value", "q_value", "games", "games_same_way", "held_out_plays", "held_out_count", "plays_list",
        ],
        [
            .. report.Tells.Select(t => (object?[])
            [
                t.Rank, t.Situation, t.Outcome, t.Plays, t.Count, t.Share, t.Range.Low, t.Range.High, t.BaseShare, t.Difference, t.DifferenceRange.Low,
                t.DifferenceRange.High, t.PValue, t.QValue, t.Games, t.GamesSameWay, t.HeldOutPlays, t.HeldOutCount, string.Join(' ', t.PlaysList),
            ]),
        ]);

    private static int Whole(ArgumentResult result, int least, int most)
    {
        var text = result.Tokens[0].Value;
        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < least || number > most)
        {
            result.AddError($"{((OptionResult)result.Parent!).Option.Name} takes a whole number from {least} to {most}, not '{text}'.");
        }

        return number;
    }

    private static double Rate(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (!double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var rate) || rate is not (> 0 and < 1))
        {
            result.AddError($"--fdr takes a number between 0 and 1, not '{text}'.");
        }

        return rate;
    }
}
