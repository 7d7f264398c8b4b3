using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>
/// An invented defense: the fronts it lives in, the one it turns to in short yardage, its coverages and how often it sends a
/// fifth man on early downs and on third and long. It has no other habits.
/// </summary>
public sealed class FrontMix(
    (string Front, double Weight)[] fronts, string shortFront, (string Coverage, double Weight)[] coverages, double pressure, double longPressure) : IDefense
{
    public DefenseLook Answer(Situation at, Look look, Chance chance)
    {
        var front = (at.ToGo <= 2 || at.ToGoal <= 3) && chance.Roll(0.6) ? shortFront : chance.Pick(fronts);
        var coverage = at.ToGoal <= 5 && chance.Roll(0.6) ? "cover 1" : chance.Pick(coverages);
        var sent = chance.Roll(at is { Down: >= 3, ToGo: >= 6 } ? longPressure : pressure);
        return Look(front, coverage, sent, sent ? chance.Pick(("L", 0.45), ("R", 0.45), ("both", 0.1)) : "none", chance);
    }

    /// <summary>The rest of the picture that a front and a coverage bring with them.</summary>
    internal static DefenseLook Look(string front, string coverage, bool sent, string side, Chance chance)
    {
        var shell = coverage switch
        {
            "cover 0" => 0,
            "three high quarters" or "three high cloud" or "drop eight" => 3,
            "quarters" or "palms" or "cover 2" or "two man" => chance.Roll(0.9) ? 2 : 1,
            _ => chance.Roll(0.75) ? 1 : 2,
        };
        var light = front is "tight" or "five to back" or "five away" or "double five" or "stack";
        var rushers = coverage == "drop eight" ? 3 : sent ? chance.Pick((5, 0.8), (6, 0.2)) : light ? chance.Pick((3, 0.55), (4, 0.45)) : 4;
        var box = Math.Clamp((shell >= 2 ? 6 : 7) + (front is "bear" or "okie" ? 1 : 0) - (shell == 3 ? 0 : chance.Between(0, 1)), 5, 8);
        return new DefenseLook(front, coverage, shell, rushers, box, rushers >= 5 ? side : "none");
    }
}
