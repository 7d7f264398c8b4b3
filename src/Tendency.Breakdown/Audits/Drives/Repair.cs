namespace Tendency.Breakdown.Audits.Drives;

/// <summary>What kind of change a repair makes.</summary>
internal enum RepairKind
{
    Down,
    Distance,
    BallOn,
    Gain,
    Result,
    Touchdown,
    Penalty,
    MissingSnap,
    DuplicateSnap,
    SwappedSnaps,
}

/// <summary>One change of one place that would mend a drive.</summary>
/// <param name="At">Index of the snap in the drive; of the snap before the gap for a missing one.</param>
/// <param name="Column">Header name of the cell; <c>play</c> for changes of whole rows.</param>
/// <param name="Value">The value to write in the cell, as a chart writes it.</param>
/// <param name="Cost">How unlikely the slip is; orders repairs that explain as much.</param>
/// <param name="Mended">The drive with the change made.</param>
internal sealed record Repair(RepairKind Kind, int At, string Column, string Value, double Cost, Drive Mended)
{
    /// <summary>The drive before the change.</summary>
    public Drive Before { get; init; } = Mended;

    /// <summary>Number of cells that agree again.</summary>
    public int Explains { get; init; }

    public double Worth => Explains - Cost;
}
