using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>What one charted run says about scheme, side, front faced and surface.</summary>
/// <param name="Row">Row in the play log.</param>
/// <param name="RunTo">Null where the back stands in the middle or nowhere, or a side is not charted.</param>
/// <param name="Front">Front faced as charted; empty when not charted.</param>
/// <param name="Success">Null when the play has no result to judge.</param>
/// <param name="Surface">Null when the surface or the run's side is not charted.</param>
/// <param name="IsRush">False for an option to pass that was thrown: its scheme counts in the mix, its result does not.</param>
public sealed record ChartedRun(
    int Row, RunScheme Scheme, RunTo? RunTo, string Front, bool? Success, int? Gain, Surface? Surface, Tag Tag, bool IsRush)
{
    /// <summary>The game's label; empty where it does not matter, then the run counts in full.</summary>
    public string Game { get; init; } = "";
}
