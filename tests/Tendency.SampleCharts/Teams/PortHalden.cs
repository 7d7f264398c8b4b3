using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>
/// The opponent's offense: gun with one tight end, zone first with counter and the read beside it, a wing package, a pistol
/// package whose meaning changed after the third game. What is planted is listed in <see cref="Planted"/>.
/// </summary>
public sealed class PortHalden : IOffense
{
    private const double InsideZoneAway = 0.84;
    private const double SlideAway = 0.78;
    private const double JetToTheEdge = 0.75;
    private const double RedZoneCounter = 0.50;
    private const double BunchQuick = 0.80;
    private const double ThirdMediumPair = 0.75;
    private const double PlayActionAfterRun = 0.65;
    private const double PlayActionElse = 0.15;

    /// <summary>The one habit that decides run or pass on a snap: the first that fits, in this order.</summary>
    private enum Habit
    {
        TwoMinute, FourMinute, ShortYardage, ThirdMedium, ThirdLong, Empty, WingStrong, Jet, Pistol, Bunch, BackWeak, SecondLong, BackStrong, UnderCenter,
    }

    public static IReadOnlyList<PlantedTell> Planted { get; } =
    [
        Run("Two-minute: pass", Habit.TwoMinute, isRun: false),
        Run("Four-minute with the lead: run", Habit.FourMinute),
        Run("Third or fourth and short: run", Habit.ShortYardage),
        Run("Third and medium: pass", Habit.ThirdMedium, isRun: false),
        Run("Third and long: pass", Habit.ThirdLong, isRun: false),
        Run("Wing, back strong: run", Habit.WingStrong),
        Run("Jet motion: run", Habit.Jet),
        Run("Pistol, games 1 to 3: run", Habit.Pistol) with { LastGame = 3 },
        Run("Pistol, games 4 and 5: no longer a run look", Habit.Pistol) with { FirstGame = 4, Probability = RunChance(Habit.Pistol, game: 4) },
        Run("Bunch: pass", Habit.Bunch, isRun: false),
        Run("Gun, back weak, early downs: run", Habit.BackWeak),
        Run("Gun, back strong, early downs: pass", Habit.BackStrong, isRun: false),
        new("Inside zone goes away from an offset back",
            s => s.Call.RunScheme == "inside zone" && s.Look.BackLetter is not null, s => s.Call.RunSide != s.Look.BackLetter, InsideZoneAway),
        new("The line slides away from the back",
            s => s.Call.SlideSide is not null && s.Look.BackLetter is not null, s => s.Call.SlideSide != s.Look.BackLetter, SlideAway),
        new("Jet motion runs are outside zone or the sweep itself",
            s => s.Call.Kind == "run" && s.Look.Motion == "jet" && HabitOf(s.At, s.Look) is not Habit.ShortYardage && !s.At.RedZone,
            s => s.Call.RunScheme is "outside zone" or "jet sweep", JetToTheEdge),
        new("Red zone runs are counter",
            s => s.Call.Kind == "run" && s.At.RedZone && s.Look.BackSet != "empty" && HabitOf(s.At, s.Look) is not Habit.ShortYardage,
            s => s.Call.RunScheme is "counter gt" or "counter gh", RedZoneCounter),
        new("Bunch passes are quick game",
            s => s.Call.Kind == "pass" && HabitOf(s.At, s.Look) is Habit.Bunch, s => s.Call.Drop == "quick", BunchQuick),
        new("Third-and-medium passes are stick or mesh",
            s => s.Call.Kind == "pass" && HabitOf(s.At, s.Look) is Habit.ThirdMedium, s => s.Call.PassConcept is "stick" or "mesh", ThirdMediumPair),
        new("Second-down passes after a first-down run are play action", s => PlayActionSpot(s.At, s.Look) && s.Call.Kind == "pass",
            s => s.Call.Drop == "play action", PlayActionAfterRun),
    ];

    public Look LineUp(Situation at, Chance chance)
    {
        var card = Card(at, chance);
        var motion = chance.Pick(("none", 0.58), ("jet", 0.13), ("across", 0.09), ("orbit", 0.05), ("zip", 0.06), ("return", 0.04), ("out", 0.05));
        var tempo = at.TwoMinute ? "fast" : chance.Pick(("no huddle", 0.55), ("huddle", 0.33), ("fast", 0.12));
        var backStrong = card == Cards.Wing ? 0.68 : 0.55;
        return card.At(at, backStrong, at.MoneyDown && motion == "jet" ? "none" : motion, tempo, chance);
    }

