using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Pictures;

/// <summary>One column of an every-play plot and the rows of the log that stand in it.</summary>
internal sealed record PlayStack(string Label, bool Bold, IReadOnlyList<int> Rows);

/// <summary>Every play as a dot: solid runs, open passes, gray undecided options; above the line what worked, below what did not.</summary>
internal static class EveryPlay
{
    private const double Width = 516;
    private const double Left = 62;
    private const double Pitch = 7.8;
    private const double Radius = 3.3;

    /// <param name="plays">The log the rows point into; a play without a charted success is not drawn.</param>
    /// <param name="stacks">Left to right.</param>
    /// <param name="above">Word for what worked: "converted".</param>
    /// <param name="axis">Word on the line: "yards to go".</param>
    /// <param name="below">Word for what did not: "stopped".</param>
    /// <param name="goalLine">Draws the goal line at the right end.</param>
    public static Diagram Of(PlayLog plays, IReadOnlyList<PlayStack> stacks, string above, string axis, string below, bool goalLine = false)
    {
        var success = plays.Category(ColumnNames.Success);
        int[] Worked(PlayStack stack, string answer) => [.. stack.Rows.Where(row => success[row] == answer).OrderBy(row => plays.Category(ColumnNames.Call)[row] == "run" ? 0 : 1)];
        var up = stacks.Select(stack => Worked(stack, "yes")).ToArray();
        var down = stacks.Select(stack => Worked(stack, "no")).ToArray();
        var step = (Width - Left - (goalLine ? 10 : 0)) / stacks.Count;

        // Tall stacks stand several dots abreast, as far as the column is wide.
        var most = up.Concat(down).Max(rows => rows.Length);
        var abreast = (int)Math.Clamp(Math.Ceiling(most / 8.0), 1, Math.Max(1, Math.Floor((step - 2) / Pitch)));
        int Levels(IEnumerable<int[]> sides) => sides.Max(rows => (rows.Length + abreast - 1) / abreast);
        var middle = (Levels(up) * Pitch) + 14;
        var bottom = middle + (Levels(down) * Pitch) + 14;

        var shapes = new List<Shape> { new PathShape([new Spot(Left, middle), new Spot(Width, middle)], 0.5) };
        if (Levels(up) > 0)
        {
            shapes.Add(new WordShape(0, middle - 16, above, 8.5, Align: Align.Left));
        }

        shapes.Add(new WordShape(0, middle + 3, axis, 8.5, Bold: true, Align.Left));
        if (Levels(down) > 0)
        {
            shapes.Add(new WordShape(0, middle + 22, below, 8.5, Align: Align.Left));
        }

        for (var i = 0; i < stacks.Count; i++)
        {
            var x = Left + ((i + .5) * step);
            Dots(shapes, plays, up[i], x, middle - 11, -Pitch, abreast);
            Dots(shapes, plays, down[i], x, middle + 11, Pitch, abreast);
            shapes.Add(new WordShape(x, middle + 3, stacks[i].Label, 8.5, stacks[i].Bold) { Backed = true });
        }

        if (goalLine)
        {
            shapes.Add(new PathShape([new Spot(Width - 2, 2), new Spot(Width - 2, bottom - 2)], 2.4));
            shapes.Add(new WordShape(Width, bottom + 7, "goal line", 7.5, Align: Align.Right));
            bottom += 10;
        }

        return new Diagram(Width, bottom, shapes, Description(stacks, up, down, axis));
    }

    private static void Dots(List<Shape> shapes, PlayLog plays, int[] rows, double x, double y, double step, int abreast)
    {
        var calls = plays.Category(ColumnNames.Call);
        for (var i = 0; i < rows.Length; i++)
        {
            var inLevel = Math.Min(abreast, rows.Length - (i / abreast * abreast));
            var offset = ((i % abreast) - ((inLevel - 1) / 2.0)) * Pitch;
            var tone = calls[rows[i]] switch { "run" => Tone.Black, "pass" => Tone.White, _ => Tone.Dark };
            shapes.Add(new CircleShape(x + offset, y + (i / abreast * step), tone == Tone.Black ? Radius : Radius - .45, tone, tone == Tone.Black ? 0 : .9));
        }
    }

    private static string Description(IReadOnlyList<PlayStack> stacks, int[][] up, int[][] down, string axis) =>
        $"every play by {axis}, worked and stopped: {string.Join(", ", stacks.Select((stack, i) => $"{stack.Label} {up[i].Length}/{down[i].Length}"))}";
}
