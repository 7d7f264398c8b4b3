using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Changes of whole rows that may mend a drive: a snap or a flag left out, a snap charted twice, two snaps that changed places.</summary>
internal static class RowRepairs
{
    /// <summary>Longest time a huddle takes between two snaps, in seconds; more speaks for a snap left out.</summary>
    private const int LongHuddle = 55;

    public static IEnumerable<Repair> Of(Drive drive, int at)
    {
        if (at == 0 && MissingFirst(drive) is { } first)
        {
            yield return first;
        }

        if (at + 1 >= drive.Snaps.Count)
        {
            yield break;
        }

        if (Missing(drive, at) is { } missing)
        {
            yield return missing;
        }

        var (snap, next) = (drive.Snaps[at], drive.Snaps[at + 1]);
        if (SameSnap(snap, next))
        {
            yield return new Repair(RepairKind.DuplicateSnap, at + 1, ColumnNames.Play, "", 0.1, drive with { Snaps = [.. drive.Snaps.Where((_, i) => i != at + 1)] });
        }

        // The contents changed places; number and clock stay with the row.
        yield return new Repair(
            RepairKind.SwappedSnaps, at, ColumnNames.Play, "", 0.4, drive with { Snaps = [.. drive.Snaps.Take(at), next, snap, .. drive.Snaps.Skip(at + 2)] });
    }

    /// <summary>Whether two rows chart the same snap.</summary>
    public static bool SameSnap(WalkedSnap a, WalkedSnap b) =>
        a.Down == b.Down && a.ToGo == b.ToGo && a.ToGoal == b.ToGoal && a.Gain == b.Gain && a.Call == b.Call && a.Result == b.Result && a.Effect is not ("replay" or "offset");

    private static Repair? MissingFirst(Drive drive) =>
        drive.KnowsStart && !drive.GapBefore && drive.Snaps[0].Down is > 1
            ? new Repair(RepairKind.MissingSnap, -1, ColumnNames.Play, "", 0.45, drive with { GapBefore = true })
            : null;

    private static Repair? Missing(Drive drive, int at)
    {
        var (snap, next) = (drive.Snaps[at], drive.Snaps[at + 1]);
        var expected = NextSnap.After(snap, drive.Slack);
        var costs = expected.States.Select(state => MissingCost(state, next, drive.Slack)).OfType<double>().ToArray();
        var skipped = next.Play - snap.Play - 1;
        if (costs.Length == 0 && !(skipped > 0 && !expected.Ends))
        {
            return null;
        }

        var cost = costs.Length > 0 ? costs.Min() : 0.8;
        cost += skipped > 0 && OtherwiseConsecutive(drive, at) ? -0.35 : skipped == 0 ? 0.05 : 0;
        if (snap.Clock - next.Clock is int seconds && snap.Quarter == next.Quarter)
        {
            cost += seconds >= LongHuddle ? -0.1 : seconds >= 0 ? 0.1 : 0;
        }

        return new Repair(RepairKind.MissingSnap, at, ColumnNames.Play, "", Math.Max(0, cost), drive with { Gaps = new HashSet<int>(drive.Gaps) { at } });
    }

    // One snap, or one flag, between the state the last snap left and the next row.
    private static double? MissingCost(NextState left, WalkedSnap next, int slack)
    {
        var moved = left.ToGoal - next.ToGoal;
        var closer = left.ToGo - next.ToGo;
        var agree = moved is null || closer is null || Math.Abs(moved.Value - closer.Value) <= slack;
        var unspotted = moved is null ? 0.15 : 0;
        if (left.Down + 1 == next.Down && agree && (moved ?? closer) is >= -20)
        {
            return 0.4 + unspotted;
        }

        if (next.Down == 1 && (moved is null || left.ToGo is null || moved >= left.ToGo - slack)
            && (next.ToGo is null || next.ToGoal is null || next.ToGo == Math.Min(10, next.ToGoal.Value)) && (next.ToGoal is not null || next.ToGo == 10))
        {
            return 0.5 + unspotted;
        }

        return left.Down == next.Down && agree && (moved ?? closer) is 5 or 10 or 15 or -5 or -10 or -15 ? 0.45 + unspotted : null;
    }

    private static bool OtherwiseConsecutive(Drive drive, int at) =>
        Enumerable.Range(0, drive.Snaps.Count - 1).Where(i => i != at).All(i => drive.Snaps[i + 1].Play - drive.Snaps[i].Play == 1);
}
