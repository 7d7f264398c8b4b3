namespace Tendency.Breakdown.Audits.Drives;

/// <summary>A row charted under the series before or after its own.</summary>
internal static class SeriesNumbers
{
    /// <summary>Moves single rows between neighbouring series where that makes both add up better.</summary>
    /// <returns>The drives as mended, and each moved snap with the number it should have.</returns>
    public static (List<Drive> Drives, List<(WalkedSnap Snap, int Series)> Moved) Mend(IReadOnlyList<Drive> drives)
    {
        var mended = drives.ToList();
        var moved = new List<(WalkedSnap, int)>();
        for (var at = 0; at < mended.Count; at++)
        {
            // One row under another number, in the middle of a series.
            if (at > 0 && at + 1 < mended.Count && mended[at].Snaps.Count == 1 && mended[at - 1].Snaps[^1].Series is int around && mended[at + 1].Snaps[0].Series == around)
            {
                var joined = mended[at - 1] with { Snaps = [.. mended[at - 1].Snaps, mended[at].Snaps[0] with { Series = around }, .. mended[at + 1].Snaps] };
                moved.Add((mended[at].Snaps[0], around));
                mended.RemoveRange(at - 1, 3);
                mended.Insert(at - 1, joined);
                at--;
                continue;
            }

            // One row at the border under a number of its own.
            if (mended[at].Snaps.Count == 1 && Joined(mended, at) is var (index, whole, number))
            {
                moved.Add((mended[at].Snaps[0], number));
                mended.RemoveRange(index, 2);
                mended.Insert(index, whole);
                at = Math.Max(-1, index - 1);
                continue;
            }

            if (at + 1 < mended.Count && Better(mended[at], mended[at + 1]) is var (before, after, snap, series))
            {
                moved.Add((snap, series));
                mended[at] = before;
                mended[at + 1] = after;
            }
        }

        return (mended, moved);
    }

    private static (int Index, Drive Whole, int Series)? Joined(List<Drive> drives, int at)
    {
        var lone = drives[at];
        if (at + 1 < drives.Count && drives[at + 1] is var next && next.Snaps[0].Series is int second && next.Start() > 0
            && (next with { Snaps = [lone.Snaps[0] with { Series = second }, .. next.Snaps] }) is var withNext && withNext.Broken() < lone.Broken() + next.Broken() && withNext.Link(0) == 0)
        {
            return (at, withNext, second);
        }

        if (at > 0 && drives[at - 1] is var last && last.Snaps[^1].Series is int first && lone.Start() > 0
            && (last with { Snaps = [.. last.Snaps, lone.Snaps[0] with { Series = first }] }) is var withLast && withLast.Broken() < lone.Broken() + last.Broken() && withLast.Link(last.Snaps.Count - 1) == 0)
        {
            return (at - 1, withLast, first);
        }

        return null;
    }

    private static (Drive Before, Drive After, WalkedSnap Snap, int Series)? Better(Drive one, Drive two)
    {
        if (one.Snaps[^1].Series is not int first || two.Snaps[0].Series is not int second)
        {
            return null;
        }

        var now = one.Broken() + two.Broken();
        if (now == 0)
        {
            return null;
        }

        int Left((Drive Before, Drive After, WalkedSnap Snap, int Series) c) => c.Before.Broken() + c.After.Broken();

        var candidates = new List<(Drive Before, Drive After, WalkedSnap Snap, int Series)>(2);
        if (two.Snaps.Count > 1)
        {
            candidates.Add((one with { Snaps = [.. one.Snaps, two.Snaps[0] with { Series = first }] }, two with { Snaps = [.. two.Snaps.Skip(1)] }, two.Snaps[0], first));
        }

        if (one.Snaps.Count > 1)
        {
            candidates.Add((one with { Snaps = [.. one.Snaps.SkipLast(1)] }, two with { Snaps = [one.Snaps[^1] with { Series = second }, .. two.Snaps] }, one.Snaps[^1], second));
        }

        return candidates.Where(c => now - Left(c) >= 2 || (now > 1 && Left(c) == 0)).OrderBy(Left).Cast<(Drive, Drive, WalkedSnap, int)?>().FirstOrDefault();
    }
}
