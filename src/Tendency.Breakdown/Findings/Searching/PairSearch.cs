using Tendency.Inference.Multiplicity;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>Tests every situation against every outcome and pays for having looked at them all.</summary>
internal static class PairSearch
{
    // A sum of hypergeometrics is log-concave: within one standard deviation of its mean no p-value comes near 0.25.
    private const double NothingBelow = 1;
    private const double RateTheScreenIsSafeFor = 0.25;

    /// <summary>What is known of a pair before its calls are looked at.</summary>
    private readonly record struct Looked(double LeastP, double Variance, double Prior);

    /// <param name="searched">Pairs looked at.</param>
    /// <param name="leftOut">Game whose plays are left out; -1 for none.</param>
    /// <returns>The pairs whose q-value is at most the accepted rate of false alarms.</returns>
    public static List<Candidate> Run(SearchGround ground, TellOptions options, out int searched, Func<int, bool>? leftOut = null)
    {
        var stratum = leftOut is null ? ground.Game : [.. ground.Game.Select(game => leftOut(game) ? -1 : game)];
        var counters = Enumerable.Range(0, ground.TestedOutcomes)
            .Select(j => new CellCounts(stratum, ground.GameNames.Count, [.. ground.Outcome.Select(o => o == j)]))
            .ToArray();
        var least = options.Fdr <= RateTheScreenIsSafeFor ? NothingBelow : 0;
        var found = new List<(Candidate Candidate, Looked Looked)>();
        var looked = new List<Looked>();
        SituationWalk.Each(ground, options.Depth, options.MinPlays, (dimensions, values, plays) =>
        {
            var prior = PairWeight.Prior(dimensions, ground, options);
            for (var j = 0; j < counters.Length; j++)
            {
                var counter = counters[j];
                counter.Count(plays);
                if (counter.Plays < options.MinPlays || counter.Strata < 2)
                {
                    return;
                }

                var z = counter.Z(out var variance);
                var pair = new Looked(counter.LeastP(), variance, prior);
                looked.Add(pair);
                if (Math.Abs(z) < least)
                {
                    continue;
                }

                var p = counter.P();
                if (p <= options.Fdr)
                {
                    found.Add((new Candidate(dimensions.ToArray(), values.ToArray(), j, counter.Plays, z, p), pair));
                }
            }
        });
        var pairs = looked.Count;
        var limit = options.SearchesAll ? 1 : WorthSearching([.. looked.Select(pair => pair.LeastP)], options.Fdr, out pairs);
        searched = pairs;
        var all = looked.Where(pair => pair.LeastP <= limit).Sum(Weight);
        return Listed([.. found.Where(f => f.Looked.LeastP <= limit).Select(f => f.Candidate with { Part = Weight(f.Looked) / all })], options.Fdr);

        double Weight(Looked pair) => PairWeight.Of(pair.Variance, pair.Prior, pairs, options);
    }

    /// <summary>
    /// A situation too small to pass, whatever is called in it, is not searched: it could only cost the others their certainty. The limit is
    /// the rate over the smallest K such that no more than K pairs can reach it (Tarone 1990, doi:10.2307/2531456; with Benjamini and
    /// Hochberg: Gilbert 2005, doi:10.1111/j.1467-9876.2005.00475.x).
    /// </summary>
    private static double WorthSearching(double[] floors, double rate, out int searched)
    {
        var sorted = floors.Order().ToArray();
        for (var k = 1; k <= sorted.Length; k++)
        {
            // How many can reach rate / k: at most k exactly when the next one, the (k + 1)th smallest, can not.
            if (k == sorted.Length || sorted[k] > rate / k)
            {
                searched = Array.FindLastIndex(sorted, floor => floor <= rate / k) + 1;
                return rate / k;
            }
        }

        searched = 0;
        return 0;
    }

    // Benjamini and Hochberg's step-up on p / (m part), where m part is 1 on average; with equal parts it is their rule itself. A p-value
    // not handed in is above the rate and counts as 1, which is valid; m cancels, so those handed in are all it takes.
    private static List<Candidate> Listed(List<Candidate> found, double rate)
    {
        var q = AdjustedP.BenjaminiHochberg([.. found.Select(c => Math.Min(1, c.P / (c.Part * found.Count)))]);
        return [.. found.Select((c, i) => c with { Q = Math.Max(c.P, q[i]) }).Where(c => c.Q <= rate)];
    }
}
