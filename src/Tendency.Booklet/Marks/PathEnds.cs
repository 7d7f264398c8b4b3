using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Marks;

/// <summary>Geometry of a path's end: arrow heads and flat bars.</summary>
internal static class PathEnds
{
    /// <summary>Length of an arrow head for a stroke; at least 6 points so that it reads at arm's length.</summary>
    private static double HeadLength(PathShape path) => Math.Max(6, 3.4 * path.Width);

    /// <summary>The path, its last spot drawn back so that the stroke does not poke through the arrow's tip.</summary>
    public static IReadOnlyList<Spot> Shortened(PathShape path)
    {
        if (path.End != Cap.Arrow)
        {
            return path.Spots;
        }

        var (x, y) = Direction(path);
        var tip = path.Spots[^1];
        var back = HeadLength(path) * 0.8;
        return [.. path.Spots.SkipLast(1), new Spot(tip.X - (x * back), tip.Y - (y * back))];
    }

    public static IReadOnlyList<Spot> ArrowHead(PathShape path)
    {
        var (x, y) = Direction(path);
        var tip = path.Spots[^1];
        var length = HeadLength(path);
        var half = length * 0.36;
        var foot = new Spot(tip.X - (x * length), tip.Y - (y * length));
        return [tip, new Spot(foot.X - (y * half), foot.Y + (x * half)), new Spot(foot.X + (y * half), foot.Y - (x * half))];
    }

    public static (Spot A, Spot B) FlatBar(PathShape path)
    {
        const double Half = 5;
        var (x, y) = Direction(path);
        var end = path.Spots[^1];
        return (new Spot(end.X - (y * Half), end.Y + (x * Half)), new Spot(end.X + (y * Half), end.Y - (x * Half)));
    }

    /// <summary>Unit direction of the last leg; (1, 0) for a leg without length.</summary>
    private static (double X, double Y) Direction(PathShape path)
    {
        var end = path.Spots[^1];
        for (var i = path.Spots.Count - 2; i >= 0; i--)
        {
            var (dx, dy) = (end.X - path.Spots[i].X, end.Y - path.Spots[i].Y);
            var length = Math.Sqrt((dx * dx) + (dy * dy));
            if (length > 1e-9)
            {
                return (dx / length, dy / length);
            }
        }

        return (1, 0);
    }
}
