using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>
/// An offense for simulations: looks drawn without regard to the situation, run or pass drawn without regard to either, except
/// for the tells given in log odds and a game's own swing. Scheme, side and drop know nothing of the look.
/// </summary>
public sealed class CoinFlipOffense(double runShare, double swing, IReadOnlyList<LogOddsTell> tells) : IOffense
{
    public Look LineUp(Situation at, Chance chance)
    {
        var card = chance.Pick(
            (Cards.Doubles, 0.17), (Cards.DoublesOpen, 0.08), (Cards.Trips, 0.16), (Cards.TripsClosed, 0.1), (Cards.Wing, 0.14), (Cards.Insert, 0.08),
            (Cards.Bunch, 0.09), (Cards.DoublesPistol, 0.08), (Cards.TwoTight, 0.06), (Cards.Empty, 0.04));
        var motion = chance.Pick(("none", 0.6), ("jet", 0.15), ("across", 0.15), ("orbit", 0.1));
        return card.At(at, 0.55, motion, chance.Pick(("no huddle", 0.6), ("huddle", 0.4)), chance);
    }

    public Call CallPlay(Situation at, Look look, Chance chance)
    {
        var odds = Math.Log(runShare / (1 - runShare)) + swing + tells.Where(tell => tell.Holds(at, look)).Sum(tell => tell.LogOdds);
        var run = chance.Roll(1 / (1 + Math.Exp(-odds)));
        if (run)
        {
            var scheme = chance.Pick(("inside zone", 0.35), ("outside zone", 0.2), ("power", 0.2), ("counter gt", 0.15), ("duo", 0.1));
            return RunBook.Run(scheme, chance.One('L', 'R'), chance);
        }

        var drop = chance.Pick(("quick", 0.4), ("intermediate", 0.35), ("play action", 0.25));
        return PassBook.Pass(drop, look, 0.5, chance);
    }
}
