using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>The fronts of the plan held against the plays studied.</summary>
internal sealed record FrontStudy(FrontPlan Plan, FrontCheck Check, StudiedPlays Studied, FrontOptions Options)
{
    public static FrontStudy Of(ChartedWeek week, StudiedPlays studied, int seed, PlayLog? ownFilm = null)
    {
        var plan = FrontPlan.Open(week.Folder);
        var options = FrontOptions.From(week.Week) with { Seed = seed };
        return new FrontStudy(plan, FrontCheck.Of(studied.Plays, plan.Book, plan.Fronts, options, ownFilm), studied, options);
    }

    public IReadOnlyList<FrontCardLine> Card() => FrontCard.Of(Studied.Plays, Check, Options);
}
