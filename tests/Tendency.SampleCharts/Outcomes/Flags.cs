using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Outcomes;

/// <summary>
/// Flags, about seven a game. None is thrown where half the distance to the goal line would cut it short:
/// charts disagree on how such spots are rounded, and the clean set must not depend on that.
/// </summary>
public static class Flags
{
    public static Flag? DeadBall(Situation at, Chance chance)
    {
        if (!chance.Roll(0.03))
        {
            return null;
        }

        var flag = chance.Pick(
            (new Flag("offense", 5, "replay", false, "false start"), 0.6),
            (new Flag("offense", 5, "replay", false, "delay of game"), 0.15),
            (new Flag("defense", 5, "replay", false, "offside"), 0.25));
        return Fits(at, 0, flag) ? flag : null;
    }

    public static Outcome LiveBall(Situation at, Call call, Outcome outcome, Chance chance)
    {
        if (outcome.Touchdown || outcome.Result is "interception" or "fumble" || !chance.Roll(0.055))
        {
            return outcome;
        }

        var flag = chance.Pick(
            (new Flag("offense", 10, "replay", false, "holding"), 0.38),
            (new Flag("offense", 5, "replay", false, "illegal formation"), 0.08),
            (new Flag("defense", 10, "replay", true, "defensive holding"), call.RunBall ? 0 : 0.10),
            (new Flag("defense", 15, "replay", true, "pass interference"), outcome.Result == "incomplete" ? 0.4 : 0),
            (new Flag("offense", 10, "declined", false, "holding"), at.Down < 4 && outcome.Gain <= 0 ? 0.25 : 0),
            (new Flag("defense", 5, "declined", false, "offside"), outcome.Gain >= at.ToGo ? 0.2 : 0),
            (new Flag("defense", 15, "added on", true, "facemask"), outcome.Gain > 0 ? 0.12 : 0),
            (new Flag("offense", 0, "offset", false, "holding both"), 0.04));
        if (!Fits(at, flag.Effect == "added on" ? outcome.Gain ?? 0 : 0, flag))
        {
            return outcome;
        }

        return flag.Effect is "replay" or "offset"
            ? new Outcome(null, "penalty", Flag: flag, Note: flag.Name)
            : outcome with { Flag = flag, Note = flag.Name };
    }

    private static bool Fits(Situation at, int gained, Flag flag)
    {
        var spot = at.ToGoal - gained;
        return flag.On == "defense" ? 2 * flag.Yards < spot : 2 * flag.Yards < 100 - spot;
    }
}
