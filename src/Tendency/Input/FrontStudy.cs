using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>The fronts of the plan held against the plays studied.</summary>
internal sealed record FrontStudy(FrontPlan Plan, FrontCheck Check, StudiedPlays Studied, FrontOptions Options)
{
    /// <param name="weights">How much each game counts in their mix.</param>
    public static FrontStudy Of(ChartedWeek week, StudiedPlays studied, GameWeights weights, int seed, PlayLog? ownFilm = null)
    {
        var plan = FrontPlan.Open(week.Folder);
        var options = FrontOptions.From(week.Week) with { Seed = seed, Weights = weights };
        return new FrontStudy(plan, FrontCheck.Of(studied.Plays, plan.Book, plan.Fronts, options, ownFilm), studied, options);
    }

    public IReadOnlyList<FrontCardLine> Card() => FrontCard.Of(Studied.Plays, Check, Options);
}
