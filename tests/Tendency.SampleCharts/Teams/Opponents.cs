using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>A game of the schedule: whom it was against, when, and the letters its clips start with.</summary>
public sealed record Fixture(Team Opponent, DateOnly Date, string Clips);

/// <summary>The invented towns and what their teams are like. No such teams exist.</summary>
public static class Opponents
{
    private static readonly DateOnly[] Saturdays =
        [new(2026, 10, 24), new(2026, 10, 31), new(2026, 11, 7), new(2026, 11, 14), new(2026, 11, 21)];

    /// <summary>Port Halden's last five games, each against another kind of defense; the fourth and fifth look like ours.</summary>
    public static IReadOnlyList<Fixture> OfPortHalden { get; } =
    [
        new(new("Calder Bay", new PlainOffense(0.75, 0.5), new FrontMix([("over", 0.6), ("under", 0.3), ("wide nine", 0.1)], "under", [("cover 3", 0.5), ("quarters", 0.3), ("cover 1", 0.2)], 0.14, 0.3)), Saturdays[0], "CB"),
        new(new("Ashmere Falls", new PlainOffense(0.5, 0.35), new FrontMix([("okie", 0.6), ("bear", 0.25), ("under", 0.15)], "bear", [("cover 1", 0.5), ("cover 3", 0.3), ("cover 2", 0.2)], 0.28, 0.45)), Saturdays[1], "AF"),
        new(new("Grenholm", new PlainOffense(0.85, 0.65), new FrontMix([("even 2i", 0.4), ("over", 0.35), ("wide nine", 0.25)], "even 2i", [("quarters", 0.5), ("palms", 0.25), ("cover 2", 0.25)], 0.12, 0.25)), Saturdays[2], "GR"),
        new(new("Velder Point", new PlainOffense(0.7, 0.55), new FrontMix([("tight", 0.5), ("five to back", 0.2), ("double five", 0.15), ("stack", 0.15)], "bear", [("three high quarters", 0.5), ("drop eight", 0.2), ("cover 3", 0.3)], 0.15, 0.35)), Saturdays[3], "VP"),
        new(new("Quarrick", new PlainOffense(0.65, 0.45), new FrontMix([("tight", 0.35), ("edge to back", 0.25), ("edge away", 0.15), ("five away", 0.15), ("over", 0.1)], "bear", [("quarters", 0.35), ("cover 3", 0.35), ("cover 1", 0.3)], 0.2, 0.4)), Saturdays[4], "QK"),
    ];

    /// <summary>Our own last five games.</summary>
    public static IReadOnlyList<Fixture> OfMarrowPoint { get; } =
    [
        new(new("Sallow Creek", new PlainOffense(0.8, 0.6), new FrontMix([("over", 0.7), ("bear", 0.3)], "bear", [("cover 3", 0.6), ("cover 1", 0.4)], 0.2, 0.35)), Saturdays[0], "SC"),
        new(new("Tarn Hollow", new PlainOffense(0.6, 0.4), new FrontMix([("okie", 0.7), ("double five", 0.3)], "bear", [("cover 2", 0.4), ("quarters", 0.4), ("cover 1", 0.2)], 0.22, 0.4)), Saturdays[1], "TH"),
        new(new("Brackwater", new PlainOffense(0.85, 0.7), new FrontMix([("even 2i", 0.5), ("over", 0.5)], "even 2i", [("quarters", 0.6), ("cover 3", 0.4)], 0.12, 0.3)), Saturdays[2], "BW"),
        new(new("Iverton", new PlainOffense(0.7, 0.5), new FrontMix([("under", 0.6), ("over", 0.4)], "under", [("cover 1", 0.4), ("cover 3", 0.6)], 0.18, 0.35)), Saturdays[3], "IV"),
        new(new("Osk Landing", new PlainOffense(0.75, 0.55), new FrontMix([("stack", 0.7), ("tight", 0.3)], "bear", [("three high quarters", 0.6), ("cover 3", 0.4)], 0.2, 0.4)), Saturdays[4], "OL"),
    ];
}
