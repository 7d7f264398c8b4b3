using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Outcomes;

/// <summary>
/// What a run gains: a shifted lognormal with its long tail (median near 3, mean near 4½, about one in six stuffed),
/// moved 0.85 yards per point of the front's rating, which moves success by about 0.06 a point (measured over 1,500 games),
/// the prior of the front check.
/// </summary>
public static class RunOutcome
{
    private const double YardsPerPoint = 0.85;
    private const double LostFumble = 0.012;

    private static readonly string[] Wide =
        ["outside zone", "toss sweep", "jet sweep", "pin pull", "speed option", "counter gt", "counter gh", "zone read", "bash", "qb draw", "draw"];

    public static Outcome Of(Situation at, Look look, Call call, DefenseLook faced, Chance chance)
    {
        var rating = FrontFit.Rating(faced.Front, call.RunScheme, call.RunSide, look.BackLetter);
        var gain = Clip(at, Yards(at, call.RunScheme, rating, chance));
        if (gain >= at.ToGoal)
        {
            return new Outcome(at.ToGoal, "rush", Touchdown: true);
        }

        return !at.IsTry && chance.Roll(LostFumble) ? new Outcome(gain, "fumble", Note: "fumble lost") : new Outcome(gain, "rush");
    }

    /// <summary>No snap gains past the goal line, and the scenario has no safeties: nothing falls behind the own one.</summary>
    internal static int Clip(Situation at, int gain) => Math.Clamp(gain, at.ToGoal - 99, at.ToGoal);

    private static int Yards(Situation at, string scheme, double rating, Chance chance)
    {
        if (scheme is "sneak")
        {
            return chance.Pick((0, 0.2), (1, 0.35), (2, 0.3), (3, 0.15));
        }

        var spread = Array.IndexOf(Wide, scheme) >= 0 ? 0.72 : 0.58;
        var middle = at.ToGoal <= 5 ? 5.3 : 6.4;
        var raw = (middle * Math.Exp(spread * chance.Normal())) - 3 - (YardsPerPoint * rating);
        return Math.Max(-6, (int)Math.Round(raw, MidpointRounding.AwayFromZero));
    }
}
