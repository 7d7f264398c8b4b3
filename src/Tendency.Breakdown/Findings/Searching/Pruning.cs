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

    public static List<Candidate> Keep(SearchGround ground, IReadOnlyList<Candidate> listed) =>
        [.. listed.GroupBy(c => c.Outcome).OrderBy(g => g.Key).SelectMany(g => KeepOfOutcome(ground, [.. g]))];

    private static List<Candidate> KeepOfOutcome(SearchGround ground, Candidate[] listed)
    {
        var isHit = ground.Outcome.Select(o => o == listed[0].Outcome).ToArray();
        var cut = listed.Max(c => c.P);
        var strata = new Strata(ground.Game, ground.GameNames.Count);
        var kept = new List<Candidate>();
        foreach (var candidate in Strongest(listed).Take(MostConsidered))
        {
            var plays = candidate.PlaysIn(ground);
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
        foreach (var parent in listed.Where(candidate.IsWithin))
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
