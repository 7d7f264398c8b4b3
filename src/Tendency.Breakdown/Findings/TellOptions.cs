namespace Tendency.Breakdown.Findings;

/// <summary>Where and how strictly to look for tells.</summary>
public sealed record TellOptions
{
    public static TellOptions Default { get; } = new();

    /// <summary>Most conditions a situation may have, 1 to 3.</summary>
    public int Depth { get; init; } = 2;

    /// <summary>Accepted share of false alarms in the list, in (0, 1): Benjamini and Hochberg's rate.</summary>
    public double Fdr { get; init; } = 0.10;

    /// <summary>Least plays of a situation that is looked at.</summary>
    public int MinPlays { get; init; } = 8;

    /// <summary>Columns and derived dimensions to combine; empty = <see cref="TellDimensions.Default"/>, as far as charted.</summary>
    public IReadOnlyList<string> Dimensions { get; init; } = [];

    /// <summary>Searches every pair with enough plays, also those that could hardly pass.</summary>
    public bool SearchesAll { get; init; }

    /// <summary>Whether each tell is tried on the games left out.</summary>
    public bool TriesGames { get; init; } = true;

    /// <summary>Least share of the outcome in a situation that is listed, in [0, 1); 0 lists what is rarer than usual too.</summary>
    public double LeastShare { get; init; }

    /// <summary>
    /// Also lists what the tells before it explain in part: more of what is there, more that stands in for something else. For looking at
    /// ourselves as a staff does that need not be sure.
    /// </summary>
    public bool IsGenerous { get; init; }

    /// <summary>Seed of the shuffles behind <see cref="Tell.ShuffledP"/>; nothing else draws at random.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How many shuffled charts each tell is held against; 0 = none.</summary>
    public int Shuffles { get; init; } = 999;

    /// <summary>Level of the printed ranges, in (0, 1).</summary>
    public double Level { get; init; } = 0.95;
}
