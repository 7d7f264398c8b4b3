using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>Our own offense, with what we give away planted on purpose: see <see cref="Planted"/>.</summary>
public sealed class MarrowPoint : IOffense
{
    private const double TwoTightRun = 0.86;
    private const double PistolRun = 0.78;
    private const double QuietTripsPass = 0.78;
    private const double InsertSplit = 0.70;
    private const double OrbitScreen = 0.72;
    private const double SeriesStartRun = 0.74;
    private const double SlideAway = 0.80;

    private readonly PlainOffense _plain = new(gun: 0.8, zone: 0.5);

    public static IReadOnlyList<PlantedTell> Planted { get; } =
    [
        new("Two tight ends: run", s => Early(s.At) && TwoTight(s.Look), s => s.Call.RunBall, TwoTightRun),
        new("Pistol: run", s => Early(s.At) && !TwoTight(s.Look) && s.Look.BackSet == "pistol", s => s.Call.RunBall, PistolRun),
        new("Trips, back strong, nobody moves: pass", s => Early(s.At) && QuietTrips(s.Look), s => !s.Call.RunBall, QuietTripsPass),
        new("First snap of a series, from any other look: run",
            s => Early(s.At) && s.At.FirstOfSeries && !Marked(s.Look), s => s.Call.RunBall, SeriesStartRun),
        new("Off-ball man on the strong side: the run is split zone",
            s => s.Call.Kind == "run" && Early(s.At) && s.Look.Formation == "doubles" && s.Look.Wing != "none", s => s.Call.RunScheme == "split zone", InsertSplit),
        new("Orbit motion: the pass is a screen", s => s.Call.Kind == "pass" && Early(s.At) && s.Look.Motion == "orbit", s => s.Call.Drop == "screen", OrbitScreen),
        new("The line slides away from the back", s => s.Call.SlideSide is not null && s.Look.BackLetter is not null, s => s.Call.SlideSide != s.Look.BackLetter, SlideAway),
    ];

    public Look LineUp(Situation at, Chance chance)
    {
        if (!Early(at))
        {
            return _plain.LineUp(at, chance);
        }

        var card = chance.Pick(
            (Cards.TwoTight, 0.12), (Cards.TwoTightPistol, 0.04), (Cards.DoublesPistol, 0.14), (Cards.Trips, 0.2), (Cards.Doubles, 0.16), (Cards.Insert, 0.16),
            (Cards.TripsClosed, 0.1), (Cards.Bunch, 0.05), (Cards.Empty, 0.03));
        var motion = chance.Pick(("none", 0.6), ("orbit", 0.12), ("across", 0.12), ("zip", 0.08), ("jet", 0.08));
        return card.At(at, 0.6, motion, chance.Pick(("no huddle", 0.7), ("huddle", 0.3)), chance);
    }

    public Call CallPlay(Situation at, Look look, Chance chance)
    {
        if (!Early(at))
        {
            return _plain.CallPlay(at, look, chance);
        }

        var run = chance.Roll(
            TwoTight(look) ? TwoTightRun
            : look.BackSet == "pistol" ? PistolRun
            : QuietTrips(look) ? 1 - QuietTripsPass
            : at.FirstOfSeries ? SeriesStartRun
            : at is { Down: 2, ToGo: >= 8 } ? 0.4 : 0.5);
        if (run)
        {
            var scheme = Scheme(look, chance);
            return RunBook.Run(scheme, RunBook.SideOf(look, RunBook.UsuallyAway(scheme), chance), chance);
        }

        var drop = look.Motion == "orbit" && chance.Roll(OrbitScreen)
            ? "screen"
            : chance.Pick(("quick", 0.36), ("intermediate", 0.3), ("play action", 0.2), ("boot", 0.09), ("deep", 0.05));
        return PassBook.Pass(drop, look, SlideAway, chance);
    }

    private static string Scheme(Look look, Chance chance)
    {
        var insert = look is { Formation: "doubles", Wing: not "none" };
        if (insert && chance.Roll(InsertSplit))
        {
            return "split zone";
        }

        while (true)
        {
            var scheme = chance.Pick(("inside zone", 0.28), ("outside zone", 0.16), ("power", 0.18), ("counter gt", 0.13), ("duo", 0.09), ("zone read", 0.09), ("counter gh", 0.04), ("qb draw", 0.03));
            if (RunBook.Fits(scheme, look))
            {
                return scheme;
            }
        }
    }

    /// <summary>First and second downs away from the goal line and the clock: where the coordinator's own habits show.</summary>
    private static bool Early(Situation at) => at is { MoneyDown: false, IsTry: false, TwoMinute: false, FourMinute: false, ToGoal: > 3 };

    private static bool Marked(Look look) => TwoTight(look) || QuietTrips(look) || look.BackSet == "pistol";

    private static bool TwoTight(Look look) => look.Formation == "two tight";

    private static bool QuietTrips(Look look) => look is { Formation: "trips", BackSide: "strong", Motion: "none" };
}
