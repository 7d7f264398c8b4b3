using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Marks;

/// <summary>Dot and whisker on an axis, as shapes from the cell's top left corner. Every printer draws these same shapes.</summary>
internal static class StripMarks
{
    private const double NarrowestForCount = 78;

    /// <summary>Where a value stands on the axis, in points from its left end; values beyond the ends stand at them.</summary>
    public static double Place(StripAxis axis, double value, double width) =>
        Math.Clamp((value - axis.Low) / (axis.High - axis.Low), 0, 1) * width;

    public static IReadOnlyList<Shape> Of(Share share, StripAxis axis, double width, double height)
    {
        var shapes = Ground(axis, width, height, share.None);
        var middle = height / 2;
        if (share.None)
        {
            shapes.Add(new WordShape(width / 2, middle + 2.7, "no plays", 7.5) { Backed = true });
        }
        else if (share.TooFew)
        {
            var words = width < NarrowestForCount ? "too few" : $"too few, n = {Figures.Count(share.Plays)}";
            shapes.Add(new BoxShape(0, middle - 4, width, 8, Tone.None, 0) { Hatched = true });
            shapes.Add(new WordShape(width / 2, middle + 2.7, words, 7.5) { Backed = true });
        }
        else
        {
            if (axis.Line is null && share.Baseline is { } own)
            {
                var at = Place(axis, own, width);
                shapes.Add(new PathShape([new Spot(at, middle - 5), new Spot(at, middle + 5)], 0.8));
            }

            var low = share.Likely?.Low ?? share.Value!.Value;
            var high = share.Likely?.High ?? share.Value!.Value;
            Mark(shapes, axis, width, height, (share.Value!.Value, low, high), share.Baseline is not null, share.Differs);
        }

        return shapes;
    }

    public static IReadOnlyList<Shape> Of(EstimateCell cell, StripAxis axis, double width, double height)
    {
        var shapes = Ground(axis, width, height, broken: false);
        Mark(shapes, axis, width, height, (cell.Value, cell.Low, cell.High), cell.Baseline is not null, cell.Differs);
        return shapes;
    }

    /// <summary>Grid at the ticks and the comparison line, for a row without a mark.</summary>
    public static List<Shape> Ground(StripAxis axis, double width, double height, bool broken)
    {
        var shapes = new List<Shape>();
        foreach (var tick in axis.Ticks)
        {
            var at = Place(axis, tick, width);
            shapes.Add(new PathShape([new Spot(at, 0), new Spot(at, height)], 0.3, Dash.Fine));
        }

        if (axis.Line is { } line)
        {
            var at = Place(axis, line, width);
            shapes.Add(new PathShape([new Spot(at, 0), new Spot(at, height)], 0.8, broken ? Dash.Dashed : Dash.Solid));
        }

        return shapes;
    }

    /// <summary>Whisker, then dot over it; an upright tick when there is nothing to test against.</summary>
    public static void Mark(List<Shape> shapes, StripAxis axis, double width, double height, (double Value, double Low, double High) estimate, bool tested, bool differs)
    {
        var middle = height / 2;
        var at = Place(axis, estimate.Value, width);
        var whisker = tested && differs ? 1.5 : 0.9;
        shapes.Add(new PathShape([new Spot(Place(axis, estimate.Low, width), middle), new Spot(Place(axis, estimate.High, width), middle)], whisker));
        if (!tested)
        {
            shapes.Add(new PathShape([new Spot(at, middle - 4), new Spot(at, middle + 4)], 2.2));
            return;
        }

        var radius = height > 60 ? 4.2 : height > 30 ? 3.3 : 2.9;
        const double Outline = 1.05;
        shapes.Add(differs
            ? new CircleShape(at, middle, radius, Tone.Black, 0)
            : new CircleShape(at, middle, radius - (Outline / 2), Tone.White, Outline));
    }
}
