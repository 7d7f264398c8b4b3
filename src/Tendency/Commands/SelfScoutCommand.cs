using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text;
using Tendency.Breakdown.Findings.SelfScouts;
using Tendency.Breakdown.Situations;
using Tendency.Input;
using Tendency.Output;

namespace Tendency.Commands;

/// <summary>The same lens on our own calls.</summary>
internal static class SelfScoutCommand
{
    public static Command Create()
    {
        var unit = new Option<Unit?>("--unit") { Description = "Which side of the ball of ours (default: the one our charts hold).", HelpName = "offense|defense", CustomParser = UnitOf };
        var command = new ChartCommand(
            "selfscout",
            "Our own calls as the next opponent reads them: what each tell costs, since when, and how many calls break it.",
            "sample-logs/our-team/offense --unit offense",
            "sample-logs/our-team/defense --unit defense --format csv -o us.csv")
        { unit };
        var common = new CommonOptions().AddTo(command);
        command.SetAction(parsed => Run(common.Read(parsed), parsed.GetValue(unit)));
        return command;
    }

    private static int Run(Request request, Unit? unit)
    {
        var week = ChartedWeek.From(request);
        var studied = week.Choose(request, unit);
        var report = SelfScout.Run(studied, new SelfScoutOptions { Level = week.Week.Level, Seed = request.Seed });
        OutputFile.Write(request.Output, request.Format == OutputFormat.Text ? Text(report) : TableText.Write(Table(report), request.Format));
        NotCharted.Report(studied.Plays, report.NotCharted.Select(n => n.Column));
        return ProblemReport.Write(week, studied, request.Quiet);
    }

    private static string Text(SelfScoutReport report)
    {
        var text = new StringBuilder();
        foreach (var tell in report.Tells)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"{tell.Rank,3}  {SelfTellSentence.Claim(tell)}\n")
                .Append($"     {SelfTellSentence.Cost(tell)}\n")
                .Append($"     {SelfTellSentence.Break(tell)}\n")
                .Append($"     {SelfTellSentence.Price(tell)}\n")
                .Append($"     {SelfTellSentence.Keep(tell)}\n");
        }

        return text.Append(report.Tells.Count == 0 ? "Nothing gives us away.\n" : "")
            .Append(CultureInfo.InvariantCulture, $"{report.Searched} situations searched on {report.Plays} plays of {report.Games.Count} games; dearest first.\n")
            .ToString();
    }

    private static OutputTable Table(SelfScoutReport report) => new(
        [
            "rank", "question", "situation", "outcome", "plays", "count", "share", "low", "high", "base_share", "expected_share", "p_value", "q_value", "games",
            "games_same_way", "snaps_a_game", "money_share", "cost", "since", "faded", "seen", "seen_plays", "seen_count", "break_call", "break_snaps",
            "break_calls_on_film", "thin_calls_on_film", "break_calls", "break_games", "usual_plays", "usual_successes", "other_plays", "other_successes",
            "other_from_look", "success_difference", "success_difference_low", "success_difference_high", "mix", "advice", "counter", "plays_list",
        ],
        [.. report.Tells.Select(Row)]);

    private static object?[] Row(SelfTell s)
    {
        var t = s.Tell;
        return
        [
            s.Rank, s.Question.Name, t.Situation, $"{s.Question.Outcome}={t.Outcome}", t.Plays, t.Count, t.Share, t.Range.Low, t.Range.High, t.BaseShare, t.ShrunkShare,
            t.PValue, t.QValue, t.Games, t.GamesSameWay, s.SnapsAGame, s.MoneyShare, s.Cost, s.History.Since, s.History.Faded, s.History.IsSeen ? "yes" : "no",
            s.History.SeenPlays, s.History.SeenCount, s.Other, s.Break.SnapsAGame, s.Break.CallsOnFilm,
            s.Break.CallsToThin, s.Break.Calls, s.Break.Calls is null ? null : s.Break.Games, s.Film.Usual.Plays, s.Film.Usual.Count, s.Film.Other.Plays,
            s.Film.Other.Count, s.Film.OtherFromLook ? "yes" : "no", s.Film.Difference, s.Film.Range?.Low, s.Film.Range?.High, Mix(s.Film.Verdict),
            s.Advice.ToString().ToLowerInvariant(), s.Counter, string.Join(' ', t.PlaysList),
        ];
    }

    private static string Mix(MixVerdict verdict) => verdict switch
    {
        MixVerdict.Gains => "gains",
        MixVerdict.Loses => "loses",
        MixVerdict.TooClose => "too close",
        _ => "",
    };

    private static Unit? UnitOf(ArgumentResult result)
    {
        var text = result.Tokens[0].Value.ToLowerInvariant();
        if (text is "offense" or "defense")
        {
            return text == "offense" ? Unit.Offense : Unit.Defense;
        }

        result.AddError($"--unit takes offense or defense, not '{text}'.");
        return null;
    }
}
