using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>Turns a kind of drop into a charted pass: concept, protection and the side the line slides to.</summary>
internal static class PassBook
{
    public static Call Pass(string drop, Look look, double slideAway, Chance chance) =>
        Pass(drop, Concept(drop, chance), look, slideAway, chance);

    public static Call Pass(string drop, string concept, Look look, double slideAway, Chance chance)
    {
        var protection = Protection(drop, look, chance);
        char? slide = protection is "half slide" or "full slide"
            ? look.BackLetter is { } back
                ? chance.Roll(slideAway) ? Sides.Other(back) : back
                : chance.One('L', 'R')
            : null;
        return new Call("pass", RunBall: false, PassConcept: concept, Drop: drop, Protection: protection, SlideSide: slide);
    }

    /// <summary>A run with a throw tagged on it. Handed off it is a run; thrown, the drop is quick or a screen.</summary>
    public static Call RunPassOption(Call run, bool thrown, Chance chance)
    {
        var tag = chance.Pick(("stick", 0.35), ("slants", 0.25), ("hitches", 0.15), ("bubble screen", 0.25));
        return run with { Kind = "rpo", RunBall = !thrown, Read = "rpo", PassConcept = tag, Drop = tag == "bubble screen" ? "screen" : "quick" };
    }

    private static string Concept(string drop, Chance chance) => drop switch
    {
        "quick" => chance.Pick(("stick", 0.2), ("slant flat", 0.2), ("slants", 0.15), ("hitches", 0.15), ("quick out", 0.12), ("snag", 0.1), ("spacing", 0.08)),
        "deep" => chance.Pick(("four verticals", 0.5), ("dagger", 0.3), ("post wheel", 0.2)),
        "play action" => chance.Pick(("deep cross", 0.35), ("deep post over", 0.25), ("sail", 0.25), ("post wheel", 0.15)),
        "boot" => chance.Pick(("boot flood", 0.7), ("boot cross", 0.3)),
        "sprint out" => chance.Pick(("smash", 0.5), ("sail", 0.5)),
        "screen" => chance.Pick(("slow screen", 0.4), ("tunnel", 0.3), ("bubble screen", 0.3)),
        _ => chance.Pick(("curl flat", 0.18), ("smash", 0.17), ("mesh", 0.13), ("levels", 0.13), ("shallow cross", 0.12), ("sail", 0.12), ("drive", 0.1), ("dagger", 0.05)),
    };

    private static string Protection(string drop, Look look, Chance chance) => look.BackSide == "none" ? "five man empty" : drop switch
    {
        "screen" => "screen pro",
        "boot" or "sprint out" => "sprint pro",
        "play action" => chance.Pick(("play action pro", 0.65), ("seven man", 0.35)),
        "deep" => chance.Pick(("half slide", 0.6), ("man pro", 0.25), ("max", 0.15)),
        _ => chance.Pick(("half slide", 0.72), ("man pro", 0.18), ("full slide", 0.1)),
    };
}
