using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Fronts;

/// <summary>The rules that a staff's own front or rating file can break.</summary>
public static class FrontRules
{
    public static readonly Rule MissingColumn = new("F001", Severity.Error, "a column of the front or rating file is missing",
        "Add the column; until then the file is not used.", "fronts need front, line_to, line_off, nose, linebackers, overhangs and late; ratings need front, scheme and rating.");

    public static readonly Rule UnknownFront = new("F002", Severity.Warning, "a front is none we know",
        "Spell it as in the fronts file, or add it there; until then the row is not used.", "Names are compared without case, spaces, _ and -.");

    public static readonly Rule UnknownScheme = new("F003", Severity.Warning, "a run scheme is none we know",
        "Spell it as in the list of run schemes; until then the row is not used.", "Names are compared without case, spaces, _ and -.");

    public static readonly Rule UnreadableValue = new("F004", Severity.Warning, "a value of the front or rating file can not be read",
        "Correct the value; until then the row is not used.", "Ratings are numbers from -2 to 2; counts are whole numbers; words are those of the built-in file.");

    public static readonly Rule UnreadableRow = new("F005", Severity.Warning, "a row of the front or rating file can not be read",
        "Check its quotes and commas; until then the row is not used.", "A quote stands where none may, or is not closed.");

    public static readonly Rule UnknownPlanFront = new("F006", Severity.Warning, "a front of our plan is none we know",
        "Spell it as in the fronts file, or add it there; until then it is not compared.", "Names are compared without case, spaces, _ and -.");

    public static readonly Rule NoneLikeOurs = new("F007", Severity.Warning, "no game can be told to be like ours, so all games count alike",
        "Chart front, and name our fronts under [plan] as the charts spell them.", "A game weighs more the more of its charted fronts are in the plan.");

    /// <summary>All of them, in the order of their codes.</summary>
    public static IReadOnlyList<Rule> All { get; } =
        [MissingColumn, UnknownFront, UnknownScheme, UnreadableValue, UnreadableRow, UnknownPlanFront, NoneLikeOurs];
}
