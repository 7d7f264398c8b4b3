using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Tendency.Booklet.Pages.Scripts;
using Tendency.Booklet.Pdf;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Counts.Scripts;
using Tendency.Breakdown.Situations;
using Tendency.Files;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>A practice script drawn in the opponent's proportions.</summary>
internal static class ScriptCommand
{
    private const int MostSnaps = 400;

    public static Command Create()
    {
        var snaps = new Option<int>("--plays") { Description = $"Snaps in the script (default {PracticeScript.UsualSnaps}).", HelpName = "N", DefaultValueFactory = _ => PracticeScript.UsualSnaps, CustomParser = Snaps };
        var period = new Option<ScriptPeriod>("--period") { Description = "Period of practice (default team).", HelpName = string.Join('|', ScriptPeriod.All.Select(p => p.Name)), DefaultValueFactory = _ => ScriptPeriod.All[0], CustomParser = Period };
        var paper = PaperOption.Create();
        var command = new ChartCommand(
            "script",
            "A practice script in their proportions: real plays of theirs, drawn so that even twelve snaps keep the mix. Writes cards for a name that ends in pdf or html.",
            "sample-logs/port-halden --plays 24",
            "sample-logs/port-halden --plays 12 --period third-down -o third-down.pdf",
            "sample-logs/port-halden --period red-zone --seed 2 --format csv -o red-zone.csv")
        { snaps, period, paper };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetValue(snaps), parsed.GetValue(period)!, parsed.GetValue(paper)));
        return command;
    }

    private static int Run(Request request, int snaps, ScriptPeriod period, PaperSize paper)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request, Unit.Offense);
        var script = PracticeScript.Draw(studied.Plays, period, snaps, request.Seed);
        if (request.Output is { } path && PrintedFile.IsPrinted(path))
        {
            var cards = ScriptCards.Compose(BookletStudy.Of(week, studied, GameWeights.Equal, request.Seed), script, BookletStudy.Dated(week.Week));
            _ = Progress.Of($"printing {path}", request, () => PrintedFile.Write(cards, path, paper));
        }
        else
        {
            OutputFile.Write(request.Output, TableText.Write(request.Format == OutputFormat.Text ? Readable(script) : Contract(script), request.Format));
        }

        Say(script, snaps, request);
        return ProblemReport.Write(week, studied, request.Quiet);
    }

    private static void Say(PracticeScript script, int snaps, Request request)
    {
        if (script.Snaps.Count == 0)
        {
            Console.Error.WriteLine(script.Plays.IsCharted(script.Period.Needs)
                ? $"no play for the period {script.Period.Name}"
                : $"not charted: {script.Period.Needs}, or no play for the period {script.Period.Name}");
        }
        else if (!request.Quiet)
        {
            if (snaps > script.Plays.Rows)
            {
                Console.Error.WriteLine($"{script.Plays.Rows} plays for {snaps} snaps: plays come up more than once.");
            }

            Console.Error.WriteLine(PracticeScript.Caution);
        }
    }

    private static OutputTable Contract(PracticeScript script) => new(
        ["period_order", "game", "play", "situation", "formation", "back_side", "call", "detail"],
        [.. script.Snaps.Select(snap => (object?[])[snap.Order, snap.Game, snap.Play, snap.Situation, snap.Formation, snap.BackSide, snap.Call, snap.Detail])]);

    /// <summary>In the order in which a coach reads a script aloud, the film last.</summary>
    private static OutputTable Readable(PracticeScript script) => new(
        ["snap", "situation", "formation", "back", "call", "detail", "show"],
        [.. script.Snaps.Select(snap => (object?[])[snap.Order, snap.Situation, snap.Formation, snap.BackSide, snap.Call, snap.Detail, Show(snap)])]);

    private static string Show(ScriptSnap snap) =>
        string.Create(CultureInfo.InvariantCulture, $"{snap.Game} {snap.Play}{(snap.Clip.Length == 0 ? "" : $" ({snap.Clip})")}");

    private static int Snaps(ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var snaps) && snaps is >= 1 and <= MostSnaps)
        {
            return snaps;
        }

        result.AddError($"--plays takes a number from 1 to {MostSnaps}, not '{text}'.");
        return PracticeScript.UsualSnaps;
    }

    private static ScriptPeriod Period(ArgumentResult result)
    {
        var text = result.Tokens[0].Value.ToLowerInvariant();
        var period = ScriptPeriod.All.FirstOrDefault(p => p.Name == text);
        if (period is null)
        {
            result.AddError($"--period takes {string.Join(", ", ScriptPeriod.All.Select(p => p.Name))}, not '{text}'.");
        }

        return period ?? ScriptPeriod.All[0];
    }
}
