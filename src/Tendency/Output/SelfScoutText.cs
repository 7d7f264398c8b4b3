using System.Globalization;
using System.Text;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.SelfScouts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Output;

/// <summary>A self-scout as text and as tables.</summary>
internal static class SelfScoutText
{
    private const int MostCompared = 20;

    public static string Of(SelfScoutReport report, IReadOnlyList<FilmRow> film)
    {
        var text = new StringBuilder();
        foreach (var tell in report.Tells)
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"{tell.Rank,3}  {SelfTellSentence.Claim(tell)}\n")
                .Append(CultureInfo.InvariantCulture, $"     {SelfTellSentence.Cost(tell)}\n")
                .Append(CultureInfo.InvariantCulture, $"     {SelfTellSentence.Break(tell)}\n")
                .Append(CultureInfo.InvariantCulture, $"     {SelfTellSentence.Price(tell)}\n")
                .Append(CultureInfo.InvariantCulture, $"     {SelfTellSentence.Keep(tell)}\n");
        }

        _ = text.Append(report.Tells.Count == 0 ? "Nothing gives us away.\n" : "")
            .Append(CultureInfo.InvariantCulture, $"{report.Searched} situations searched on {report.Plays} plays of {report.Games.Count} {(report.Games.Count == 1 ? "game" : "games")}; dearest first.\n");
        foreach (var row in film)
        {
            _ = text.Append(row.RunScheme.Length == 0 ? "\n" : "    ")
                .Append(row.RunScheme.Length == 0 ? $"{row.Front}: runs" : $"{row.RunScheme} {row.Side?.Word()}")
                .Append(CultureInfo.InvariantCulture, $" gained enough {row.Successes} of {row.Plays} (likely {Percent(row.Success.Low)}–{Percent(row.Success.High)} %)\n");
        }

        return text.ToString();
    }

    public static OutputTable Table(SelfScoutReport report) => new(
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
            s.History.SeenPlays, s.History.SeenCount, s.Other, s.Break.SnapsAGame, s.Break.CallsOnFilm, s.Break.CallsToThin, s.Break.Calls,
            s.Break.Calls is null ? null : s.Break.Games, s.Film.Usual.Plays, s.Film.Usual.Count, s.Film.Other.Plays, s.Film.Other.Count,
            s.Film.OtherFromLook ? "yes" : "no", s.Film.Difference, s.Film.Range?.Low, s.Film.Range?.High, Mix(s.Film.Verdict),
            s.Advice.ToString().ToLowerInvariant(), s.Counter, string.Join(' ', t.PlaysList),
        ];
    }

    public static string Of(IReadOnlyList<ComparedShare> rows, SelfScoutOptions options)
    {
        var sure = rows.Where(row => row.QValue <= options.Fdr).ToArray();
        var text = new StringBuilder();
        foreach (var row in sure.Take(MostCompared))
        {
            _ = text.Append(CultureInfo.InvariantCulture, $"{SituationWords.Of(row.Conditions)}: {SituationWords.Outcome(row.Column, row.Outcome)} {Percent(row.Ours.Share!.Value)} % ({row.Ours}) against {Percent(row.Theirs.Share!.Value)} % ({row.Theirs}); {Signed(row.Difference)} points (likely {Signed(row.Range.Low)} to {Signed(row.Range.High)})\n");
        }

        return text.Append(sure.Length == 0 ? "No difference is sure.\n" : sure.Length > MostCompared ? $"and {sure.Length - MostCompared} more; see them all with --format csv\n" : "")
            .Append(CultureInfo.InvariantCulture, $"{rows.Count} shares compared; false alarms among those listed: about {Percent(options.Fdr)} %.\n")
            .ToString();
    }

    public static OutputTable Table(IReadOnlyList<ComparedShare> rows) => new(
        ["situation", "outcome", "plays", "count", "share", "against_plays", "against_count", "against_share", "difference", "low", "high", "p_value", "q_value"],
        [
            .. rows.Select(row => (object?[])
            [
                string.Join(" & ", row.Conditions.Select(c => $"{c.Name}={c.Value}")), $"{row.Column}={row.Outcome}", row.Ours.Plays, row.Ours.Count, row.Ours.Share,
                row.Theirs.Plays, row.Theirs.Count, row.Theirs.Share, row.Difference, row.Range.Low, row.Range.High, row.PValue, row.QValue,
            ]),
        ]);

    private static string Mix(MixVerdict verdict) => verdict switch
    {
        MixVerdict.Gains => "gains",
        MixVerdict.Loses => "loses",
        MixVerdict.TooClose => "too close",
        _ => "",
    };

    private static string Percent(double share) => Math.Round(100 * share, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);

    private static string Signed(double share)
    {
        var points = Math.Round(100 * share, MidpointRounding.AwayFromZero);
        return points > 0 ? $"+{points:0}" : points < 0 ? $"−{-points:0}" : "0";
    }
}
