namespace Tendency.Breakdown.Findings.Searching;

/// <summary>Drops from a list of significant situations those that only repeat others.</summary>
/// <remarks>
/// A habit shows in every situation that shares plays with it. Taken strongest first, a situation stays only if it says something the ones
/// kept do not say already: among plays on which those agree it must pass the same p-value that put it on the list. (Choosing anew
/// after each one kept, and dropping earlier ones explained by later ones, found no more planted habits; tests/Tendency.Simulations.)
/// </remarks>
internal static class Pruning
{
    /// <summary>A deeper situation must beat chance this clearly within each shallower one that is listed too.</summary>
    private const double AddsToParent = 0.05;

    /// <summary>A condition more must buy this much of the statistic: between near equals the simpler is the one to coach.</summary>
    private const double PriceOfACondition = 0.3;

    /// <summary>Most pairs weighed, strongest first; beyond, only repetitions are to be expected.</summary>
    private const int MostConsidered = 2000;

    public static List<Candidate> Keep(SearchGround ground, IReadOnlyList<Candidate> listed)
    {
        // Less of one outcome where more of another is listed is the same tell, told backwards.
        var more = listed.Where(c => c.Z > 0).Select(c => c.SituationKey).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. listed.Where(c => c.Z > 0 || ground.IsTwoWay || !more.Contains(c.SituationKey))
                .GroupBy(c => ground.IsNearlyTwoWay ? 0 : c.Outcome)
                .OrderBy(g => g.Key)
                .SelectMany(g => KeepAlike(ground, [.. g])),
        ];
    }

    private static List<Candidate> KeepAlike(SearchGround ground, Candidate[] listed)
    {
        var hits = ground.Outcomes.Select((_, outcome) => Array.ConvertAll(ground.Outcome, o => o == outcome)).ToArray();
        var cut = listed.Max(c => c.P);
        var strata = new Strata(ground.Game, ground.GameNames.Count);
        var kept = new List<Candidate>();
        foreach (var candidate in Strongest(listed).Take(MostConsidered))
        {
            var plays = candidate.PlaysIn(ground);
            var isHit = hits[candidate.Outcome];
            if ((kept.Count == 0 || P(strata.Of, strata.Count, isHit, plays) <= cut) && AddsToParents(ground, candidate, plays, listed, isHit))
            {
                kept.Add(candidate);
                strata.Split(plays);
            }
        }

        return kept;
    }

    private static IEnumerable<Candidate> Strongest(Candidate[] listed) => listed
        .OrderByDescending(c => Math.Abs(c.Z) - (PriceOfACondition * c.Dimensions.Length))
        .ThenBy(c => c.P)
        .ThenBy(c => c.Key, StringComparer.Ordinal);

    private static bool AddsToParents(SearchGround ground, Candidate candidate, int[] plays, Candidate[] listed, bool[] isHit)
    {
        foreach (var parent in listed.Where(parent => parent.Outcome == candidate.Outcome && candidate.IsWithin(parent)))
        {
            var within = new int[ground.Game.Length];
            for (var i = 0; i < within.Length; i++)
            {
                within[i] = parent.Holds(ground, i) ? ground.Game[i] : -1;
            }

            if (P(within, ground.GameNames.Count, isHit, plays) > AddsToParent)
            {
                return false;
            }
        }

        return true;
    }

    private static double P(int[] stratum, int strata, bool[] isHit, int[] plays)
    {
        var counter = new CellCounts(stratum, strata, isHit);
        counter.Count(plays);
        return counter.P();
    }
}