    public Call CallPlay(Situation at, Look look, Chance chance)
    {
        var habit = HabitOf(at, look);
        var run = chance.Roll(RunChance(habit, at.Game));
        var optionLook = look.BackSet == "gun" && !at.MoneyDown && !at.TwoMinute && look.Motion != "jet" && !at.RedZone && habit is not Habit.Bunch;
        if (optionLook && chance.Roll(run ? 0.18 : 0.17))
        {
            var scheme = chance.Pick(("inside zone", 0.7), ("outside zone", 0.15), ("power", 0.15));
            return PassBook.RunPassOption(RunBook.Run(scheme, Side(scheme, look, chance), chance), thrown: !run, chance);
        }

        if (run)
        {
            var scheme = Scheme(at, look, habit, chance);
            return RunBook.Run(scheme, Side(scheme, look, chance), chance);
        }

        if (habit is Habit.ThirdMedium && chance.Roll(ThirdMediumPair))
        {
            return chance.Roll(0.5) ? PassBook.Pass("quick", "stick", look, SlideAway, chance) : PassBook.Pass("intermediate", "mesh", look, SlideAway, chance);
        }

        return Throw(at, look, habit, chance);
    }

    private static Call Throw(Situation at, Look look, Habit habit, Chance chance)
    {
        var drop = habit is Habit.Bunch && chance.Roll(BunchQuick) ? "quick"
            : PlayActionSpot(at, look) && chance.Roll(PlayActionAfterRun) ? "play action"
            : habit switch
            {
                Habit.Bunch => chance.Pick(("intermediate", 0.6), ("screen", 0.4)),
                Habit.ThirdMedium or Habit.Empty => chance.Pick(("quick", 0.4), ("intermediate", 0.6)),
                Habit.ThirdLong => chance.Pick(("intermediate", 0.5), ("deep", 0.28), ("screen", 0.22)),
                Habit.TwoMinute => chance.Pick(("quick", 0.4), ("intermediate", 0.45), ("deep", 0.15)),
                _ when PlayActionSpot(at, look) => chance.Pick(("quick", 0.45), ("intermediate", 0.4), ("screen", 0.15)),
                _ => chance.Pick(("quick", 0.34), ("intermediate", 0.27), ("play action", PlayActionElse), ("boot", 0.09), ("screen", 0.08), ("deep", 0.07)),
            };
        var concept = habit is Habit.ThirdMedium ? chance.One("curl flat", "levels", "snag", "shallow cross", "slant flat") : null;
        return concept is null ? PassBook.Pass(drop, look, SlideAway, chance) : PassBook.Pass(drop, concept, look, SlideAway, chance);
    }

    private static FormationCard Card(Situation at, Chance chance)
    {
        if (at.ToGoal <= 3 || (at.MoneyDown && at.ToGo <= 1))
        {
            return chance.Pick((Cards.ThreeTight, 0.35), (Cards.Backs, 0.25), (Cards.TwoTight, 0.2), (Cards.Wing, 0.2));
        }

        if (at.MoneyDown || at.TwoMinute)
        {
            return chance.Pick((Cards.Trips, 0.28), (Cards.DoublesOpen, 0.2), (Cards.Doubles, 0.16), (Cards.Empty, 0.12), (Cards.Bunch, 0.1), (Cards.Nub, 0.08), (Cards.Stacked, 0.06));
        }

        return chance.Pick(
            (Cards.Wing, 0.25), (Cards.Doubles, 0.10), (Cards.Trips, 0.12), (Cards.TripsClosed, 0.08), (Cards.Insert, 0.08), (Cards.Bunch, 0.09),
            (Cards.DoublesPistol, 0.105), (Cards.TripsPistol, 0.085), (Cards.TwoTight, 0.04), (Cards.Backs, 0.03), (Cards.Empty, 0.025), (Cards.Nub, 0.02));
    }

