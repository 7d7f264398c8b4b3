using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Situations;

/// <summary>All dimensions that follow from the charted cells, computed over every snap of the charts before any is left out.</summary>
public static class DerivedColumns
{
    /// <returns>The log with each derived column added; one that needs an uncharted column is there without a charted cell.</returns>
    public static PlayLog AddTo(PlayLog log, WeekPlan week, Glossary glossary)
    {
        var withCalls = Calls.Resolve(log, week.Rpo);
        var withSides = Sides.AddTo(withCalls);
        var withState = withSides
            .With(DownAndDistance.Bands(withSides, week.Boundaries))
            .With(FieldPosition.Zones(withSides, week.Boundaries))
            .With(GameState.Columns(withSides, week.Boundaries))
            .With(Families.Columns(withSides, glossary))
            .With(Outcomes.Columns(withSides, week.Boundaries));
        return withState.With(Sequence.Columns(withState, week.Boundaries));
    }
}
