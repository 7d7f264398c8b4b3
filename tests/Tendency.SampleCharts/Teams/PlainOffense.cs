using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>
/// An offense without habits beyond what down, distance and clock make of everybody: the invented opponents on the other side
/// of the charts. Gun and Zone (0–1) say how much of its snaps and runs are of that kind.
/// </summary>
public sealed class PlainOffense(double gun, double zone) : IOffense
{
    public Look LineUp(Situation at, Chance chance)
    {
        var card = at.ToGoal <= 3 || (at.MoneyDown && at.ToGo <= 1)
            ? chance.Pick((Cards.ThreeTight, 0.4), (Cards.Backs, 0.3), (Cards.TwoTight, 0.3))
            : chance.Roll(gun)
                ? chance.Pick((Cards.Doubles, 0.25), (Cards.Trips, 0.25), (Cards.TripsClosed, 0.13), (Cards.DoublesOpen, 0.13), (Cards.Wing, 0.1), (Cards.Bunch, 0.08), (Cards.Empty, 0.06))
                : chance.Pick((Cards.TwoTight, 0.35), (Cards.Backs, 0.3), (Cards.DoublesPistol, 0.2), (Cards.TwoTightPistol, 0.15));
        var motion = chance.Pick(("none", 0.64), ("jet", 0.1), ("across", 0.12), ("zip", 0.08), ("orbit", 0.06));
        return card.At(at, 0.52, motion, chance.Pick(("no huddle", 0.5), ("huddle", 0.5)), chance);
    }

    public Call CallPlay(Situation at, Look look, Chance chance)
    {
        var run = chance.Roll(RunChance(at));
        if (look.BackSet == "gun" && !at.MoneyDown && !at.TwoMinute && chance.Roll(0.08))
        {
            return PassBook.RunPassOption(RunBook.Run("inside zone", Side("inside zone", look, chance), chance), thrown: !run, chance);
        }

        if (run)
        {
            var scheme = Scheme(look, chance);
            return RunBook.Run(scheme, Side(scheme, look, chance), chance);
        }

        var drop = at is { Down: >= 3, ToGo: >= 7 }
            ? chance.Pick(("intermediate", 0.55), ("deep", 0.25), ("screen", 0.2))
            : chance.Pick(("quick", 0.36), ("intermediate", 0.3), ("play action", 0.16), ("boot", 0.08), ("screen", 0.06), ("deep", 0.04));
        return PassBook.Pass(drop, look, 0.62, chance);
    }

    /// <summary>What down, distance and clock make of any caller.</summary>
    internal static double RunChance(Situation at) => at switch
    {
        { TwoMinute: true } => 0.2,
        { FourMinute: true } => 0.75,
        { MoneyDown: true, ToGo: <= 2 } or { ToGoal: <= 3 } => 0.68,
        { MoneyDown: true, ToGo: <= 6 } => 0.25,
        { MoneyDown: true } => 0.14,
        { Down: 2, ToGo: >= 8 } => 0.47,
        _ => 0.6,
    };

    private string Scheme(Look look, Chance chance)
    {
        while (true)
        {
            var scheme = chance.Roll(zone)
                ? chance.Pick(("inside zone", 0.4), ("outside zone", 0.25), ("split zone", 0.1), ("zone read", 0.15), ("mid zone", 0.05), ("qb draw", 0.05))
                : chance.Pick(("power", 0.3), ("counter gt", 0.2), ("duo", 0.16), ("iso", 0.12), ("trap", 0.05), ("toss sweep", 0.06), ("pin pull", 0.05), ("qb power", 0.06));
            if (RunBook.Fits(scheme, look))
            {
                return scheme;
            }
        }
    }

    private static char Side(string scheme, Look look, Chance chance) => RunBook.SideOf(look, RunBook.UsuallyAway(scheme), chance);
}
