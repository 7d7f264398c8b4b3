namespace Tendency.SampleCharts.Walks;

/// <summary>
/// The rule book of one possession: from a situation and what came of the snap, where the ball is next.
/// The chart's own audit works the other way round, from the rows; neither uses the other.
/// </summary>
public static class DriveWalk
{
    /// <summary>Down and distance where a series of downs starts.</summary>
    public static (int Down, int ToGo) FirstDown(int toGoal) => (1, Math.Min(10, toGoal));

    /// <summary>
    /// The next down, distance and spot of the same possession. Touchdowns, turnovers and kicks are the caller's business.
    /// Down 5 means the offense has failed on fourth down: the ball goes over at ToGoal.
    /// </summary>
    public static (int Down, int ToGo, int ToGoal) Next(Situation at, Outcome outcome)
    {
        var flag = outcome.Flag;
        if (flag is { Effect: "offset" })
        {
            return (at.Down, at.ToGo, at.ToGoal);
        }

        var walkedOff = flag is null or { Effect: "declined" } ? 0 : flag.On == "defense" ? flag.Yards : -flag.Yards;
        if (flag is { Effect: "replay" })
        {
            var spot = at.ToGoal - walkedOff;
            if (flag.FirstDown || walkedOff >= at.ToGo)
            {
                var (down, toGo) = FirstDown(spot);
                return (down, toGo, spot);
            }

            return (at.Down, at.ToGo - walkedOff, spot);
        }

        var gained = (outcome.Gain ?? 0) + walkedOff;
        var next = at.ToGoal - gained;
        if (gained >= at.ToGo || flag is { Effect: "added on", FirstDown: true })
        {
            var (down, toGo) = FirstDown(next);
            return (down, toGo, next);
        }

        return (at.Down + 1, at.ToGo - gained, next);
    }

    /// <summary>
    /// The hash of the next snap: an incomplete pass and a replayed down leave the ball where it was;
    /// any other play ends mostly toward its own side.
    /// </summary>
    public static char NextHash(Situation at, Call call, Outcome outcome, Chance chance)
    {
        if (outcome.Result is "incomplete" || outcome.Flag is { Effect: "replay" or "offset" })
        {
            return at.Hash;
        }

        if (call.RunBall && call.RunSide is { } side)
        {
            var wide = call.Gap == "D";
            return chance.Pick((side, wide ? 0.72 : 0.52), ('M', wide ? 0.25 : 0.30), (Sides.Other(side), wide ? 0.03 : 0.18));
        }

        return chance.Pick(('L', 0.37), ('M', 0.27), ('R', 0.36));
    }

    /// <summary>
    /// Seconds between this snap and the next. A dead-ball flag takes none, an incomplete pass its own few seconds,
    /// a hurrying offense 12–20, a leading one near the end nearly the whole play clock.
    /// </summary>
    public static int Seconds(Situation at, Call call, Outcome outcome, Chance chance)
    {
        if (outcome.Result == "penalty")
        {
            return call.Kind == "none" ? 0 : chance.Between(5, 8);
        }

        if (outcome.Result == "incomplete")
        {
            return chance.Between(5, 9);
        }

        if (outcome.Result is "complete" or "scramble" && chance.Roll(at.TwoMinute ? 0.4 : 0.12))
        {
            return chance.Between(6, 10);
        }

        return at.TwoMinute ? chance.Between(13, 21) : at.FourMinute ? chance.Between(38, 44) : chance.Between(29, 43);
    }
}
