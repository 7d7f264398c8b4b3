using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Protections;

namespace Tendency.Booklet.Pages;

/// <summary>Where does the slide leave a blocker alone, and where does our best rusher stand?</summary>
internal static class ProtectionPage
{
    private const int MostHabits = 11;

    public static Page? Compose(Study study)
    {
        var habits = SlideHabit.Of(study.Plays, study.Ranges);
        if (habits.Count == 0)
        {
            return null;
        }

        var all = habits[0];
        var plan = study.Fronts is { } check ? RusherPlan.Of(study.Plays, check, study.Ranges) : null;
        return new Page("protection", "Protection and rusher", Finding(all))
        {
            Deck = "Bars: how often guard and tackle of a side are left one on one; the center goes with the slide. Line in the table: an even split. Solid dot, bold percent: differs from it.",
            Blocks =
            [
                new Heading("Which way the line slides", $"{Words.Figured(all.Plays, "pass", "passes")} with an offset back and a slide that leaves a man side"),
                new SideBySide([new Side(164, [.. Pictures(habits)]), new Side(340, [Slides(habits)])]),
                .. Spots(study),
                .. Rushers(plan),
                .. Call(plan),
            ],
        };
    }

    private static string Finding(SlideHabit all)
    {
        var away = Figures.CountOf(all.Away, all.Plays);
        return !all.IsHabit ? $"The slide gives no side away: away from the back on {away}."
            : all.ShareAway > .5 ? $"Put the rusher on the back's side: the slide goes away from it, {away}."
            : $"Put the rusher away from the back: the slide comes to his side, {Figures.CountOf(all.Plays - all.Away, all.Plays)}.";
    }

    /// <summary>The line drawn for the back on either side of the strength, as far as there are plays; else for all.</summary>
    private static IEnumerable<Block> Pictures(IReadOnlyList<SlideHabit> habits)
    {
        (string Group, string Title, int Strong)[] sides = [("back weak", "Back weak", 1), ("back strong", "Back strong", -1)];
        var drawn = sides.Where(side => habits.Any(habit => habit.Group == side.Group)).ToArray();
        foreach (var (group, title, strong) in drawn.Length > 0 ? drawn : [(habits[0].Group, "All offset backs", 0)])
        {
            var habit = habits.First(habit => habit.Group == group);
            yield return Paragraph.Note(RichText.Strong(title) + $", {Words.Figured(habit.Plays, "pass", "passes")}");
            yield return SlidePicture.Of(habit, ShareOf(habit), strong);
        }
    }

    private static Share ShareOf(SlideHabit habit) => new(habit.Away, habit.Plays, habit.Range, .5);

    private static Table Slides(IReadOnlyList<SlideHabit> habits) => new(
        [
            new Column("Passes", 0, 100),
            new Column("Plays", 100, 30, Align.Right),
            new Column("Slide away from the back", 140, 78) { Axis = StripAxis.Shares("even split", .5) },
            new Column("Share, likely", 230, 110),
        ],
        [.. habits.Take(MostHabits).Select((habit, i) => new TableRow(
            Cells.Name(Words.Title(habit.Group)), Cells.Count(habit.Plays), Cells.Strip(ShareOf(habit)), new ShareCell(ShareOf(habit)) { Form = ShareForm.OneLine })
            {
                Kind = i == 0 ? RowKind.Total : RowKind.Plain,
            })])
    { Caption = "Slide away from the back" };

    private static IEnumerable<Block> Spots(Study study)
    {
        var spots = PressureSpot.Of(study.Plays, study.Ranges);
        if (spots.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Where to add a man", "mostly passes, the man side known; what to expect most first, few plays leaning on all");
        yield return new Table(
            [
                new Column("Situation", 0, 130),
                new Column("Passes", 130, 50),
                new Column("Man side", 184, 152),
                new Column("Call", 344, 172),
            ],
            [.. spots.Take(3).Select(spot => new TableRow(
                Cells.Name(Words.Title(spot.Situation)),
                Cells.Text($"{spot.Passes}, {Figures.Percent(spot.PassShare)}"),
                Cells.Text(RichText.Strong(spot.ManSide == RunTo.ToBack ? "back's side" : "other side"), $"expect {Figures.Percent(spot.Expected)}; {spot.Count} of {spot.Plays}, {Figures.Range(spot.ManSideRange)}"),
                Cells.Text(Words.Capital(spot.Call))))])
        { Caption = "Pressure spots" };
    }

    private static IEnumerable<Block> Rushers(RusherPlan? plan)
    {
        if (plan is null || plan.Fronts.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Fronts that put a rusher there", "rush: expert rating from −2 to 2; cost: success allowed on runs above the front that allows least");
        yield return new Table(
            [
                new Column("Front", 0, 120),
                new Column("Rush there", 124, 60, Align.Right),
                new Column("Success allowed on runs", 200, 130, Align.Right),
                new Column("Cost", 344, 60, Align.Right),
            ],
            [.. plan.Fronts.Take(4).Select(front => new TableRow(
                Cells.Name(Words.Title(front.Front)), Cells.Figure(Figures.Signed(front.RushThere)), Cells.Figure(Figures.Percent(front.SuccessAllowed)), Cells.Figure($"{Figures.Number(front.Cost * 100, 0)} points")))])
        { Caption = "Rusher fronts" };
    }

    private static IEnumerable<Block> Call(RusherPlan? plan)
    {
        if (plan is not null)
        {
            yield return Paragraph.Call(RichText.Strong("On the call: ") + plan.Sentence);
        }
    }
}
