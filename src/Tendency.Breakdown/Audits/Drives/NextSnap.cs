namespace Tendency.Breakdown.Audits.Drives;

/// <summary>Down, distance and spot that a snap may lead to; null = can not be told.</summary>
internal readonly record struct NextState(int Down, int? ToGo, int? ToGoal);

/// <summary>What must follow a snap within its series.</summary>
/// <param name="States">Each state the rules allow; empty when nothing can be told.</param>
/// <param name="Ends">Whether the series must end here.</param>
/// <param name="MayEnd">Whether the charted result says it may.</param>
internal readonly record struct Expectation(IReadOnlyList<NextState> States, bool Ends, bool MayEnd);

/// <summary>The rules of the game from one snap to the next: downs, distances, flags, scores.</summary>
/// <remarks>Rule codes agree on all of it save what a flag's kind decides (automatic first down, loss of down); there every lawful state is allowed.</remarks>
internal static class NextSnap
{
    private static readonly Expectation s_unknown = new([], false, true);
    private static readonly Expectation s_ends = new([], true, true);

    /// <param name="snap">The snap.</param>
    /// <param name="slack">Yards a spot may be rounded by: 0, or 1 where the chart rounds.</param>
    public static Expectation After(WalkedSnap snap, int slack)
    {
        if (snap.Down is not int down || snap.ToGo is not int toGo)
        {
            return s_unknown;
        }

        switch (snap.Effect)
        {
            case "offset":
                return new([new(down, toGo, snap.ToGoal)], false, false);
            case "replay":
                return snap.Flagged is int walked ? new(Replayed(down, toGo, snap.ToGoal, walked), false, false) : s_unknown;
            case "added on" when snap.Result is "interception" or "fumble" || snap.Touchdown || snap.Flagged is null:
                return s_unknown;
            case "added on" when snap.Flagged is int added && (snap.Result == "penalty" ? 0 : snap.Gained) is int gained:
                return new(AddedOn(down, toGo, snap.ToGoal, gained, added), false, false);
            case "added on":
                return s_unknown;
        }

        if (snap.Touchdown || snap.Result == "interception")
        {
            return s_ends;
        }

        if (snap.Result is "fumble" || (snap.Result == "penalty" && snap.Effect.Length == 0) || snap.Gained is not int gain)
        {
            return s_unknown;
        }

        if (snap.ToGoal is int left && gain == left)
        {
            return s_ends;
        }

        var states = Played(down, toGo, snap.ToGoal, gain, slack);
        return states.Count == 0 ? s_ends : new(states, false, false);
    }

    /// <summary>First down: ten yards, or to the goal line.</summary>
    public static NextState FirstDown(int? toGoal) => new(1, toGoal is int yards ? Math.Min(10, Math.Max(1, yards)) : null, toGoal);

    private static List<NextState> Played(int down, int toGo, int? toGoal, int gain, int slack)
    {
        var states = new List<NextState>(2);
        if (gain + slack >= toGo)
        {
            states.Add(FirstDown(toGoal - gain));
        }

        if (gain - slack < toGo && down < 4)
        {
            states.Add(new(down + 1, Math.Max(1, toGo - gain), toGoal - gain));
        }

        return states;
    }

    private static List<NextState> Replayed(int down, int toGo, int? toGoal, int walked)
    {
        var spot = toGoal - walked;
        if (walked >= toGo)
        {
            return [FirstDown(spot)];
        }

        // A defense's foul may carry an automatic first down, an offense's the loss of the down.
        return walked > 0 ? [new(down, toGo - walked, spot), FirstDown(spot)]
            : down < 4 ? [new(down, toGo - walked, spot), new(down + 1, toGo - walked, spot)]
            : [new(down, toGo - walked, spot)];
    }

    private static List<NextState> AddedOn(int down, int toGo, int? toGoal, int gain, int added)
    {
        var spot = toGoal - gain - added;
        var states = new List<NextState>(4);
        if (gain + added >= toGo || gain >= toGo || added > 0)
        {
            states.Add(FirstDown(spot));
        }

        if (gain >= toGo && added < 0)
        {
            states.Add(new(1, 10 - added, spot));
        }

        if (gain + added < toGo)
        {
            if (down < 4)
            {
                states.Add(new(down + 1, toGo - gain - added, spot));
            }

            if (added < 0)
            {
                states.Add(new(down, toGo - gain - added, spot));
            }
        }

        return states;
    }
}
