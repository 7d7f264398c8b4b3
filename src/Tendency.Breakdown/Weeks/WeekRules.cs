using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Weeks;

/// <summary>The rules a week file can break: T05x. None stops the reading; what is valid is used.</summary>
internal static class WeekRules
{
    public static readonly Rule NotToml = new("T050", Severity.Error, "a line of the week file can not be read",
        "Write key = value; text stands in quotes, a list in [ ], a date as 2026-10-24.", "The file is read as TOML 1.0; the line is skipped and the rest is read.");

    public static readonly Rule UnknownKey = new("T051", Severity.Error, "the week file has a key that is none of ours",
        "Correct the key or delete the line; until then the line has no effect.", "Each table of the week file takes a closed list of keys.");

    public static readonly Rule WrongValue = new("T052", Severity.Error, "a value in the week file is not one the key takes",
        "Correct the value; until then the key counts as not set.", "Each key takes text, a number in a range, a date, a list or one of a few words.");

    public static readonly Rule OutsideFolder = new("T053", Severity.Error, "a file name leads out of the week's folder",
        "Put the file beside the week file and write its name only.", "Absolute paths, drive letters, .. and control characters are refused.");

    public static readonly Rule BoundariesOutOfOrder = new("T054", Severity.Error, "boundaries are out of order",
        "Let each boundary be greater than the one before.", "short < medium < long; goal line < tight red < red zone < fringe < open field < coming out. Otherwise all of that group keep their usual values.");

    public static readonly Rule MissingKey = new("T055", Severity.Error, "an entry of the week file lacks a key it needs",
        "Add the key.", "A [[charts]] entry needs file; a [[leave_out]] entry needs at least one condition; like_our_defense needs fronts under [plan].");

    public static readonly Rule NamedTwice = new("T056", Severity.Error, "the week file says the same thing twice",
        "Delete one of them; the first is used.", "A chart listed twice, or one header of the staff's mapped to two of our columns.");

    /// <summary>All of them, in the order of their codes.</summary>
    public static IReadOnlyList<Rule> All { get; } = [NotToml, UnknownKey, WrongValue, OutsideFolder, BoundariesOutOfOrder, MissingKey, NamedTwice];
}
