using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>Finds the way of an arrow from a letter to its gap: around other letters, and clear of the arrows before it as far as there is room.</summary>
internal sealed class ArrowRouter(IReadOnlyList<Area> letters, double endY)
{
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

    private (IReadOnlyList<Spot> Way, double Cost) Cheapest(IEnumerable<IReadOnlyList<Spot>> ways, Area from, (double Left, double Right) lane)
    {
        IReadOnlyList<Spot> best = [];
        var least = double.MaxValue;
        foreach (var way in ways)
        {
            var cost = Cost(way, from, lane);
            if (cost < least)
            {
                (best, least) = (way, cost);
            }
        }

        return (best, least);
    }

    private IEnumerable<IReadOnlyList<Spot>> OneBend(Area from, (double Left, double Right) lane)
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

    private IEnumerable<IReadOnlyList<Spot>> TwoBends(Area from, (double Left, double Right) lane)
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

    private static double Length(IReadOnlyList<Spot> way) => way.Zip(way.Skip(1), Lines.Length).Sum();

    private double Cost(IReadOnlyList<Spot> way, Area from, (double Left, double Right) lane)
    {
        var cost = Math.Abs(way[^1].X - ((lane.Left + lane.Right) / 2)) + (9 * way.Count);
        for (var i = 1; i < way.Count; i++)
        {
            var (a, b) = (way[i - 1], way[i]);
            cost += Lines.Length(a, b);
            cost += b.Y < a.Y ? 500 : 0;
            cost += 2000 * letters.Count(box => box != from && Lines.Crosses(a, b, box.Grown(Clear)));
            cost += i > 1 && Lines.Crosses(a, b, from.Grown(1)) ? 2000 : 0;
            cost += 70 * drawn.Count(line => Lines.Cross(a, b, line.A, line.B));
            cost += drawn.Sum(line => 60 * Math.Max(0, 1 - (Lines.Apart(a, b, line.A, line.B) / 9)));
        }

        // A last leg that lies nearly flat does not read as a gap.
        var (last, tip) = (way[^2], way[^1]);
        cost += Math.Abs(tip.X - last.X) > 1.2 * (tip.Y - last.Y) ? 60 : 0;
        return cost;
    }
}
