using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>How much each game counts, as the week file or the user asks: the one place where every command gets it.</summary>
/// <param name="Games">Age and likeness multiply.</param>
/// <param name="Problems">Why a wish can not be granted; all games then count alike in that respect.</param>
internal sealed record WeekWeights(GameWeights Games, IReadOnlyList<Problem> Problems)
{
    /// <param name="halfLife">Games; null = the week file's.</param>
    /// <param name="likeOurs">Asked for by option, whatever the week file says.</param>
    public static WeekWeights Of(ChartedWeek week, StudiedPlays studied, Request request, double? halfLife = null, bool likeOurs = false)
    {
        // Age and likeness are the game's, so all of its plays speak, not only those picked out by --only.
        var team = studied.Unit == Unit.Offense ? ColumnNames.Offense : ColumnNames.Defense;
        var whole = StudiedPlays.Choose(week.Log, week.Week, [.. request.Only.Where(condition => condition.Name == team)], studied.Unit, out _) ?? studied;
        var recent = GameWeights.Recency(whole.Plays, halfLife ?? week.Week.HalfLifeGames);
        if (!likeOurs && (!week.Week.LikeOurDefense || week.Week.Fronts.Count == 0))
        {
            // A wish without fronts in the plan was refused when the week file was read.
            return new WeekWeights(recent, []);
        }

        var (like, refusal) = LikeOurs(week, whole);
        return new WeekWeights(recent.And(like), refusal.Length == 0 ? [] : [Refused(week, refusal, likeOurs)]);
    }

    private static (GameWeights Weights, string Refusal) LikeOurs(ChartedWeek week, StudiedPlays whole)
    {
        var book = FrontPlan.Open(week.Folder).Book;
        if (whole.Unit == Unit.Defense)
        {
            return (GameWeights.Equal, "A defense's own fronts are studied here: only an offense meets defenses like ours.");
        }

        if (week.Week.Fronts.Count == 0)
        {
            return (GameWeights.Equal, "The plan names no fronts: write fronts = [\"over\", \"under\"] under [plan] in the week file.");
        }

        // Not the plan's own fallback to every front there is: then every game would be like ours.
        var plan = book.Plan(week.Week.Fronts).Fronts.Select(front => front.Name).ToHashSet(StringComparer.Ordinal);
        if (plan.Count == 0)
        {
            return (GameWeights.Equal, $"No front of our plan is one we know: {Listed(week.Week.Fronts)}.");
        }

        if (!whole.Plays.IsCharted(ColumnNames.Front))
        {
            return (GameWeights.Equal, "front is not charted.");
        }

        var like = GameWeights.LikeOurs(whole.Plays, front => book.Front(front) is { } known && plan.Contains(known.Name));
        return like.IsOn
            ? (like, "")
            : (like, $"None of the fronts charted is in our plan. Charted: {Listed(CrossTab.Values(whole.Plays, ColumnNames.Front).Select(front => front.Value))}. Our plan: {Listed(week.Week.Fronts)}.");
    }

    private static Problem Refused(ChartedWeek week, string why, bool byOption)
    {
        var place = byOption ? new Place("--like-ours", 0, "") : new Place("week.toml", week.Week.LikeOurDefenseLine, "like_our_defense");
        return new Problem(FrontRules.NoneLikeOurs, place, "", $"{why} All games count alike.");
    }

    private static string Listed(IEnumerable<string> names)
    {
        const int Most = 8;
        var all = names.ToArray();
        return string.Join(", ", all.Take(Most)) + (all.Length > Most ? $" and {all.Length - Most} more" : "");
    }

    /// <summary>Says to standard error how much each game counts; nothing when all count the same.</summary>
    public void Say(StudiedPlays studied, bool quiet)
    {
        if (quiet || !Games.IsOn)
        {
            return;
        }

        Console.Error.WriteLine(Games.Why);
        var plays = studied.Plays.Category(ColumnNames.Game);
        foreach (var game in plays.UsedLevels())
        {
            var fronts = !Games.Reasons.Any(reason => reason.Name == "fronts") ? ""
                : Games.LikeFronts.TryGetValue(game, out var like) ? $", {like} charted fronts like ours"
                : ", no front charted";
            Console.Error.WriteLine($"  {game} counts {Games.Of(game):0.##}{fronts}");
        }

        var counted = Games.EffectivePlays(Enumerable.Range(0, studied.Plays.Rows).Select(row => plays[row]));
        Console.Error.WriteLine($"  {studied.Plays.Rows} plays count like {counted:0} of equal weight");
    }
}
