using Tendency.Inference.Functions;

namespace Tendency.Inference.Clusters;

/// <summary>Hits among the trials of one group (a game): 0 &lt;= hits &lt;= trials; real numbers allowed for weighted counts.</summary>
public readonly record struct GroupCount
{
    /// <exception cref="ArgumentOutOfRangeException">The trials are neither 0 nor from 1e-15 to 1e15, or the hits not between 0 and the trials.</exception>
    public GroupCount(double hits, double trials)
    {
        Domain.Count(trials);
        if (trials > 0)
        {
            Domain.Shape(trials);
        }

        if (!(hits >= 0 && hits <= trials))
        {
            throw new ArgumentOutOfRangeException(nameof(hits), hits, $"The hits lie between 0 and the {trials} trials.");
        }

        Hits = hits;
        Trials = trials;
    }

    /// <summary>From 0 to Trials.</summary>
    public double Hits { get; }

    /// <summary>0 or more.</summary>
    public double Trials { get; }
}
