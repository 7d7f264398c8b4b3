using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>What may be said of the fronts: "best" only from a chance of six in ten on.</summary>
internal static class FrontVerdict
{
    // Leaders within this many points of chance are called level.
    private const double Level = .05;

    /// <summary>The likeliest front beside the one that allows least; null when there is no other.</summary>
    public static FrontRank? Next(FrontRanking ranking) => ranking.Ranks.Skip(1).MaxBy(rank => rank.ProbabilityBest);

    /// <summary>The first words, bold: "Start in tight." or "No clear winner."</summary>
    public static string Lead(FrontRanking ranking)
    {
        var (first, second) = (ranking.Ranks[0], Next(ranking));
        return ranking.HasClearWinner || second is null ? $"Start in {first.Front}."
            : Math.Abs(first.ProbabilityBest - second.ProbabilityBest) <= Level ? $"{Words.Title(first.Front)} and {second.Front} are level."
            : "No clear winner.";
    }

    /// <summary>What carries them: "It is best in 78 of 100 draws of their mix."</summary>
    public static string Evidence(FrontRanking ranking)
    {
        var (first, second) = (ranking.Ranks[0], Next(ranking));
        return second is null ? "The plan holds no other front."
            : ranking.HasClearWinner ? $"Of {Words.Number(ranking.Ranks.Count)} fronts it is best in {Draws(first)} of 100 re-draws of their run mix and of what each front allows."
            : $"{Words.Title(first.Front)} allows least in {Draws(first)} of 100 re-draws, {second.Front} in {Draws(second)}. Pick by personnel; the numbers do not separate them.";
    }

    /// <summary>When the answer turns: said only for a share the charts could hold. Empty where none of the families turns it.</summary>
    public static string Turn(FrontCheck check)
    {
        var first = check.Ranking.Ranks[0].Front;
        var turns = check.BreakEvens.Where(even => (even.FrontA == first || even.FrontB == first) && even.BreakEvenShare is not null)
            .Select(even => (Even: even, Other: even.FrontA == first ? even.FrontB : even.FrontA, Distance: Math.Abs(even.BreakEvenShare!.Value - even.ShareNow)))
            .OrderBy(turn => turn.Distance).ToArray();
        if (turns.Length == 0)
        {
            return "";
        }

        var (turn, other, _) = turns[0];
        var now = Figures.Percent(turn.ShareNow);
        var range = Figures.Range(new Inference.Intervals.Interval(turn.Low, turn.High));
        var rises = turn.BetterAbove != first;
        return $"{Words.Title(first)} allows less than {other} until {Family(turn.Family)} {(rises ? "pass" : "fall under")} {Figures.Percent(turn.BreakEvenShare!.Value)} of runs; they are at {now}, likely {range}.";
    }

    /// <summary>"gap schemes", "pulls", "outside zones", "options".</summary>
    public static string Family(string family) => family switch { "gap" => "gap schemes", "pull" => "pulls", "option" => "options", _ => $"{family} runs" };

    private static string Draws(FrontRank rank) => Figures.Number(rank.ProbabilityBest * 100, 0);
}
