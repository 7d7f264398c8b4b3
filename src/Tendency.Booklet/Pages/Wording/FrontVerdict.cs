using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>What may be said of the fronts: "best" only from a chance of six in ten on.</summary>
internal static class FrontVerdict
{
    // Leaders within this many points of chance are called level.
    private const double Level = .05;

    /// <summary>The likeliest front beside the one that allows least; null when there is no other.</summary>
    public static FrontRank? Next(FrontRanking ranking) => ranking.Ranks.Skip(1).MaxBy(rank => rank.ProbabilityBest);

    /// <summary>The first words, bold: "Start in Tight." or "No clear winner."</summary>
    public static string Lead(FrontRanking ranking)
    {
        var (first, second) = (ranking.Ranks[0], Next(ranking));
        return ranking.HasClearWinner || second is null ? $"Start in {Words.Title(first.Front)}."
            : Math.Abs(first.ProbabilityBest - second.ProbabilityBest) <= Level ? $"{Words.Title(first.Front)} and {Words.Title(second.Front)} are level."
            : "No clear winner.";
    }

    /// <summary>What carries them: "It is best in 78 of 100 draws of their mix."</summary>
    public static string Evidence(FrontRanking ranking)
    {
        var (first, second) = (ranking.Ranks[0], Next(ranking));
        return second is null ? "The plan holds no other front."
            : ranking.HasClearWinner ? $"Of {Words.Number(ranking.Ranks.Count)} fronts it is best against the run in {Draws(first)} of 100 re-draws of their run mix and of what each front allows."
            : $"On runs {Words.Title(first.Front)} allows least in {Draws(first)} of 100 re-draws, {Words.Title(second.Front)} in {Draws(second)}.";
    }

    /// <summary>What the passes change: "With passes Over, in 38 of 100 re-draws." The runs alone do not choose a front for every down. Empty without a card.</summary>
    /// <param name="card">Our front by situation, all plays first.</param>
    /// <param name="onRuns">The front that allows least on runs.</param>
    public static string WithPasses(IReadOnlyList<FrontCardLine> card, string onRuns) => card.Count == 0 ? ""
        : $"With passes {(card[0].Front == onRuns ? "the same" : Words.Title(card[0].Front))}, in {Figures.Number(card[0].Sure * 100, 0)} of 100 re-draws.";

    /// <summary>When the answer turns: said only for a share the charts could hold. Empty where none of the families turns it.</summary>
    public static string Turn(Study study, FrontCheck check)
    {
        var first = check.Ranking.Ranks[0].Front;
        if (Nearest(check) is not { } turn)
        {
            return "";
        }

        var other = turn.FrontA == first ? turn.FrontB : turn.FrontA;
        var weighted = check.Matrix.Mix.EffectiveRuns < check.Matrix.Mix.Runs;
        var now = study.OfRuns(check, run => RunFamily.All.First(family => family.Name == turn.Family).Holds(run.Scheme));
        var rises = turn.BetterAbove != first;
        return $"{Words.Title(first)} allows less than {Words.Title(other)} until {Family(turn.Family)} {(rises ? "pass" : "fall under")} {Figures.Percent(turn.BreakEvenShare!.Value)} of runs; they are at {Figures.Percent(now.Share)}{(weighted ? " weighted" : "")}, likely {Figures.Range(now.Likely)}{(weighted ? $" (plain {Figures.Percent(turn.ShareAlike)})" : "")}.";
    }

    /// <summary>How sure that share is: by their mix alone, by the ratings before film, and with what each front allows in doubt as well.</summary>
    public static string TurnDoubt(FrontCheck check)
    {
        if (Nearest(check) is not { } turn)
        {
            return "";
        }

        var ratings = turn.ByRatings is { } share ? $"The ratings alone, before film, put it at {Figures.Percent(share)}. " : "The ratings alone, before film, have no turn. ";
        return turn.IfRatesHold.Range is { } range
            ? $"The turn lies at {Figures.Range(range)} if what each front allows is right. {ratings}With what the fronts allow in doubt too, it comes in {Figures.Number(turn.InAll.Chance * 100, 0)} of 100 draws."
            : "They have not shown that family: the turn rests on the ratings of all its schemes, each counted the same.";
    }

    /// <summary>Why a mix when they adjust: what each front gives up alone, and what the mix holds them to.</summary>
    public static string Adjusted(SchemeGame game)
    {
        var alone = game.Worst.Select(worst => $"{Words.Title(worst.Front)} {Figures.Percent(worst.Allowed)} to {Words.Plain(worst.Run)} {worst.Side.Word()}").ToArray();
        return alone.Length < 2
            ? string.Concat(game.Worst.Select(worst => $"Their best answer to it is {Words.Plain(worst.Run)} {worst.Side.Word()}, {Figures.Percent(worst.Allowed)}."))
            : $"Alone each has an answer to fear: {Words.Join(alone)}. So mixed, no run they have shown three times gets more than {Figures.Percent(game.Value)}.";
    }

    /// <summary>How far film moved the ratings, with the cell it moved most.</summary>
    public static string Film(FrontCheck check)
    {
        var cells = check.Matrix.Cells.SelectMany(row => row).ToArray();
        var filmed = cells.Where(cell => cell.Plays > 0).ToArray();
        var worth = $"Each cell is an expert rating worth {Words.Figured((int)Math.Round(check.PriorPlays), "play")} of film";
        if (filmed.Length == 0)
        {
            return $"{worth}; none of these fronts was charted against these runs.";
        }

        var most = filmed.MaxBy(cell => Math.Abs(cell.Moved))!;
        return $"{worth}; {Words.Figured(filmed.Sum(cell => cell.Plays), "charted run")} moved {filmed.Length} of {cells.Length} cells (a scheme to one side), "
            + $"most {Words.Title(most.Front)} against {Words.Plain(most.RunScheme)} {most.Side.Word()}: from {Figures.Percent(most.Prior)} to {Figures.Percent(most.SuccessAllowed)}, {most.Successes} of {most.Plays} on film.";
    }

    private static FrontBreakEven? Nearest(FrontCheck check)
    {
        var first = check.Ranking.Ranks[0].Front;
        return check.BreakEvens.Where(even => (even.FrontA == first || even.FrontB == first) && even.BreakEvenShare is not null)
            .OrderBy(even => Math.Abs(even.BreakEvenShare!.Value - even.ShareNow)).FirstOrDefault();
    }

    /// <summary>"gap schemes", "pulls", "outside zones", "options".</summary>
    public static string Family(string family) => family switch { "gap" => "gap schemes", "pull" => "pulls", "option" => "options", _ => $"{family} runs" };

    private static string Draws(FrontRank rank) => Figures.Number(rank.ProbabilityBest * 100, 0);
}
