using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>Finds the way of an arrow from a letter to its gap: around other letters, and clear of the arrows before it as far as there is room.</summary>
internal sealed class ArrowRouter(IReadOnlyList<Area> letters, double endY)
{
    private readonly (Area Box, Area Grown)[] boxes = [.. letters.Select(box => (box, box.Grown(Clear)))];
    private const double Clear = 2.5;

    // A way this little dearer than its length meets nothing worth another bend.
    private const double Good = 60;
    private static readonly double[] s_aside = [0, -8, 8, -16, 16, -26, 26, -38, 38, -54, 54, -72, 72];
    private readonly List<(Spot A, Spot B)> drawn = [];

    /// <param name="from">Box the arrow leaves; one of the letters.</param>
    /// <param name="lane">Where it may end, left and right.</param>
    public IReadOnlyList<Spot> Route(Area from, (double Left, double Right) lane)
    {
        var (best, least) = Cheapest(OneBend(from, lane), from, lane);
        if (least - Length(best) > Good)
        {
            var (bent, cost) = Cheapest(TwoBends(from, lane), from, lane);
            best = cost < least ? bent : best;
        }

        drawn.AddRange(best.Zip(best.Skip(1)));
        return best;
    }

    private (Spot[] Way, double Cost) Cheapest(IEnumerable<Spot[]> ways, Area from, (double Left, double Right) lane)
    {
        Spot[] best = [];
        var least = double.MaxValue;
        foreach (var way in ways)
        {
            var cost = Cost(way, from, lane, least);
            if (cost < least)
            {
                (best, least) = (way, cost);
            }
        }

        return (best, least);
    }

    private IEnumerable<Spot[]> OneBend(Area from, (double Left, double Right) lane)
    {
        foreach (var (start, tip) in Ends(from, lane))
        {
            yield return [start, tip];
            foreach (var part in (double[])[.3, .5, .7])
            {
                foreach (var aside in s_aside)
                {
                    yield return [start, new Spot(tip.X + aside, start.Y + (part * (endY - start.Y))), tip];
                }
            }
        }
    }

    private IEnumerable<Spot[]> TwoBends(Area from, (double Left, double Right) lane)
    {
        foreach (var (start, tip) in Ends(from, lane))
        {
            var height = endY - start.Y;
            foreach (var aside in s_aside)
            {
                foreach (var first in s_aside)
                {
                    yield return [start, new Spot(tip.X + aside + first, start.Y + (.35 * height)), new Spot(tip.X + aside, start.Y + (.75 * height)), tip];
                }
            }
        }
    }

    private IEnumerable<(Spot Start, Spot Tip)> Ends(Area from, (double Left, double Right) lane)
    {
        var (middle, x) = ((lane.Left + lane.Right) / 2, (from.Left + from.Right) / 2);
        var slack = Math.Max(0, (lane.Right - lane.Left - 8) / 2);
        Spot[] starts = [new(x, from.Bottom + 2), new(from.Left - 2, from.Bottom - 4), new(from.Right + 2, from.Bottom - 4)];
        return starts.SelectMany(_ => (double[])[0, -.5, .5, -1, 1], (start, part) => (start, new Spot(middle + (part * slack), endY)));
    }

    private static double Length(Spot[] way) => Enumerable.Range(1, way.Length - 1).Sum(i => Lines.Length(way[i - 1], way[i]));

    /// <returns>At least <paramref name="most"/> as soon as that is sure.</returns>
    private double Cost(Spot[] way, Area from, (double Left, double Right) lane, double most)
    {
        // A last leg that lies nearly flat does not read as a gap.
        var (last, tip) = (way[^2], way[^1]);
        var cost = Length(way) + (9 * way.Length) + Math.Abs(tip.X - ((lane.Left + lane.Right) / 2)) + (Math.Abs(tip.X - last.X) > 1.2 * (tip.Y - last.Y) ? 60 : 0);
        for (var i = 1; i < way.Length && cost < most; i++)
        {
            var (a, b) = (way[i - 1], way[i]);
            cost += b.Y < a.Y ? 500 : 0;
            cost += i > 1 && Lines.Crosses(a, b, from.Grown(1)) ? 2000 : 0;
            foreach (var (box, grown) in boxes)
            {
                cost += box != from && Lines.Crosses(a, b, grown) ? 2000 : 0;
            }

            foreach (var line in drawn)
            {
                cost += (Lines.Cross(a, b, line.A, line.B) ? 70 : 0) + (60 * Math.Max(0, 1 - (Lines.Apart(a, b, line.A, line.B) / 9)));
            }
        }

        return cost;
    }
}
