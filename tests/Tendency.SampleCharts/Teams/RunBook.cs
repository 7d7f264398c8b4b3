using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>Turns a scheme and a side into a charted run: point of attack and read by the trade's usual rules.</summary>
internal static class RunBook
{
    public static Call Run(string scheme, char side, Chance chance) =>
        new("run", RunBall: true, scheme, side, Gap(scheme, chance), Read(scheme));

    /// <summary>The side of a run that goes away from the back with the given probability; to the strength six in ten where he is on neither side.</summary>
    public static char SideOf(Look look, double away, Chance chance) => look.BackLetter is { } back
        ? chance.Roll(away) ? Sides.Other(back) : back
        : chance.Roll(0.6) ? look.Strength : Sides.Other(look.Strength);

    /// <summary>How often each scheme goes away from an offset back where a team has no habit of its own.</summary>
    public static double UsuallyAway(string scheme) => scheme switch
    {
        "inside zone" or "split zone" or "zone read" => 0.66,
        "counter gt" or "counter gh" => 0.75,
        "outside zone" => 0.58,
        "toss sweep" or "speed option" or "bash" => 0.2,
        _ => 0.5,
    };

    /// <summary>Schemes a shape can run: pulls across need an off-ball man, reads need the gun, jet needs its man in motion.</summary>
    public static bool Fits(string scheme, Look look) => scheme switch
    {
        "split zone" or "counter gh" or "wham" => look.Wing != "none",
        "zone read" or "bash" or "speed option" or "draw" => look.BackSet == "gun",
        "jet sweep" => look.Motion == "jet",
        "qb draw" or "qb power" => look.BackSet is "gun" or "empty",
        "toss sweep" => look.BackSet is "under" or "gun",
        "iso" or "sneak" => look.BackSet == "under",
        _ => look.BackSet != "empty",
    };

    private static string Gap(string scheme, Chance chance) => scheme switch
    {
        "inside zone" or "split zone" or "zone read" or "duo" => chance.Pick(("A", 0.55), ("B", 0.45)),
        "sneak" or "trap" or "wham" or "draw" or "qb draw" => "A",
        "iso" => "B",
        "mid zone" => chance.Pick(("B", 0.5), ("C", 0.5)),
        "power" or "counter gt" or "counter gh" or "qb power" or "bash" => chance.Pick(("B", 0.3), ("C", 0.7)),
        "outside zone" => chance.Pick(("C", 0.6), ("D", 0.4)),
        _ => "D",
    };

    private static string Read(string scheme) => scheme switch
    {
        "zone read" or "speed option" => "read",
        "bash" => "bash",
        _ => "none",
    };
}
