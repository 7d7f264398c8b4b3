using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Findings;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>What looks tell beyond down and distance, as a headline.</summary>
internal static class GuessFinding
{
    /// <param name="dimensions">Where a most readable situation is looked for; it is named only where its dot is solid.</param>
    /// <param name="ours">Our own calls, as the opponent would guess them.</param>
    public static string Of(Study study, Guessed guessed, IEnumerable<string> dimensions, bool ours)
    {
        // Where always saying one call beats down and distance, that is what looks must beat.
        var byOneCall = guessed.Always.Count > guessed.DownAndDistance.Count;
        var usual = byOneCall ? guessed.Always : guessed.DownAndDistance;
        var all = guessed.All.Against(usual.Value);
        var (who, whose) = ours ? ("We", "our") : ("They", "their");
        var beside = $"{Figures.Percent(usual)} {(byOneCall ? $"by always saying {Words.Plain(SituationWords.Outcome(guessed.Report.OutcomeColumn, guessed.Report.Commonest.Outcome))}" : "from down and distance alone")}.";
        var right = $"{Figures.Percent(all)} of calls guessed right";
        return all.Lean() == Lean.Above ? Headline.Of($"{who} can be read: {right} before the snap, {beside}", Most(study, guessed, dimensions))
            : all.Count <= usual.Count ? $"{Words.Capital(whose)} looks add nothing: {right} before the snap, {beside}"
            : Headline.First($"What {whose} looks add could be luck: {right} before the snap, {beside}", $"What {whose} looks add could be luck: {right}, {beside}");
    }

    private static string Most(Study study, Guessed guessed, IEnumerable<string> dimensions) =>
        guessed.Report.MostReadable(study.Plays, dimensions).FirstOrDefault(value => guessed.Where(value).Lean() == Lean.Above) is { } most
            ? $"Most of all: {SituationWords.Of(most.Dimension, most.Value)}." : "";
}
