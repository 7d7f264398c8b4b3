using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>Reads the surface of a charted run, seen from the run.</summary>
internal sealed class SurfaceReader(PlayLog log)
{
    private const string TwoTightSameSide = "two tight same side";

    private readonly CategoryColumn _attached = log.Category(ColumnNames.Attached);
    private readonly CategoryColumn _wing = log.Category(ColumnNames.Wing);
    private readonly CategoryColumn _family = log.Category(ColumnNames.FormationFamily);
    private readonly CategoryColumn _runSide = log.Category(ColumnNames.RunSide);
    private readonly CategoryColumn _strength = log.Category(ColumnNames.Strength);
    private readonly CategoryColumn _personnel = log.Category(ColumnNames.Personnel);
    private readonly CategoryColumn _backSet = log.Category(ColumnNames.BackSet);
    private readonly CategoryColumn _backAt = log.Category(ColumnNames.BackAt);
    private readonly CategoryColumn _runTo = log.Category(ColumnNames.RunTo);

    /// <returns>Null when the attached men or the run's side are not charted.</returns>
    public Surface? At(int row)
    {
        var side = _runSide[row];
        var attached = _attached[row];
        if (side is not ("L" or "R") || attached.Length == 0)
        {
            return null;
        }

        var other = side == "L" ? "R" : "L";
        var wing = _wing[row];
        var secondBack = _personnel[row] is { Length: 2 } people && people[0] is >= '2' and <= '9';
        var tightEnds = attached is "L" or "R" && wing != attached && _family[row] == TwoTightSameSide ? 2 : 1;
        return new Surface
        {
            AttachedPlay = Holds(attached, side) ? tightEnds : 0,
            AttachedBack = Holds(attached, other) ? tightEnds : 0,
            WingPlay = IsWing(side) ? 1 : 0,
            WingBack = IsWing(other) ? 1 : 0,
            OffBall = (Holds(wing, side) && !IsWing(side) ? 1 : 0) + (secondBack ? 1 : 0),
            IsEmpty = _backSet[row] == "empty" || _backAt[row] == "none",
            Strength = Strong(row, attached, wing) == other ? Flank.Back : Flank.Play,
            RunTo = RunToWords.Parse(_runTo[row]),
        };

        bool IsWing(string flank) => Holds(wing, flank) && Holds(attached, flank);
    }

    /// <summary>The tight end's side when he is alone, else the charted strength, else the wing's; empty when nothing tells.</summary>
    private string Strong(int row, string attached, string wing) =>
        attached is "L" or "R" ? attached
        : _strength[row].Length > 0 ? _strength[row]
        : wing is "L" or "R" ? wing : "";

    private static bool Holds(string sides, string side) => sides == side || sides == "both";
}
