using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Counts;

/// <summary>A share in which some games count more.</summary>
/// <param name="Tally">The plain count, always printed beside it.</param>
/// <param name="Share">The weighted share; 0 without plays.</param>
/// <param name="EffectivePlays">How many independent plays of equal weight it is worth; not rounded.</param>
/// <param name="Likely">Wilson's interval at the effective plays, clipped to 0–1.</param>
public sealed record WeightedShare(Tally Tally, double Share, double EffectivePlays, Interval Likely)
{
    /// <summary>Whether it is worth enough plays for a percentage, and there are so many.</summary>
    public bool IsEnough => Math.Min(Tally.Plays, Math.Round(EffectivePlays, MidpointRounding.AwayFromZero)) >= Estimate.FewestPlays;

    /// <summary>Whether its range leaves a rate out; never of too few plays.</summary>
    public bool Differs(double rate) => IsEnough && !Likely.Contains(rate);
}
