using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>Drops from a list of significant situations those that only repeat others.</summary>
/// <remarks>
/// A habit shows in every situation that shares plays with it, so a list holds few habits and their many shadows. Strongest first, a situation
/// is kept as long as its calls differ from what the game and the situations kept before lead one to expect
/// (<see cref="ConditionalScore"/>); the bar is the list's step-up rule over again, with tells counted instead of pairs. Measured with
/// tests/Tendency.Simulations: parting the plays by the situations kept, instead of adding up their effects, let up to twice as
/// many shadows stand; exchanging earlier ones for later ones, and dropping those that later ones explain, changed nothing.
/// </remarks>
internal static class Pruning
{
    /// <summary>A deeper situation must beat chance this clearly within each shallower one it is part of; more clearly where a circumstance deepens it.</summary>
    private const double AddsToParent = 0.10;
    private const double CircumstanceAdds = 0.03;

    /// <summary>A condition more must buy this much of the statistic: between near equals the simpler is the one to coach.</summary>
    private const double PriceOfACondition = 0.15;

    /// <summary>Pairs overlap, so looking at all of them costs less than the sum of their p-values: as many times as simulations without habits say.</summary>
    private const double Overlap = 1.5;

    /// <summary>
    /// With so many pairs, and such a share of all, listed, the chart is full of habits and nearly all that is listed differs: there the bar
    /// comes down to the list's own. Three planted habits list a tenth to a half of that.
    /// </summary>
    private const double ManyPairs = 200;
    private const double GreatShare = 0.15;

    /// <summary>Most pairs weighed, strongest first; beyond, only repetitions are to be expected.</summary>
    private const int MostConsidered = 2000;

    /// <summary>Most tells of one outcome: nobody coaches more.</summary>
    private const int MostKept = 30;

    public static List<Candidate> Keep(SearchGround ground, IReadOnlyList<Candidate> listed, TellOptions options, int searched)
    {
        // Less of one outcome where more of another is listed is the same tell, told backwards.
        var more = listed.Where(c => c.Z > 0).Select(c => c.SituationKey).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. listed.Where(c => c.Z > 0 || ground.IsTwoWay || !more.Contains(c.SituationKey))
                .GroupBy(c => ground.IsOneOfTwo(c.Outcome) ? -1 : c.Outcome)
                .OrderBy(g => g.Key)
                .SelectMany(g => KeepAlike(ground, [.. g], options, (double)searched / ground.TestedOutcomes)),
        ];
    }

    private static List<Candidate> KeepAlike(SearchGround ground, Candidate[] listed, TellOptions options, double situations)
    {
        var bar = LeastBar(listed, options, situations);
        var outcome = listed.Min(c => c.Outcome);
        var isHit = Array.ConvertAll(ground.Outcome, o => o == outcome);
        var expected = new ConditionalScore(isHit, ground.Game, ground.GameNames.Count);
        // The two halves of a split differ from each other alike; the smaller lies farther from the usual.
        var open = listed.OrderByDescending(c => Math.Round(Score(c, c.Z), 9))
            .ThenBy(c => c.Plays)
            .ThenBy(c => c.Key, StringComparer.Ordinal)
            .Take(MostConsidered)
            .Select(c => (Candidate: c, Plays: c.PlaysIn(ground)))
            .ToList();
        var kept = new List<Candidate>();
        while (open.Count > 0 && kept.Count < MostKept)
        {
            var standing = open.Select(c => (c.Candidate, c.Plays, Z: (c.Candidate.Outcome == outcome ? 1 : -1) * expected.Z(c.Plays)))
                .Where(c => kept.Count == 0 || (Math.Sign(c.Z) == Math.Sign(c.Candidate.Z) && P(c.Z) <= Math.Max(bar, Overlap * options.Fdr * (kept.Count + 1) * c.Candidate.Part)))
                .ToArray();
            if (standing.Length == 0)
            {
                break;
            }

            // Rounded, so that what differs by a last digit only is settled by the order above.
            var best = standing.MaxBy(c => kept.Count == 0 ? Math.Round(Score(c.Candidate, c.Candidate.Z), 9) : Math.Round(Score(c.Candidate, c.Z), 9));
            _ = open.RemoveAll(c => c.Candidate == best.Candidate);
            if (AddsToParents(ground, best.Candidate, best.Plays))
            {
                kept.Add(best.Candidate);
                expected.Add(best.Plays);
            }
        }

        return kept;
    }

    private static double LeastBar(Candidate[] listed, TellOptions options, double situations)
    {
        var share = Math.Min(1, listed.DistinctBy(c => c.SituationKey).Count() / Math.Max(ManyPairs, GreatShare * situations));
        return listed.Max(c => c.P) * (options.IsGenerous ? 1 : Math.Pow(share, 4));
    }

    private static double Score(Candidate candidate, double z) => Math.Abs(z) - (PriceOfACondition * candidate.Dimensions.Length);

    private static double P(double z) => 2 * NormalDistribution.Upper(Math.Abs(z));

    private static bool AddsToParents(SearchGround ground, Candidate candidate, int[] plays)
    {
        var isHit = Array.ConvertAll(ground.Outcome, o => o == candidate.Outcome);
        foreach (var parent in candidate.Parents())
        {
            var within = new int[ground.Game.Length];
            for (var i = 0; i < within.Length; i++)
            {
                within[i] = parent.Holds(ground, i) ? ground.Game[i] : -1;
            }

            var counter = new CellCounts(within, ground.GameNames.Count, isHit);
            counter.Count(plays);
            if (counter.P() > (candidate.Dimensions.Except(parent.Dimensions).Any(d => PairWeight.IsCircumstance(ground.Dimensions[d].Name)) ? CircumstanceAdds : AddsToParent))
            {
                return false;
            }
        }

        return true;
    }
}
