using Tendency.Inference.Multiplicity;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>How often calls shuffled within their games show any tell as strong as one found.</summary>
internal static class Shuffles
{
    /// <summary>Above this many situations times plays, shuffling would keep a coach waiting.</summary>
    private const long MostWork = 20_000_000;

    /// <returns>For each tell, the share of shuffled charts; null where it was not worth the wait.</returns>
    public static double?[] Of(SearchGround ground, IReadOnlyList<Candidate> tells, TellOptions options)
    {
        var shares = new double?[tells.Count];
        if (tells.Count == 0 || options.Shuffles == 0)
        {
            return shares;
        }

        var cells = new List<int[]>();
        var keys = new Dictionary<string, int>(StringComparer.Ordinal);
        SituationWalk.Each(ground, options.Depth, options.MinPlays, (dimensions, values, plays) =>
        {
            // Only its key is of interest: outcome, plays and statistics stay empty.
            keys[new Candidate(dimensions.ToArray(), values.ToArray(), 0, 0, 0, 1).SituationKey] = cells.Count;
            cells.Add(plays.ToArray());
        });
        if ((long)cells.Count * ground.Rows.Length > MostWork)
        {
            return shares;
        }

        foreach (var outcome in tells.Select(t => t.Outcome).Distinct())
        {
            var result = MaxT.Run(Array.ConvertAll(ground.Outcome, o => o == outcome), ground.Game, cells, options.Shuffles, options.Seed);
            foreach (var (t, tell) in tells.Index().Where(pair => pair.Item.Outcome == outcome))
            {
                // Every outcome looked at is one more chance to be fooled.
                shares[t] = Math.Min(1, ground.TestedOutcomes * result.SingleStep[keys[tell.SituationKey]]);
            }
        }

        return shares;
    }
}
