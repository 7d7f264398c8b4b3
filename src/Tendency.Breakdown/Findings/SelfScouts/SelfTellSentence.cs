using System.Globalization;
using Tendency.Breakdown.Counts;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>A tell of ours as it is said in the staff room.</summary>
public static class SelfTellSentence
{
    /// <summary>"8 snaps a game, 3 in 10 on money downs; tells them about 3.1 snaps a game. All season; on film 30 of 34."</summary>
    public static string Cost(SelfTell tell) =>
        $"{One(tell.SnapsAGame)} snaps a game, {Percent.Of(tell.MoneyShare)} on money downs: they guess about {One(tell.Cost)} snaps a game better. {Since(tell)}";

    /// <summary>"Since game 3 (Brackwater). On film in the last four games: 30 of 34."</summary>
    public static string Since(SelfTell tell)
    {
        var history = tell.History;
        var begun = history.Since.Length > 0 ? $"Since {history.Since}." : history.Faded.Length > 0 ? $"Weaker since {history.Faded}." : "All season.";
        return history.IsSeen
            ? $"{begun} The next opponent has {history.SeenCount} of {history.SeenPlays} on film."
            : $"{begun} Old: the games on film no longer show it ({history.SeenCount} of {history.SeenPlays}).";
    }

    /// <summary>"Two tight, not 3rd and long: run 78% (42 of 54; likely 65–87), usual 53%; same way in 5 of 5 games."</summary>
    public static string Claim(SelfTell tell) => !tell.IsHabit
        ? TellSentence.Of(tell.Tell, tell.Question.Outcome)
        : $"{(tell.Tell.Conditions.Count == 0 ? $"On all {tell.Question.Among}" : $"{SituationWords.Of(tell.Tell.Conditions)}, {tell.Question.Among}")}: {SituationWords.Outcome(tell.Question.Outcome, tell.Tell.Outcome)} {Percent.Of(tell.Tell.Share)} "
            + $"({tell.Tell.Count} of {tell.Tell.Plays}; likely {Percent.Range(tell.Tell.Range)}), an even split would be 50%; "
            + $"same way in {tell.Tell.GamesSameWay} of {tell.Tell.Games} games";

    /// <summary>"Next game: pass on 6 of the 11 snaps from it; the games then on film tell no longer."</summary>
    public static string Break(SelfTell tell)
    {
        var plan = tell.Break;
        var other = Named(tell.Question.Outcome, tell.Other);
        if (tell.Other.Length == 0)
        {
            return "We never call anything else from it: carry the counter.";
        }

        var hidden = plan.Calls is not int calls ? $"To hide it in all games charted takes more than {BreakCount.MostGames} games."
            : plan.Games == 1 ? $"To hide it in all games charted: {calls} of {plan.SnapsAGame}."
            : $"To hide it in all games charted: {calls} of the next {plan.Games * plan.SnapsAGame}, over {plan.Games} games.";
        return (plan.CallsOnFilm, plan.CallsToThin) switch
        {
            (int film, _) => $"Next game: {other} on {film} of the {plan.SnapsAGame} snaps from it, and the games then on film tell no longer. {hidden}",
            (null, int thin) => $"Next game: {other} on {thin} of the {plan.SnapsAGame} snaps from it, and on film it is under {Percent.Of(tell.Question.LeastShare)}: a lean, not one to sit on. {hidden}",
            _ => $"One game is not enough: {other} on all {plan.SnapsAGame} snaps from it, and again. {hidden}",
        };
    }

    /// <summary>"Next game: pass on 10 of 11 snaps hides it on film."</summary>
    public static string BreakInShort(SelfTell tell)
    {
        var other = Named(tell.Question.Outcome, tell.Other);
        return tell.Other.Length == 0 || tell.Advice == Advice.Keep ? "It wins: keep it, carry the counter."
            : tell.Break.CallsOnFilm is int film ? $"Next game: {other} on {film} of {tell.Break.SnapsAGame} snaps hides it on film."
            : tell.Break.CallsToThin is int thin ? $"Next game: {other} on {thin} of {tell.Break.SnapsAGame} snaps: under {Percent.Of(tell.Question.LeastShare)} on film."
            : $"{Named(tell.Question.Outcome, tell.Other, true)} on all {tell.Break.SnapsAGame} snaps will not hide it: carry the counter.";
    }

    /// <summary>"Pass won 6 of 12, the usual 16 of 41."</summary>
    public static string PriceInShort(SelfTell tell) => tell.Film.IsKnown
        ? $"{Named(tell.Question.Outcome, tell.Other, true)} won {tell.Film.Other}{(tell.Film.OtherFromLook ? "" : " in all our plays")}, the usual {tell.Film.Usual}."
        : "";

    /// <summary>"By our film pass succeeded 38% (8 of 21), run 49% (18 of 37): costs 0.6 successes a game (likely −0.8 to 2.0); too close to say."</summary>
    public static string Price(SelfTell tell)
    {
        var film = tell.Film;
        if (film.Range is not { } range)
        {
            return "What breaking it costs: too few results charted.";
        }

        var verdict = film.Verdict switch
        {
            MixVerdict.Gains => "a less lopsided mix gains",
            MixVerdict.Loses => "a less lopsided mix loses while nobody sits on it",
            _ => "whether a less lopsided mix gains is too close to say",
        };
        var unit = film.OtherFromLook ? "" : " in all our plays";
        return $"Our film: {Named(tell.Question.Outcome, tell.Other)} won {Of(film.Other)}{unit}, the usual {Of(film.Usual)}; "
            + $"{Signed(100 * film.Difference!.Value)} points a call (likely {Signed(100 * range.Low)} to {Signed(100 * range.High)}): {verdict}.";
    }

    /// <summary>"Or keep it and carry: play action off that run's first steps."</summary>
    public static string Keep(SelfTell tell) =>
        tell.Advice == Advice.Keep ? $"It wins: keep it, and carry {tell.Counter}." : $"Or keep it and carry {tell.Counter}.";

    private static string Named(string column, string value, bool starts = false)
    {
        var word = SituationWords.Outcome(column, value);
        return starts && word.Length > 0 ? char.ToUpperInvariant(word[0]) + word[1..] : word;
    }

    private static string Of(Tally tally) => $"{Percent.Of(tally)} ({tally})";

    private static string One(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Signed(double value)
    {
        var rounded = Math.Round(value, MidpointRounding.AwayFromZero);
        return rounded > 0 ? $"+{rounded:0}" : rounded < 0 ? $"−{-rounded:0}" : "0";
    }
}
