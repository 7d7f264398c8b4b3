namespace Tendency.Breakdown.Findings;

/// <summary>How guesses are tried.</summary>
public sealed record GuessOptions
{
    public static GuessOptions Default { get; } = new();

    /// <summary>Each game is guessed from this many games before it; the first ones are not scored. 0 = from all other games.</summary>
    public int Forward { get; init; }

    /// <summary>The same seed grows the same trees.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Trees of the forest; a quarter as many weigh it. A booklet prints whole percents and needs fewer.</summary>
    public int Trees { get; init; } = 300;

    /// <summary>Whether restraints and forest are weighed by trying them on games left out once more; else they count by fixed shares, in a fifth of the time.</summary>
    public bool Weighs { get; init; } = true;

    /// <summary>Level of the ranges in the calibration table, in (0, 1).</summary>
    public double Level { get; init; } = 0.95;
}
