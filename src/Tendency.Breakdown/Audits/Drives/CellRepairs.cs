using System.Globalization;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;

namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Single cells of one snap that may have been typed wrong, each with the values its neighbours call for.</summary>
internal static class CellRepairs
{
    public static IEnumerable<Repair> Of(Drive drive, int at)
    {
        var snap = drive.Snaps[at];
        return Downs(drive, at, snap).Concat(Distances(drive, at, snap)).Concat(Spots(drive, at, snap)).Concat(Gains(drive, at, snap))
            .Concat(Results(drive, at, snap)).Concat(Flags(drive, at, snap));
    }

    private static IEnumerable<Repair> Downs(Drive drive, int at, WalkedSnap snap) =>
        snap.Down is not int typed
            ? []
            : Enumerable.Range(1, 4).Where(down => down != typed)
                .Select(down => Changed(drive, at, RepairKind.Down, ColumnNames.Down, Text(down), Slip.Down(typed, down), snap with { Down = down }));

    private static IEnumerable<Repair> Distances(Drive drive, int at, WalkedSnap snap)
    {
        if (snap.IsGoal || snap.Distance is not int typed)
        {
            yield break;
        }

        var meant = new HashSet<int>();
        AddAll(meant, Before(drive, at).Select(state => state.ToGo));
        AddAll(meant, [NextSnap.FirstDown(snap.ToGoal).ToGo, 10]);
        if (at + 1 < drive.Snaps.Count && drive.Snaps[at + 1].ToGo is int next)
        {
            AddAll(meant, [next + snap.Gained, next + snap.Flagged, next]);
        }

        foreach (var toGo in meant.Where(t => t is >= 1 and <= 99 && t != typed))
        {
            yield return Changed(drive, at, RepairKind.Distance, ColumnNames.Distance, Text(toGo), Slip.Number(typed, toGo), snap with { Distance = toGo });
        }
    }

    private static IEnumerable<Repair> Spots(Drive drive, int at, WalkedSnap snap)
    {
        if (snap.ToGoal is not int typed)
        {
            yield break;
        }

        var meant = new HashSet<int>();
        AddAll(meant, Before(drive, at).Select(state => state.ToGoal));
        AddAll(meant, [100 - typed, snap.Touchdown ? snap.Gain : null]);
        if (at + 1 < drive.Snaps.Count && drive.Snaps[at + 1].ToGoal is int next)
        {
            // Wherever the step from here leads, it moves the ball by the same number of yards from any spot.
            AddAll(meant, NextSnap.After(snap with { ToGoal = 50, IsGoal = false, Distance = snap.ToGo, Touchdown = false }, drive.Slack).States.Select(state => next + 50 - state.ToGoal));
        }

        foreach (var toGoal in meant.Where(y => y is >= 1 and <= 99 && y != typed))
        {
            yield return Changed(drive, at, RepairKind.BallOn, ColumnNames.BallOn, CellReader.YardLine(toGoal), Slip.YardLine(typed, toGoal), snap with { ToGoal = toGoal });
        }
    }

    private static IEnumerable<Repair> Gains(Drive drive, int at, WalkedSnap snap)
    {
        if (snap.Gain is not int typed)
        {
            yield break;
        }

        var meant = new HashSet<int> { -typed };
        AddAll(meant, [snap.Touchdown ? snap.ToGoal : null, snap.Result is "incomplete" or "interception" ? 0 : null]);
        if (at + 1 < drive.Snaps.Count)
        {
            var next = drive.Snaps[at + 1];
            AddAll(meant, [snap.ToGoal - next.ToGoal, snap.ToGoal - next.ToGoal - snap.Flagged, snap.ToGo - next.ToGo, snap.ToGo - next.ToGo - snap.Flagged]);
        }

        // The result on the same row speaks against a gain it does not go with.
        bool Unlikely(int gain) => (snap.Result is "incomplete" or "interception" && gain != 0) || (snap.Result == "sack" && gain > 0);
        foreach (var gain in meant.Where(g => g is >= -99 and <= 99 && g != typed && !Unlikely(g)))
        {
            yield return Changed(drive, at, RepairKind.Gain, ColumnNames.Gain, Text(gain), Slip.Number(typed, gain), snap with { Gain = gain });
        }
    }

    private static IEnumerable<Repair> Results(Drive drive, int at, WalkedSnap snap)
    {
        // Without a next snap that confirms the gain, the gain is the slip.
        if (snap.Result is "incomplete" or "interception" or "sack" && snap.Gain is > 0 && at + 1 < drive.Snaps.Count)
        {
            yield return Changed(drive, at, RepairKind.Result, ColumnNames.Result, "complete", 0.3, snap with { Result = "complete" });
        }

        if (snap.Result == "interception" && at + 1 < drive.Snaps.Count)
        {
            yield return Changed(drive, at, RepairKind.Result, ColumnNames.Result, "incomplete", 0.3, snap with { Result = "incomplete" });
        }

        if (snap.Touchdown)
        {
            yield return Changed(drive, at, RepairKind.Touchdown, ColumnNames.Touchdown, "", 0.3, snap with { Touchdown = false });
        }
        else if (snap.ToGoal is int left && snap.Gain == left)
        {
            yield return Changed(drive, at, RepairKind.Touchdown, ColumnNames.Touchdown, "yes", 0.02, snap with { Touchdown = true });
        }
    }

    private static IEnumerable<Repair> Flags(Drive drive, int at, WalkedSnap snap)
    {
        if (snap.PenaltyOn.Length == 0 || snap.Effect.Length == 0)
        {
            yield break;
        }

        foreach (var effect in new[] { "replay", "declined", "added on", "offset" }.Where(effect => effect != snap.Effect))
        {
            // A replayed down keeps no gain, the others keep it.
            var cost = effect is "replay" or "offset" == (snap.Result == "penalty" || snap.Gain is null) ? 0.2 : 0.3;
            yield return Changed(drive, at, RepairKind.Penalty, ColumnNames.PenaltyEffect, effect, cost, snap with { Effect = effect });
        }

        var other = snap.PenaltyOn == "offense" ? "defense" : "offense";
        yield return Changed(drive, at, RepairKind.Penalty, ColumnNames.PenaltyOn, other, 0.25, snap with { PenaltyOn = other });
        foreach (var yards in new[] { 5, 10, 15 }.Where(yards => yards != snap.PenaltyYards))
        {
            var cost = snap.PenaltyYards is int typed ? Slip.Number(typed, yards) : 0.2;
            yield return Changed(drive, at, RepairKind.Penalty, ColumnNames.PenaltyYards, Text(yards), cost, snap with { PenaltyYards = yards });
        }
    }

    private static IReadOnlyList<NextState> Before(Drive drive, int at) => at == 0 ? [] : NextSnap.After(drive.Snaps[at - 1], drive.Slack).States;

    private static Repair Changed(Drive drive, int at, RepairKind kind, string column, string value, double cost, WalkedSnap snap) =>
        new(kind, at, column, value, cost, drive with { Snaps = [.. drive.Snaps.Take(at), snap, .. drive.Snaps.Skip(at + 1)] });

    private static void AddAll(HashSet<int> set, IEnumerable<int?> values) => set.UnionWith(values.OfType<int>());

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
