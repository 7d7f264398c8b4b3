namespace Tendency.Inference.Clusters;

/// <summary>Hits among the trials of one group (a game): 0 &lt;= hits &lt;= trials; real numbers allowed for weighted counts.</summary>
public readonly record struct GroupCount
{
    /// <exception cref="ArgumentOutOfRangeException">The hits are not between 0 and the trials.</exception>
    public GroupCount(double hits, double trials)
    {
        if (!(hits >= 0 && hits <= trials))
        {
            throw new ArgumentOutOfRangeException(nameof(hits), hits, $"The hits lie between 0 and the {trials} trials.");
        }

        Hits = hits;
        Trials = trials;
    }

    public double Hits { get; }

    public double Trials { get; }
}
