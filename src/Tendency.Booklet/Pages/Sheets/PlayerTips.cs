using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts.Protections;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>The players' tip sheet: one page, at most eight sentences, counts and no percentages, only what is seen before the snap.</summary>
public static class PlayerTips
{
    public static ScoutingBooklet Compose(Study study, DateTimeOffset dated)
    {
        ArgumentNullException.ThrowIfNull(study);
        var (sure, leans) = Tips.Calls(study);
        var ways = new[] { RunWay(study), Slide(study) }.OfType<(string Title, Tip Tip)>().ToArray();
        var count = sure.Count + leans.Count + ways.Length;
        var page = new Page("tips", "Tip sheet", count switch
        {
            0 => "No tip is sure this week: play your keys.",
            1 => "One thing to see before the snap.",
            _ => $"{Words.Capital(Words.Number(count))} things to see before the snap.",
        })
        {
            Deck = $"In brackets: how often, in {Words.Counted(study.Games.Count, "game")}. A tip is a lean, not a promise: your keys and your job come first.",
            Blocks = [.. Section("You see it, expect it", sure), .. Section("Leans, less sure", leans), .. ways.SelectMany(way => Section(way.Title, [way.Tip]))],
        };
        return new ScoutingBooklet(study.Opponent, study.Side, $"{study.Opponent} {study.Side}, players’ tip sheet", Footprint.Of(study), [new Section("Tip sheet", [page])], dated)
        {
            Contents = false,
            Kind = "Players’ tip sheet",
            LikelyMeans = "",
        };
    }

    private static IEnumerable<Block> Section(string title, IReadOnlyList<Tip> tips)
    {
        if (tips.Count == 0)
        {
            yield break;
        }

        yield return new Heading(title);
        foreach (var tip in tips)
        {
            yield return new Together(
            [
                Paragraph.Lead(RichText.Strong(tip.Cue) + " → " + RichText.Strong(tip.Expect) + $" ({Figures.CountOf(tip.Share)})"),
                .. tip.More.Length == 0 ? Array.Empty<Block>() : [new Space(1), new Paragraph(Words.Capital(tip.More) + ".")],
            ]);
        }
    }

    private static (string Title, Tip Tip)? RunWay(Study study)
    {
        var runs = study.Plays.Where(ColumnNames.RunTo, "to back", "away");
        var share = study.Of(runs, ColumnNames.RunTo, "away", .5);
        return share.Lean() switch
        {
            Lean.Above => Offset("When they run", "the ball goes away from the back", share),
            Lean.Below => Offset("When they run", "the ball goes to the back’s side", study.Of(runs, ColumnNames.RunTo, "to back", .5)),
            _ => null,
        };
    }

    /// <summary>Counted where the slide leaves a man side: a full slide or a sprint-out leaves none.</summary>
    private static (string Title, Tip Tip)? Slide(Study study)
    {
        var habits = SlideHabit.Of(study.Plays, study.Ranges);
        if (habits.Count == 0 || !habits[0].IsHabit)
        {
            return null;
        }

        var (plays, away) = (habits[0].Plays, habits[0].Away);
        return away * 2 > plays
            ? Offset("When they throw", "the line slides away from the back: his side is one on one", new Share(away, plays))
            : Offset("When they throw", "the line slides to the back: the other side is one on one", new Share(plays - away, plays));
    }

    private static (string Title, Tip Tip) Offset(string title, string expect, Share share) =>
        (title, new Tip("The back offset", expect, share, "", new HashSet<(string, int?)>()));
}