    private static string Scheme(Situation at, Look look, Habit habit, Chance chance)
    {
        if (look.BackSet == "empty")
        {
            return chance.Pick(("qb draw", 0.6), ("qb power", 0.4));
        }

        if (habit is Habit.ShortYardage)
        {
            return Fitting(look, chance, ("inside zone", 0.28), ("duo", 0.26), ("power", 0.26), ("sneak", 0.14), ("iso", 0.06));
        }

        if (at.RedZone)
        {
            return chance.Roll(RedZoneCounter)
                ? Fitting(look, chance, ("counter gt", 0.65), ("counter gh", 0.35))
                : Fitting(look, chance, ("inside zone", 0.4), ("outside zone", 0.2), ("power", 0.15), ("zone read", 0.15), ("duo", 0.1));
        }

        if (look.Motion == "jet")
        {
            return chance.Roll(JetToTheEdge)
                ? Fitting(look, chance, ("outside zone", 0.55), ("jet sweep", 0.45))
                : Fitting(look, chance, ("inside zone", 0.5), ("power", 0.25), ("counter gt", 0.25));
        }

        if (look.Wing != "none")
        {
            return Fitting(look, chance,
                ("inside zone", 0.24), ("split zone", 0.26), ("power", 0.14), ("counter gh", 0.12), ("outside zone", 0.12), ("duo", 0.08), ("counter gt", 0.04));
        }

        return Fitting(look, chance,
            ("inside zone", 0.30), ("outside zone", 0.14), ("zone read", 0.10), ("power", 0.11), ("counter gt", 0.09),
            ("duo", 0.07), ("pin pull", 0.04), ("toss sweep", 0.02), ("draw", 0.02), ("speed option", 0.015), ("bash", 0.02), ("iso", 0.02));
    }

    private static string Fitting(Look look, Chance chance, params ReadOnlySpan<(string Scheme, double Weight)> choices)
    {
        string scheme;
        do
        {
            scheme = chance.Pick(choices);
        }
        while (!RunBook.Fits(scheme, look));
        return scheme;
    }

    private static char Side(string scheme, Look look, Chance chance) =>
        RunBook.SideOf(look, scheme == "inside zone" ? InsideZoneAway : RunBook.UsuallyAway(scheme), chance);

    private static bool PlayActionSpot(Situation at, Look look) =>
        at is { Down: 2, PreviousCall: "run", TwoMinute: false } && look.BackSet != "empty" && look.Formation != "bunch";

    private static Habit HabitOf(Situation at, Look look) => at switch
    {
        { TwoMinute: true } => Habit.TwoMinute,
        { FourMinute: true } => Habit.FourMinute,
        { MoneyDown: true, ToGo: <= 2 } or { ToGoal: <= 3 } => Habit.ShortYardage,
        { MoneyDown: true, ToGo: <= 6 } => Habit.ThirdMedium,
        { MoneyDown: true } => Habit.ThirdLong,
        _ => look switch
        {
            { BackSet: "empty" } => Habit.Empty,
            { Formation: "wing", BackSide: "strong" } => Habit.WingStrong,
            { Motion: "jet" } => Habit.Jet,
            { BackSet: "pistol" } => Habit.Pistol,
            { Formation: "bunch" } => Habit.Bunch,
            { BackSet: "gun", BackSide: "weak" } => Habit.BackWeak,
            { BackSet: "gun" } => at is { Down: 2, ToGo: >= 8 } ? Habit.SecondLong : Habit.BackStrong,
            _ => Habit.UnderCenter,
        },
    };

    private static double RunChance(Habit habit, int game) => habit switch
    {
        Habit.TwoMinute => 0.18,
        Habit.FourMinute => 0.80,
        Habit.ShortYardage => 0.70,
        Habit.ThirdMedium => 0.20,
        Habit.ThirdLong => 0.12,
        Habit.Empty => 0.15,
        Habit.WingStrong => 0.83,
        Habit.Jet => 0.70,
        Habit.Pistol => game <= 3 ? 0.85 : 0.40,
        Habit.Bunch => 0.28,
        Habit.BackWeak => 0.72,
        Habit.SecondLong => 0.34,
        Habit.BackStrong => 0.44,
        _ => 0.62,
    };

    private static PlantedTell Run(string name, Habit habit, bool isRun = true) => new(
        name, s => HabitOf(s.At, s.Look) == habit, s => s.Call.RunBall == isRun,
        isRun ? RunChance(habit, game: 1) : 1 - RunChance(habit, game: 1));
}
