using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Protections;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>Under the situations: the front to start in, where to put the rusher, and what to watch for.</summary>
internal static class SheetFoot
{
    private const int MostFronts = 3;

    /// <summary>One block, or none when nothing of it is charted.</summary>
    /// <param name="study">The plays, fronts, tells.</param>
    /// <param name="tells">Whether the tells stand here, because there is no back to hold them.</param>
    public static IEnumerable<Block> Of(Study study, bool tells)
    {
        var sides = ((List<Block>[])[Front(study), Rusher(study), tells ? [.. SheetBack.TellsOf(study, bare: false)] : [], Watch(study)]).Where(blocks => blocks.Count > 1).Select(blocks => new Side(0, blocks)).ToArray();
        return sides.Length == 0 ? [] : [new SideBySide(sides) { Gutter = 18 }];
    }

    private static List<Block> Front(Study study)
    {
        var ranks = study.Fronts?.Ranking.Ranks ?? [];
        var blocks = new List<Block> { new Heading("Front, runs alone", "chance of being best") };
        if (ranks.Count > 0)
        {
            var clear = study.Fronts!.Ranking.HasClearWinner;
            blocks.Add(Paragraph.Call(RichText.Strong(clear ? $"Start in {Words.Title(ranks[0].Front)}." : "No clear winner.")));
            if (study.FrontCard.Count > 0)
            {
                blocks.Add(new Paragraph($"With passes {Short.Cut(Words.Title(study.FrontCard[0].Front))}, in {Figures.Number(study.FrontCard[0].Sure * 100, 0)} of 100.", TextStyle.Deck));
            }

            blocks.Add(new Bars([.. ranks.OrderByDescending(rank => rank.ProbabilityBest).Take(MostFronts).Select(rank => new Bar(Words.Title(rank.Front), rank.ProbabilityBest, clear && rank.Rank == 1))]) { LabelWidth = 76 });
        }

        return blocks;
    }

    private static List<Block> Rusher(Study study)
    {
        var blocks = new List<Block> { new Heading("Rusher", "where a blocker stands alone") };
        if (study.Fronts is { } check && RusherPlan.Of(study.Plays, check, study.Ranges) is { } plan)
        {
            blocks.Add(Paragraph.Call(RichText.Strong(plan.Side is null ? "No side is sure." : $"Put him {(plan.Side == RunTo.ToBack ? "on the back’s side" : "away from the back")}.")));
            blocks.Add(new Paragraph($"Slide away from the back on {plan.Habit.Away}/{plan.Habit.Plays} (likely {Figures.Range(plan.Habit.Range)}).", TextStyle.Deck));
            var spot = PressureSpot.Of(study.Plays, study.Ranges).FirstOrDefault();
            if (spot is not null)
            {
                blocks.Add(new Paragraph($"{Words.Capital(spot.Situation)}: {spot.Call} ({spot.Count}/{spot.Plays}).", TextStyle.Deck));
            }
        }

        return blocks;
    }

    /// <summary>Motion, tempo, options, long plays: whatever is charted.</summary>
    private static List<Block> Watch(Study study)
    {
        var plays = study.Plays;
        var blocks = new List<Block> { new Heading("Watch for", "of all plays") };
        var motions = CrossTab.Values(plays, ColumnNames.Motion).Where(motion => motion.Value != "none").ToArray();
        if (motions.Length > 0)
        {
            var charted = plays.Category(ColumnNames.Motion).ChartedCount;
            blocks.Add(Line("Motion", $"{motions.Sum(m => m.Count)}/{charted}: {Words.Join(motions.Take(3).Select(m => $"{Words.Plain(m.Value)} {m.Count}"))}"));
        }

        var fast = CrossTab.Share(plays, ColumnNames.Tempo, "fast");
        var options = CrossTab.Share(plays, ColumnNames.Called, "rpo");
        var pace = new[] { fast.Count > 0 ? $"fast tempo {fast.Count}/{fast.Plays}" : "", options.Count > 0 ? $"run-pass options {options.Count}/{options.Plays}" : "" }.Where(part => part.Length > 0).ToArray();
        if (pace.Length > 0)
        {
            blocks.Add(Line("Pace and options", string.Join(", ", pace)));
        }

        var explosive = plays.Where(ColumnNames.Explosive, "yes");
        if (explosive.Rows > 0)
        {
            blocks.Add(Line("Long plays", $"{explosive.Rows}/{plays.Category(ColumnNames.Explosive).ChartedCount}: {Words.Join(Calls(explosive).Take(3))}"));
        }

        return blocks;
    }

    private static IEnumerable<string> Calls(PlayLog plays) =>
        CrossTab.Values(plays, ColumnNames.RunScheme).Concat(CrossTab.Values(plays, ColumnNames.PassConcept)).OrderByDescending(call => call.Count).Select(call => $"{Words.Plain(call.Value)} {call.Count}");

    private static Paragraph Line(string name, string words) => new(RichText.Strong(name) + $" {words}.", TextStyle.Deck);
}
