using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Pictures;

/// <summary>Where runs hit along the line. With the back's side charted he is turned to the left, so left is his side and right is away from him.</summary>
internal static class GapPicture
{
    private static readonly string[] s_gaps = ["D", "C", "B", "A"];

    /// <summary>Runs at the eight gaps, from the far left to the far right.</summary>
    /// <param name="plays">Runs with side and gap charted.</param>
    /// <param name="side">run_to (to back, away) or run_side (L, R).</param>
    public static int[] Counts(PlayLog plays, string side)
    {
        var (left, right) = Ways(side);
        var ways = plays.Category(side);
        var gaps = plays.Category(ColumnNames.Gap);
        var counts = new int[8];
        for (var row = 0; row < plays.Rows; row++)
        {
            var gap = Array.IndexOf(s_gaps, gaps[row]);
            if (gap >= 0 && ways[row] == left)
            {
                counts[gap]++;
            }
            else if (gap >= 0 && ways[row] == right)
            {
                counts[7 - gap]++;
            }
        }

        return counts;
    }

    public static (string Left, string Right) Ways(string side) => side == ColumnNames.RunTo ? ("to back", "away") : ("L", "R");

    /// <summary>The large picture: a bar a gap with percent and count above it and whiskers that hold for all eight at once.</summary>
    /// <param name="study">Gives the ranges.</param>
    /// <param name="plays">Runs; those with side and gap charted are drawn.</param>
    /// <param name="side">run_to (to back, away) or run_side (L, R).</param>
    public static Diagram Large(Study study, PlayLog plays, string side)
    {
        var counts = Counts(plays, side);
        var (near, far) = Ways(side);
        var sided = plays.Where(side, near, far).Where(ColumnNames.Gap, s_gaps);
        const double Width = 516, Middle = Width / 2, Spacing = 52, Ground = 148, Tallest = 92;
        var line = new LineOfScrimmage(Middle, Ground + 18, Spacing, 8, side == ColumnNames.RunTo);
        var total = counts.Sum();
        var ranges = study.Ranges.OfMix(counts, sided, ColumnNames.Gap);
        var scale = Tallest / Math.Max(.05, ranges.Max(range => range.High));
        var shapes = new List<Shape> { new PathShape([new Spot(Middle, 24), new Spot(Middle, Ground + 4)], 0.8, Dash.Dotted) };
        for (var gap = 0; gap < 8; gap++)
        {
            var x = line.GapAt(gap);
            var share = new Share(counts[gap], total, ranges[gap]);
            var top = Ground - (share.Value!.Value * scale);
            shapes.Add(new BoxShape(x - 11.5, top, 23, Ground - top, Tone.Dark, 0));
            shapes.Add(new PathShape([new Spot(x - 11.5, top), new Spot(x + 11.5, top)], 1.6));
            shapes.Add(new PathShape([new Spot(x, Ground - (ranges[gap].High * scale)), new Spot(x, Ground - (ranges[gap].Low * scale))], 0.9));
            var words = Ground - (ranges[gap].High * scale) - 4;
            shapes.Add(new WordShape(x, words - 10, Figures.Percent(share), 10.5, Bold: true));
            shapes.Add(new WordShape(x, words, Figures.CountOf(share), 7.5));
        }

        shapes.Add(new PathShape([new Spot(line.GapAt(0) - 22, Ground), new Spot(line.GapAt(7) + 22, Ground)], 0.5));
        shapes.AddRange(line.Shapes(9.5));
        shapes.AddRange(Heads(study, sided, side, Width));
        return new Diagram(Width, line.Bottom, shapes, Description(counts, side));
    }

    /// <summary>The small picture for a panel 164 wide: counts alone.</summary>
    public static Diagram Small(int[] counts, string side)
    {
        const double Width = 164, Middle = Width / 2, Spacing = 19.5, Ground = 62, Tallest = 44;
        var line = new LineOfScrimmage(Middle, Ground + 10, Spacing, 4.2, side == ColumnNames.RunTo);
        var scale = Tallest / Math.Max(1, counts.Max());
        var shapes = new List<Shape>();
        for (var gap = 0; gap < 8; gap++)
        {
            var x = line.GapAt(gap);
            var top = Ground - (counts[gap] * scale);
            if (counts[gap] > 0)
            {
                shapes.Add(new BoxShape(x - 4.5, top, 9, Ground - top, Tone.Dark, 0));
                shapes.Add(new PathShape([new Spot(x - 4.5, top), new Spot(x + 4.5, top)], 1.3));
            }

            shapes.Add(new WordShape(x, top - 3, Figures.Count(counts[gap]), 8.5, Bold: true));
        }

        shapes.Add(new PathShape([new Spot(line.GapAt(0) - 8, Ground), new Spot(line.GapAt(7) + 8, Ground)], 0.5));
        shapes.AddRange(line.Shapes(7.5));
        return new Diagram(Width, line.Bottom, shapes, Description(counts, side));
    }

    private static IEnumerable<Shape> Heads(Study study, PlayLog sided, string side, double width)
    {
        var (near, far) = Ways(side);
        var left = study.Of(sided, side, near, .5);
        var right = study.Of(sided, side, far, .5);
        var (leftName, rightName) = side == ColumnNames.RunTo ? ("To the back's side", "Away from the back") : ("To the left", "To the right");
        yield return new WordShape(6, 10, $"{leftName} {Figures.Percent(left)}", 10.5, Bold: true, Align.Left);
        yield return new WordShape(6, 22, $"{Figures.CountOf(left)}; likely {Figures.Range(left)}", 8.5, Align: Align.Left);
        yield return new WordShape(width - 6, 10, $"{rightName} {Figures.Percent(right)}", 10.5, Bold: true, Align.Right);
        yield return new WordShape(width - 6, 22, $"{Figures.CountOf(right)}; likely {Figures.Range(right)}", 8.5, Align: Align.Right);
    }

    private static string Description(int[] counts, string side)
    {
        var (left, right) = side == ColumnNames.RunTo ? ("to the back's side", "away from him") : ("to the left", "to the right");
        string Half(IEnumerable<(string Gap, int Count)> gaps) => string.Join(", ", gaps.Select(gap => $"{gap.Gap} {gap.Count}"));
        return $"runs by gap {left}: {Half(s_gaps.Zip(counts[..4]))}; {right}: {Half(s_gaps.Reverse().Zip(counts[4..]))}";
    }
}
