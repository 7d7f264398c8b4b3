using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Fronts.Protections;

namespace Tendency.Booklet.Pages.Pictures;

/// <summary>The line in protection with the back turned to the left: over each side how often its guard and tackle block man to man, below it where the slide mostly goes.</summary>
/// <remarks>Half-slide as commonly taught (no source): center and the slide side's guard and tackle go together, the other two are alone with the back's help.</remarks>
internal static class SlidePicture
{
    private const double Width = 164;
    private const double Middle = Width / 2;
    private const double Spacing = 21;
    private const double Radius = 6;
    private const double Ground = 58;
    private const double Tallest = 27;
    private const double LineY = Ground + 11;
    private const double Below = LineY + 24;

    /// <param name="habit">Passes with an offset back and a slide that leaves a man side.</param>
    /// <param name="strong">Where the strength is: −1 on the back's side, 1 away from it, 0 not said.</param>
    /// <param name="back">The share of slides away from the back, with its range: the back's side is then the man side.</param>
    public static Diagram Of(SlideHabit habit, Share back, int strong)
    {
        var range = back.Likely!.Value;
        var other = new Share(back.Plays - back.Count, back.Plays, new Inference.Intervals.Interval(1 - range.High, 1 - range.Low), back.Baseline);
        var shapes = new List<Shape>();
        shapes.AddRange(Alone(Middle - (1.5 * Spacing), back));
        shapes.AddRange(Alone(Middle + (1.5 * Spacing), other));
        shapes.Add(new PathShape([new Spot(Middle - (2.6 * Spacing), Ground), new Spot(Middle + (2.6 * Spacing), Ground)], 0.5));
        for (var man = -2; man <= 2; man++)
        {
            var x = Middle + (man * Spacing);
            shapes.Add(man == 0 ? new BoxShape(x - Radius, LineY - Radius, 2 * Radius, 2 * Radius, Tone.White, 1.2) : new CircleShape(x, LineY, Radius));
        }

        if (strong != 0)
        {
            shapes.Add(new WordShape(Middle + (3.2 * strong * Spacing), LineY + 2.7, "strong", 7.5));
        }

        shapes.Add(new CircleShape(Middle, Below, Radius));
        shapes.Add(new CircleShape(Middle - (1.5 * Spacing), Below, Radius, Tone.Dark));
        shapes.Add(new WordShape(Middle - (1.5 * Spacing) - Radius - 3, Below + 3, "back", 8.5, Align: Align.Right));
        shapes.AddRange(Slide(habit));
        return new Diagram(Width, Below + Radius + 2, shapes, Description(habit));
    }

    private static IEnumerable<Shape> Alone(double x, Share share)
    {
        const double Half = 16;
        var (top, range) = (Y(share.Value!.Value), share.Likely!.Value);
        yield return new BoxShape(x - Half, top, 2 * Half, Ground - top, Tone.Dark, 0);
        yield return new PathShape([new Spot(x - Half, top), new Spot(x + Half, top)], 1.6);
        yield return new PathShape([new Spot(x, Y(range.High)), new Spot(x, Y(range.Low))], 0.9);
        var words = Y(range.High) - 4;
        yield return new WordShape(x, words - 10, Figures.Percent(share), 10.5, share.Differs);
        yield return new WordShape(x, words, Figures.CountOf(share), 7.5);
    }

    /// <summary>An arrow from the center to the side they slide to; none while the share could be even.</summary>
    private static IEnumerable<Shape> Slide(SlideHabit habit)
    {
        if (!habit.IsHabit)
        {
            yield return new WordShape(Middle + (1.5 * Spacing) + 4, Below + 3, "slide: either way", 8.5);
            yield break;
        }

        var way = habit.ShareAway > .5 ? 1 : -1;
        var y = LineY + Radius + 5;
        yield return new PathShape([new Spot(Middle - (way * 4), y), new Spot(Middle + (way * 2.7 * Spacing), y)], 2.2, End: Cap.Arrow);
        yield return new WordShape(Middle + (1.5 * Spacing) + 4, Below + 3, way > 0 ? "slide" : "slide to back", 8.5);
    }

    private static double Y(double share) => Ground - (share * Tallest);

    private static string Description(SlideHabit habit) =>
        $"{habit.Group}: guard and tackle alone on the back's side on {Figures.CountOf(habit.Away, habit.Plays)}, on the other on {Figures.CountOf(habit.Plays - habit.Away, habit.Plays)}{(habit.IsHabit ? $"; the slide goes {(habit.ShareAway > .5 ? "away from the back" : "to the back")}" : "")}";
}
