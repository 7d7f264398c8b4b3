using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Marks;

/// <summary>The other drawn cells as shapes: stems by game, chance bars, heat cells, call cells.</summary>
internal static class CellMarks
{
    /// <summary>One stem a game from the zero line to its share; the base rate dashed; a dash for a game without plays.</summary>
    public static IReadOnlyList<Shape> Of(SparkCell cell, double width, double height)
    {
        const double Top = 22;
        var shapes = new List<Shape>();
        var foot = (height / 2) + (Top / 2);
        var count = Math.Max(1, cell.Games.Count);
        var step = Math.Min(13, width / count);
        var left = step / 2;
        var right = left + (step * (count - 1));
        shapes.Add(new PathShape([new Spot(left - 4, foot), new Spot(right + 4, foot)], 0.3));
        if (cell.Baseline is { } rate)
        {
            shapes.Add(new PathShape([new Spot(left - 4, foot - (rate * Top)), new Spot(right + 4, foot - (rate * Top))], 0.4, Dash.Dashed));
        }

        for (var i = 0; i < cell.Games.Count; i++)
        {
            var x = left + (i * step);
            if (cell.Games[i].Value is { } share)
            {
                shapes.Add(new PathShape([new Spot(x, foot), new Spot(x, foot - (share * Top))], 0.75));
                shapes.Add(new CircleShape(x, foot - (share * Top), Math.Min(1.9, step / 3), Tone.Black, 0));
            }
            else
            {
                shapes.Add(new PathShape([new Spot(x - 2, foot - 3), new Spot(x + 2, foot - 3)], 0.6));
            }
        }

        return shapes;
    }

    /// <summary>A bar from the left edge, its words at the tip.</summary>
    public static IReadOnlyList<Shape> Of(Bar bar, double full, double width, double height)
    {
        const double Room = 30; // for the words at the tip of a full bar
        var long_ = Math.Clamp(bar.Value / full, 0, 1) * Math.Max(10, width - Room);
        var middle = height / 2;
        return
        [
            new BoxShape(0, middle - 4.5, Math.Max(0.8, long_), 9, bar.Winner ? Tone.Black : Tone.Dark, 0),
            new WordShape(Math.Max(0.8, long_) + 4, middle + 3.5, bar.Tip, bar.Winner ? 10 : 9.5, bar.Winner, Align.Left),
        ];
    }

    public static IReadOnlyList<Shape> Of(HeatCell cell, double width, double height)
    {
        var frame = cell.Step switch
        {
            HeatStep.Light => Tone.Middle,
            HeatStep.Middle => Tone.Frame,
            HeatStep.Dark => Tone.DarkFrame,
            _ => Tone.None,
        };
        var shapes = new List<Shape>();
        var (wide, high) = (Math.Min(43, width), Math.Min(29, height - 1));
        var (left, top) = ((width - wide) / 2, (height - high) / 2);
        if (frame != Tone.None)
        {
            shapes.Add(new BoxShape(left, top, wide, high, frame, 0));
            shapes.Add(new BoxShape(left + 5, top + 3, wide - 10, high - 6, Tone.White, 0));
        }

        shapes.Add(new WordShape(width / 2, top + 14, cell.Text, 10, cell.Bold) { MaxWidth = width });
        shapes.Add(new WordShape(width / 2, top + 23.5, cell.Under, 7.5) { MaxWidth = width });
        return shapes;
    }

    public static IReadOnlyList<Shape> Of(CallCell cell, double width, double height)
    {
        var (wide, high) = (width - 1, height - 1);
        if (cell.Tone == CallTone.TooFew)
        {
            return
            [
                new BoxShape(0, 0, wide, high, Tone.None, 0) { Hatched = true },
                new WordShape(wide / 2, (high / 2) + 2.8, cell.Call, 8) { Backed = true, MaxWidth = wide - 6 },
            ];
        }

        var black = cell.Tone == CallTone.SureRun;
        var box = cell.Tone switch
        {
            CallTone.SureRun => new BoxShape(0, 0, wide, high, Tone.Black, 0),
            CallTone.SurePass => new BoxShape(0.9, 0.9, wide - 1.8, high - 1.8, Tone.White, 1.8),
            CallTone.Even => new BoxShape(0, 0, wide, high, Tone.Light, 0),
            _ => new BoxShape(0, 0, wide, high, Tone.None, 0),
        };
        var sure = cell.Tone is CallTone.SureRun or CallTone.SurePass;
        return
        [
            box,
            new WordShape(wide / 2, (high / 2) - 0.4, cell.Call, 10.5, sure) { White = black, MaxWidth = wide - 4 },
            new WordShape(wide / 2, (high / 2) + 9, cell.Under, 7.5) { White = black, MaxWidth = wide - 1 },
        ];
    }
}
