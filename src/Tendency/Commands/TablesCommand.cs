using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Tendency.Breakdown.Counts;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>One frequency table: how often each outcome occurs in each combination of situations.</summary>
internal static class TablesCommand
{
    private static readonly string[] s_methods = ["wilson", "jeffreys", "exact", "agresti-coull"];
    private static readonly string[] s_methodNames = ["Wilson's", "Jeffreys's", "exact", "Agresti and Coull's"];

    public static Command Create()
    {
        var by = new Option<string[]>("--by") { Description = "One to three columns or dimensions to count by.", HelpName = "a[,b[,c]]", CustomParser = UpToThree, Arity = ArgumentArity.OneOrMore };
        var of = new Option<string>("--of") { Description = "Outcome: any column or dimension.", HelpName = "OUTCOME", Required = true, CustomParser = NameOptions.One };
        var interval = new Option<IntervalMethod>("--interval") { Description = "How each interval is made.", HelpName = string.Join('|', s_methods), CustomParser = Method };
        var clustered = new Option<bool>("--clustered") { Description = "Let plays of one game count as alike: intervals rest on effective plays." };
        var simultaneous = new Option<bool>("--simultaneous") { Description = "Intervals of one combination's outcomes that hold all at once (Goodman)." };
        var halfLife = new Option<double?>("--half-life") { Description = "Weigh recent games more; a game this many games older weighs half.", HelpName = "GAMES", CustomParser = Games };
        var likeOurs = new Option<bool>("--like-ours") { Description = "Weigh games more in which they faced the fronts of our plan." };
        var command = new ChartCommand(
            "tables",
            "One frequency table: plays, count, share and likely range of each outcome in each combination.",
            "sample-logs/port-halden --by down_distance --of call",
            "sample-logs/port-halden --by formation,back_side --of run_to --only call=run",
            "sample-logs/port-halden --of call --half-life 2 --like-ours",
            "charts/ --by field_zone --of run_scheme --interval exact --format csv -o zones.csv")
        { by, of, interval, clustered, simultaneous, halfLife, likeOurs };
        var common = new CommonOptions().AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetValue(simultaneous) && result.GetResult(interval) is not null)
            {
                result.AddError("--simultaneous has its own interval; leave --interval out.");
            }
        });
        command.SetAction(parsed => Run(
            common.Read(parsed),
            parsed.GetValue(by) ?? [],
            parsed.GetRequiredValue(of),
            new TableOptions { Method = parsed.GetValue(interval), Clustered = parsed.GetValue(clustered), Simultaneous = parsed.GetValue(simultaneous) },
            parsed.GetValue(halfLife),
            parsed.GetValue(likeOurs)));
        return command;
    }

    private static int Run(Request request, IReadOnlyList<string> by, string of, TableOptions options, double? halfLife, bool likeOurs)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request);
        var weights = WeekWeights.Of(week, studied, request, halfLife, likeOurs);
        var asked = options with { Level = week.Week.Level, Weights = weights.Games };
        var counted = FrequencyTable.Of(studied.Plays, by, of, asked);
        var text = request.Format == OutputFormat.Text
            ? TableText.Write(Readable(counted, by, weights.Games.IsOn), request.Format) + Reading(asked) + DriftText.Of(studied.Plays, by, of, request.Seed)
            : TableText.Write(Contract(counted, by), request.Format);
        OutputFile.Write(request.Output, text);
        NotCharted.Report(studied.Plays, [.. by, of], request.Quiet);
        weights.Say(studied, request.Quiet);
        return ProblemReport.Write(week.With(weights.Problems), studied, request.Quiet);
    }

    private static OutputTable Contract(IReadOnlyList<FrequencyRow> counted, IReadOnlyList<string> by) => new(
        [.. by, "outcome", "plays", "count", "share", "low", "high"],
        [.. counted.Select(row => (object?[])[.. row.By, row.Outcome, row.Tally.Plays, row.Tally.Count, row.Share, row.Likely?.Low, row.Likely?.High])]);

    // A share of few plays is left to its count: four passes in four snaps are no "100%". The same for plays that are worth few.
    private static OutputTable Readable(IReadOnlyList<FrequencyRow> counted, IReadOnlyList<string> by, bool weighted) => new(
        [.. by, "outcome", "plays", "count", "share", "low", "high", .. weighted ? (string[])["like"] : []],
        [.. counted.Select(row => (object?[])
        [
            .. row.By, row.Outcome, row.Tally.Plays, row.Tally.Count,
            .. row.Tally.Plays < Estimate.FewestPlays || (weighted && Like(row) < Estimate.FewestPlays) ? (object?[])["few", null, null] : [row.Share, row.Likely?.Low, row.Likely?.High],
            .. weighted ? (object?[])[Like(row)] : [],
        ])]);

    private static int Like(FrequencyRow row) => (int)Math.Round(row.EffectivePlays, MidpointRounding.AwayFromZero);

    private static string Reading(TableOptions options)
    {
        var method = options.Simultaneous ? "Goodman's, all outcomes of a situation at once" : $"{s_methodNames[(int)options.Method]}, each share by itself";
        var games = options.Clustered ? "plays of one game counted as alike." : "plays of one game taken as independent (--clustered: as alike).";
        var level = (100 * options.Level).ToString("0.###", CultureInfo.InvariantCulture);
        var like = options.Weights.IsOn ? " like: plays of equal weight the weighted share is worth; plays and count are plain." : "";
        return $"low, high: {level}% range, {method}; {games} few: under {Estimate.FewestPlays} plays.{like}\n";
    }

    private static string[] UpToThree(ArgumentResult result)
    {
        var names = NameOptions.Several(result);
        if (names.Length > 3 || names.Distinct(StringComparer.Ordinal).Count() < names.Length)
        {
            result.AddError("--by takes one to three different names.");
        }

        return names;
    }

    private static double? Games(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var games) && games is > 0 and < 1000)
        {
            return games;
        }

        result.AddError($"--half-life takes a number of games above 0, not '{text}'.");
        return null;
    }

    private static IntervalMethod Method(ArgumentResult result)
    {
        var index = Array.IndexOf(s_methods, result.Tokens[0].Value.ToLowerInvariant());
        if (index < 0)
        {
            result.AddError($"--interval takes {string.Join(", ", s_methods)}, not '{result.Tokens[0].Value}'.");
        }

        return (IntervalMethod)Math.Max(index, 0);
    }
}
