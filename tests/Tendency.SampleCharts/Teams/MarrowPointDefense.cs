using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>Our own defense: three-safety people out of tight, with what we give away planted on purpose: see <see cref="Planted"/>.</summary>
public sealed class MarrowPointDefense : IDefense
{
    private const double HashFront = 0.72;
    private const double TwoBackOver = 0.75;
    private const double ThirdLongSent = 0.55;
    private const double ThirdLongToBack = 0.84;
    private const double RedManFree = 0.74;
    private const double TwoHighShownIsQuarters = 0.80;

    public static IReadOnlyList<PlantedTell> Planted { get; } =
    [
        new("Ball on the left hash: tight", s => Base(s.At, s.Look) && s.At.Hash == 'L', s => s.Faced.Front == "tight", HashFront),
        new("Ball on the right hash: five to the back", s => Base(s.At, s.Look) && s.At.Hash == 'R', s => s.Faced.Front == "five to back", HashFront),
        new("Two tight ends or two backs: bear", s => Heavy(s.Look) && !ThirdLong(s.At), s => s.Faced.Front == "bear", TwoBackOver),
        new("Third and long: pressure", s => ThirdLong(s.At), s => s.Faced.Rushers >= 5, ThirdLongSent),
        new("Third-and-long pressure comes from the back's side",
            s => ThirdLong(s.At) && s.Faced.Rushers >= 5 && s.Look.BackLetter is not null,
            s => s.Faced.PressureSide == Sides.Text(s.Look.BackLetter), ThirdLongToBack),
        new("Inside the twelve: man free", s => Close(s.At), s => s.Faced.Coverage == "cover 1", RedManFree),
        new("Two high shown, away from the goal line and third and long: quarters",
            s => !Close(s.At) && !ThirdLong(s.At) && s.Faced.Shell == 2, s => s.Faced.Coverage == "quarters", TwoHighShownIsQuarters),
    ];

    public DefenseLook Answer(Situation at, Look look, Chance chance)
    {
        var front = Front(at, look, chance);
        if (Close(at))
        {
            var coverage = chance.Roll(RedManFree) ? "cover 1" : chance.One("cover 3", "quarters");
            return FrontMix.Look(front, coverage, chance.Roll(0.3), Side(look, 0.5, chance), chance);
        }

        if (ThirdLong(at))
        {
            var sent = chance.Roll(ThirdLongSent);
            var coverage = sent ? chance.Pick(("cover 1", 0.5), ("fire zone", 0.5)) : chance.Pick(("drop eight", 0.5), ("three high quarters", 0.3), ("cover 2", 0.2));
            return FrontMix.Look(front, coverage, sent, Side(look, ThirdLongToBack, chance), chance);
        }

        var shell = chance.Pick((1, 0.3), (2, 0.3), (3, 0.4));
        var called = shell switch
        {
            1 => chance.Pick(("cover 3", 0.55), ("cover 1", 0.45)),
            2 => chance.Roll(TwoHighShownIsQuarters) ? "quarters" : chance.One("cover 3 buzz", "cover 2"),
            _ => chance.Pick(("three high quarters", 0.6), ("three high cloud", 0.4)),
        };
        return FrontMix.Look(front, called, chance.Roll(0.16), Side(look, 0.5, chance), chance) with { Shell = shell };
    }

    private static string Front(Situation at, Look look, Chance chance)
    {
        if (Heavy(look) && !ThirdLong(at))
        {
            return chance.Roll(TwoBackOver) ? "bear" : chance.One("tight", "over");
        }

        if (!Base(at, look) || at.Hash == 'M')
        {
            return chance.Pick(("tight", 0.35), ("five to back", 0.25), ("edge to back", 0.2), ("over", 0.2));
        }

        var usual = at.Hash == 'L' ? "tight" : "five to back";
        return chance.Roll(HashFront) ? usual : chance.One("over", "edge to back", usual == "tight" ? "double five" : "edge away");
    }

    private static string Side(Look look, double toBack, Chance chance) => look.BackLetter is { } back
        ? (chance.Roll(toBack) ? back : Sides.Other(back)).ToString()
        : chance.One("L", "R");

    private static bool Base(Situation at, Look look) => !Heavy(look) && !ThirdLong(at);

    private static bool Heavy(Look look) => look.Personnel is "12" or "13" or "21" or "22";

    private static bool ThirdLong(Situation at) => at is { Down: 3, ToGo: >= 7 };

    private static bool Close(Situation at) => at is { ToGoal: <= 12 };
}
