namespace Tendency.Breakdown.Audits.Drives;

/// <summary>The snaps of one series in order, and how far they are from following each other.</summary>
/// <param name="Snaps">In film order.</param>
/// <param name="Slack">Yards a spot may be rounded by.</param>
/// <param name="KnowsStart">Whether the first snap is the first of the series.</param>
internal sealed record Drive(IReadOnlyList<WalkedSnap> Snaps, int Slack, bool KnowsStart)
{
    /// <summary>Index of a snap after which one is missing; its link is then not counted.</summary>
    public IReadOnlySet<int> Gaps { get; init; } = new HashSet<int>();

    /// <summary>Whether a snap seems missing before the first.</summary>
    public bool GapBefore { get; init; }

    /// <summary>Number of cells that do not agree with another, over the whole drive.</summary>
    public int Broken()
    {
        var broken = 0;
        for (var at = 0; at < Snaps.Count; at++)
        {
            broken += BrokenAt(at);
        }

        return broken;
    }

    /// <summary>The part of <see cref="Broken"/> that lies between snaps.</summary>
    public int BrokenSteps() => Start() + Enumerable.Range(0, Snaps.Count - 1).Sum(Link);

    /// <summary>What is broken in a snap itself and in the step that led to it.</summary>
    public int BrokenAt(int at) => Within(Snaps[at]) + (at == 0 ? Start() : Link(at - 1));

    /// <summary>How many of down, distance and spot of the next snap do not follow from snap <paramref name="at"/>.</summary>
    public int Link(int at)
    {
        if (Gaps.Contains(at))
        {
            return 0;
        }

        var expected = NextSnap.After(Snaps[at], Slack);
        if (expected.Ends)
        {
            return 2;
        }

        return expected.States.Count == 0 ? 0 : expected.States.Min(state => Mismatch(state, Snaps[at + 1], Slack));
    }

    /// <summary>The lawful state nearest to the next snap, or null when the series must end or nothing can be told.</summary>
    public NextState? Expected(int at)
    {
        var expected = NextSnap.After(Snaps[at], Slack);
        return expected.States.Count == 0 ? null
            : at + 1 < Snaps.Count ? expected.States.MinBy(state => Mismatch(state, Snaps[at + 1], Slack))
            : expected.States[0];
    }

    public int Start()
    {
        var first = Snaps[0];
        if (!KnowsStart || GapBefore || first.Down is null)
        {
            return 0;
        }

        return (first.Down == 1 ? 0 : 1) + (first.Down == 1 && first.ToGo is int toGo && !StartDistance(first.ToGoal, toGo) ? 1 : 0);
    }

    public static int Mismatch(NextState state, WalkedSnap next, int slack)
    {
        var down = next.Down is int d && d != state.Down ? 1 : 0;
        var toGo = next.ToGo is int t && state.ToGo is int expected && Math.Abs(t - expected) > slack ? 1 : 0;
        var toGoal = next.ToGoal is int y && state.ToGoal is int spot && Math.Abs(y - spot) > slack ? 1 : 0;
        var tooLong = state is { Down: 1, ToGo: null } && next is { Down: 1, ToGo: > 10 } ? 1 : 0;
        return down + toGo + toGoal + tooLong;
    }

    /// <summary>Cells of one snap that contradict each other.</summary>
    public static int Within(WalkedSnap snap)
    {
        var broken = 0;
        var plays = snap.Effect is not ("replay" or "offset") && snap.Result != "penalty";
        if (snap.ToGoal is int left)
        {
            broken += snap.ToGo > left ? 1 : 0;
            broken += snap.Gain > left ? 1 : 0;
            broken += snap is { Gain: int gain } && gain < left - 100 ? 1 : 0;
            if (plays && snap.Result is "rush" or "complete" or "scramble" && snap.Gain is int gained)
            {
                broken += snap.Touchdown != (gained == left) ? 1 : 0;
            }
        }

        broken += plays && snap.Result is "incomplete" or "interception" && snap.Gain is int n && n != 0 ? 1 : 0;
        broken += plays && snap.Result == "sack" && snap.Gain > 0 ? 1 : 0;

        // A flag declined or added on leaves the play its own result.
        broken += snap is { Result: "penalty", Effect: "declined" or "added on", Gain: null } ? 1 : 0;
        return broken;
    }

    // Goal to go without a charted spot may be any distance up to ten.
    private static bool StartDistance(int? toGoal, int toGo) => toGoal is int yards ? toGo == Math.Min(10, yards) : toGo <= 10;
}
