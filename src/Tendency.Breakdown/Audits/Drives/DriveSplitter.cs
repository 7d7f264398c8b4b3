namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Cuts the snaps of one offense in one game into series: by the charted series number, else by what one snap can lead to.</summary>
internal static class DriveSplitter
{
    /// <summary>Seconds between two snaps of one series, at most usually and at most at all.</summary>
    private const int LongestHuddle = 46;
    private const int LongestWait = 75;

    /// <param name="snaps">One offense's snaps of one game, tries left out, in film order.</param>
    /// <param name="slack">Yards a spot may be rounded by.</param>
    /// <param name="knowsResults">Whether results or touchdowns are charted, so that a series that just stops is odd.</param>
    public static List<Drive> Split(IReadOnlyList<WalkedSnap> snaps, int slack, bool knowsResults)
    {
        var numbered = snaps.Count(snap => snap.Series is not null) > 0.8 * snaps.Count;
        var drives = new List<Drive>();
        var current = new List<WalkedSnap>();
        foreach (var snap in snaps)
        {
            if (current.Count > 0 && (numbered ? snap.Series is not null && snap.Series != current[^1].Series : StartsAnew(current[^1], snap, slack, knowsResults)))
            {
                drives.Add(Of(current, drives.Count, slack));
                current = [];
            }

            // A row without a number goes with the one before it.
            current.Add(numbered && snap.Series is null && current.Count > 0 ? snap with { Series = current[^1].Series } : snap);
        }

        if (current.Count > 0)
        {
            drives.Add(Of(current, drives.Count, slack));
        }

        return drives;
    }

    // The film of the first series may begin in its middle.
    private static Drive Of(List<WalkedSnap> snaps, int before, int slack) =>
        new([.. snaps], slack, KnowsStart: before > 0 || snaps[0].Play == 1);

    private static int? Elapsed(WalkedSnap last, WalkedSnap next) =>
        last.Quarter is int quarter && quarter == next.Quarter && last.Clock - next.Clock is int seconds and >= 0 ? seconds : null;

    private static bool StartsAnew(WalkedSnap last, WalkedSnap next, int slack, bool knowsResults)
    {
        if (last.Quarter is <= 2 && next.Quarter is >= 3)
        {
            return true;
        }

        var expected = NextSnap.After(last, slack);
        if (expected.Ends)
        {
            return next.Down is null or 1;
        }

        var startLike = next.Down == 1 && (next.ToGo is null || next.ToGo == Math.Min(10, next.ToGoal ?? 10) || (next.ToGoal is null && next.ToGo < 10));
        if (!startLike)
        {
            return false;
        }

        if (expected.States.Count == 0)
        {
            return last.Effect.Length == 0;
        }

        if (expected.States.Min(state => Drive.Mismatch(state, next, slack)) == 0)
        {
            return false;
        }

        if (Elapsed(last, next) is int seconds)
        {
            // The other team's series takes longer than a huddle, and nearly always longer than a minute.
            if (seconds <= LongestHuddle)
            {
                return false;
            }

            if (seconds > LongestWait)
            {
                return true;
            }
        }

        // A first down where none was due: either the ball changed hands unseen, or the gain is a slip of the hand.
        var neededGain = last.ToGoal - next.ToGoal - (last.Effect == "added on" ? last.Flagged : 0);
        var slip = neededGain is int gain && gain >= last.ToGo && last.Gain is int typed && Slip.Number(typed, gain) < (Elapsed(last, next) is null ? Slip.Plain : Slip.Arbitrary);
        return !slip && (last.Down >= 3 || !knowsResults || neededGain is null or < 0 || neededGain < last.ToGo || neededGain > 25);
    }
}
