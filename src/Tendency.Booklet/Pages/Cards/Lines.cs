using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>Plane geometry of straight stretches.</summary>
internal static class Lines
{
    public static double Length(Spot a, Spot b) => Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));

    /// <summary>Whether two stretches cross; touching ends do not.</summary>
    public static bool Cross(Spot a, Spot b, Spot c, Spot d) =>
        (Turn(a, b, c) * Turn(a, b, d)) < 0 && (Turn(c, d, a) * Turn(c, d, b)) < 0;

    /// <summary>Whether a stretch runs through a box.</summary>
    public static bool Crosses(Spot a, Spot b, Area box)
    {
        // Liang and Barsky's clipping: the part of the stretch inside all four sides, if any is left.
        var (from, to) = (0.0, 1.0);
        foreach (var (run, room) in new[] { (a.X - b.X, a.X - box.Left), (b.X - a.X, box.Right - a.X), (a.Y - b.Y, a.Y - box.Top), (b.Y - a.Y, box.Bottom - a.Y) })
        {
            if (Math.Abs(run) < 1e-9)
            {
                if (room < 0)
                {
                    return false;
                }
            }
            else if (run < 0)
            {
                from = Math.Max(from, room / run);
            }
            else
            {
                to = Math.Min(to, room / run);
            }
        }

        return from <= to;
    }

    /// <summary>Least distance of two stretches; 0 where they cross.</summary>
    public static double Apart(Spot a, Spot b, Spot c, Spot d) =>
        Cross(a, b, c, d) ? 0 : Math.Min(Math.Min(Apart(a, c, d), Apart(b, c, d)), Math.Min(Apart(c, a, b), Apart(d, a, b)));

    private static double Apart(Spot p, Spot a, Spot b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = (dx * dx) + (dy * dy);
        var part = length < 1e-9 ? 0 : Math.Clamp((((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / length, 0, 1);
        return Length(p, new Spot(a.X + (part * dx), a.Y + (part * dy)));
    }

    private static double Turn(Spot a, Spot b, Spot c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
