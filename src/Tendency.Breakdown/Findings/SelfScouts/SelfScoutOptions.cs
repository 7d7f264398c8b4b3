namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>How a self-scout looks.</summary>
public sealed record SelfScoutOptions
{
    public static SelfScoutOptions Default { get; } = new();

    /// <summary>Games the next opponent has on film.</summary>
    public int GamesSeen { get; init; } = 4;

    /// <summary>Accepted share of false alarms in each question's list.</summary>
    public double Fdr { get; init; } = 0.10;

    /// <summary>Least plays of a situation that is looked at.</summary>
    public int MinPlays { get; init; } = 8;

    /// <summary>Level of the ranges, in (0, 1).</summary>
    public double Level { get; init; } = 0.95;

    /// <summary>Draws for the chance that a change between games is ordinary variation.</summary>
    public int Draws { get; init; } = 999;

    public int Seed { get; init; } = 1;
}
