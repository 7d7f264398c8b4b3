using Tendency.Breakdown.Counts;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Blocks;

/// <summary>A counted share as pages show it: how many of how many, its likely range, and the rate it is compared with.</summary>
/// <param name="Count">Plays of the kind asked for.</param>
/// <param name="Plays">Plays counted; at least <paramref name="Count"/>.</param>
/// <param name="Likely">Range of the share as fractions; null = none computed (always ignored under <see cref="FewestPlays"/> plays).</param>
/// <param name="Baseline">The rate it is tested against, a fraction; null = nothing to test against, so it prints as an upright tick.</param>
public sealed record Share(int Count, int Plays, Interval? Likely = null, double? Baseline = null)
{
    /// <summary>Under this many plays only the count is printed, never a percent or a range.</summary>
    public const int FewestPlays = Estimate.FewestPlays;

    public int Count { get; } = Count >= 0 && Count <= Plays ? Count : throw new ArgumentException($"A share needs 0 <= count <= plays, got {Count} of {Plays}.", nameof(Count));

    public bool None => Plays == 0;

    public bool TooFew => Plays is > 0 and < FewestPlays;

    /// <summary>The share as a fraction; null when there are no plays.</summary>
    public double? Value => Plays == 0 ? null : (double)Count / Plays;

    /// <summary>The range leaves out the baseline: solid dot, heavy bar, bold percent. False without either.</summary>
    public bool Differs => Plays >= FewestPlays && Likely is { } range && Baseline is { } rate && !range.Contains(rate);
}
