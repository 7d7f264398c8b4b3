using Tendency.Breakdown.Charts;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>Dimensions a staff reads us by that no single chart column holds.</summary>
public static class ScoutColumns
{
    /// <summary>Whether more than four came, or an extra man from one side.</summary>
    public const string Pressure = "pressure";

    /// <summary>Where the off-ball tight end or fullback stands, seen from the strength.</summary>
    public const string WingSide = "wing_side";

    /// <summary>The side of an offset back. In the middle he only says what set it is, and hides which one it is.</summary>
    public const string BackOffset = "back_offset";

    /// <summary>Third or fourth down and more than a medium distance.</summary>
    public const string LongYardage = "long_yardage";

    /// <summary>Inside the ten.</summary>
    public const string NearGoal = "near_goal";

    public const string Pressured = "pressure";
    public const string NotPressured = "no pressure";

    /// <summary>From this many on it is pressure, whoever comes.</summary>
    private const int FewestRushers = 5;

    public static PlayLog AddTo(PlayLog plays)
    {
        var rushers = plays.Number(Rushers);
        var side = plays.Category(PressureSide);
        var wing = plays.Category(Wing);
        var strength = plays.Category(Strength);
        var back = plays.Category(BackSide);
        var down = plays.Category(Down);
        var band = plays.Category(DistanceBand);
        var zone = plays.Category(FieldZone);
        return plays.With(
            Words(Pressure, plays, row => side[row] is "L" or "R" or "both" || rushers[row] >= FewestRushers ? Pressured
                : side[row] == "none" || rushers[row] is not null ? NotPressured : ""),
            Words(WingSide, plays, row => wing[row] switch
            {
                "L" or "R" when strength[row].Length > 0 => wing[row] == strength[row] ? "strong" : "weak",
                "both" or "none" => wing[row],
                _ => "",
            }),
            Words(BackOffset, plays, row => back[row] is "strong" or "weak" ? back[row] : ""),
            Words(LongYardage, plays, row => down[row].Length == 0 || band[row].Length == 0 ? ""
                : down[row] is "3" or "4" && band[row] is "long" or "extra long" ? "yes" : "no"),
            Words(NearGoal, plays, row => zone[row] switch { "" => "", "tight red" or "goal line" => "yes", _ => "no" }));
    }

    private static CategoryColumn Words(string name, PlayLog plays, Func<int, string> word) =>
        CategoryColumn.FromWords(name, Enumerable.Range(0, plays.Rows).Select(word));
}
