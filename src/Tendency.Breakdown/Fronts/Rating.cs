namespace Tendency.Breakdown.Fronts;

/// <summary>An expert's opinion of a front against a run scheme, from the defense's view and with equal players.</summary>
/// <param name="Value">From 2 (built for it) over 0 (even) to -2 (built against); halves where two schemes are averaged.</param>
/// <param name="Confidence">high, medium or low: one point either way is within honest disagreement.</param>
/// <param name="Basis">expert, rule (taken over from a like scheme), corrected, or the staff's own file.</param>
public sealed record Rating(string Front, string Scheme, RunTo RunTo, double Value, string Reason, string Confidence, string Basis);
