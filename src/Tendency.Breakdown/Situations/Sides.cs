using Tendency.Breakdown.Charts;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Where the back stands and which way the play, the slide and the pressure go from him. All sides are seen from behind the offense.</summary>
internal static class Sides
{
    /// <summary>Resolves <c>back_side</c> and adds <c>back_at</c>, <c>field_side</c>, <c>run_to</c>, <c>run_to_strength</c>, <c>slide_to</c>, <c>pressure_to</c>.</summary>
    public static PlayLog AddTo(PlayLog log)
    {
        var backSide = log.Category(BackSide);
        var strength = log.Category(Strength);
        var hash = log.Category(Hash);
        var backAt = Words(BackAt, log, row => At(backSide[row], strength[row]), ["L", "R", "middle", "none"]);
        return log.With(
            Words(BackSide, log, row => Named(backSide[row], strength[row]), ["strong", "weak", "middle", "none"]),
            backAt,
            Words(FieldSide, log, row => Wide(hash[row]), ["left", "right", "middle"]),
            FromBack(log, RunTo, RunSide, backAt),
            Words(RunToStrength, log, row => Relative(log.Category(RunSide)[row], strength[row], "to strength", "to weak"), ["to strength", "to weak"]),
            FromBack(log, SlideTo, SlideSide, backAt),
            FromBack(log, PressureTo, PressureSide, backAt));
    }

    private static CategoryColumn FromBack(PlayLog log, string name, string of, CategoryColumn backAt)
    {
        var side = log.Category(of);
        return Words(name, log, row => Relative(side[row], backAt[row], "to back", "away"), ["to back", "away"]);
    }

    private static string Relative(string side, string reference, string same, string other) =>
        side is "L" or "R" && reference is "L" or "R" ? (side == reference ? same : other) : "";

    private static string At(string back, string strength) => back switch
    {
        "L" or "R" or "middle" or "none" => back,
        "strong" => strength,
        "weak" => Opposite(strength),
        _ => "",
    };

    // L or R without a strength says where he stands, but not whether that is strong or weak.
    private static string Named(string back, string strength) => back switch
    {
        "L" or "R" => strength.Length == 0 ? "" : back == strength ? "strong" : "weak",
        _ => back,
    };

    // The ball on the left hash leaves the wide side to the right.
    private static string Wide(string hash) => hash switch { "L" => "right", "R" => "left", "M" => "middle", _ => "" };

    private static string Opposite(string side) => side switch { "L" => "R", "R" => "L", _ => "" };

    private static CategoryColumn Words(string name, PlayLog log, Func<int, string> word, IReadOnlyList<string> levels) =>
        DimensionColumn.Create(name, log.Rows, levels, word);
}
