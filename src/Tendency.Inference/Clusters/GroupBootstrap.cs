namespace Tendency.Inference.Clusters;

/// <summary>
/// Bootstrap of a share by whole groups: K groups drawn with replacement, statistic total hits / total trials. A picture, not an interval:
/// with K = 2 or 3 its 95 % limits are the lowest and highest group. Source: Davison and Hinkley 1997, ch. 3 [from memory].
/// </summary>
public static class GroupBootstrap
{
    /// <summary>Most groups whose resamples are enumerated (about 1.4 million at 12).</summary>
    public const int MostGroupsEnumerated = 12;

    /// <summary>The exact distribution over all K^K resamples. Groups without trials are left out.</summary>
    /// <exception cref="ArgumentException">No group with trials, or more than <see cref="MostGroupsEnumerated"/>.</exception>
    public static ResampleDistribution Exact(IEnumerable<GroupCount> groups)
    {
        var full = Full(groups);
        if (full.Length > MostGroupsEnumerated)
        {
            throw new ArgumentException($"At most {MostGroupsEnumerated} groups can be enumerated, got {full.Length}; simulate instead.", nameof(groups));
        }

        var points = new Dictionary<double, double>();
        var scale = Math.Pow(full.Length, -full.Length);
        Deal(0, full.Length, 0, 0, scale);
        return new ResampleDistribution(points);

        // How often each group is drawn: weight K! / (product of counts!), one binomial coefficient at a time.
        void Deal(int group, int left, double hits, double trials, double weight)
        {
            if (group == full.Length - 1)
            {
                var share = (hits + (left * full[group].Hits)) / (trials + (left * full[group].Trials));
                points[share] = points.GetValueOrDefault(share) + weight;
                return;
            }

            var ways = 1.0;
            for (var times = 0; times <= left; times++)
            {
                Deal(group + 1, left - times, hits + (times * full[group].Hits), trials + (times * full[group].Trials), weight * ways);
                ways = ways * (left - times) / (times + 1);
            }
        }
    }

    /// <summary>The distribution of <paramref name="draws"/> random resamples; the same seed gives the same one. Groups without trials are left out.</summary>
    /// <param name="groups">Hits and trials of each group.</param>
    /// <param name="draws">At least 1.</param>
    /// <param name="seed">Any number.</param>
    /// <exception cref="ArgumentException">No group with trials, or no draw.</exception>
    public static ResampleDistribution Simulate(IEnumerable<GroupCount> groups, int draws, int seed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        var full = Full(groups);
        var random = new Random(seed);
        var points = new Dictionary<double, double>();
        for (var b = 0; b < draws; b++)
        {
            double hits = 0, trials = 0;
            for (var i = 0; i < full.Length; i++)
            {
                var group = full[random.Next(full.Length)];
                hits += group.Hits;
                trials += group.Trials;
            }

            points[hits / trials] = points.GetValueOrDefault(hits / trials) + (1.0 / draws);
        }

        return new ResampleDistribution(points);
    }

    private static GroupCount[] Full(IEnumerable<GroupCount> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        GroupCount[] full = [.. groups.Where(group => group.Trials > 0)];
        return full.Length > 0 ? full : throw new ArgumentException("A bootstrap needs a group with trials.", nameof(groups));
    }
}
