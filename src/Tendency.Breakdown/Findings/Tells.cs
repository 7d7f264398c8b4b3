using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Findings.Searching;

namespace Tendency.Breakdown.Findings;

/// <summary>Looks for situations that give the call away.</summary>
public static class Tells
{
    /// <summary>
    /// Tests every situation of up to three conditions against every value of the outcome, calls exchanged only within a game; lists what
    /// passes Benjamini and Hochberg's rate over all pairs looked at; drops what repeats another; and tries each on the games left out.
    /// The test is exact and stratified by game (<see cref="Inference.Comparisons.StratifiedTest"/>); the rate is that of Benjamini and Hochberg 1995.
    /// </summary>
    /// <remarks>
    /// The q-values pay for every pair of situation and outcome that could have passed. In the usual search of more than thirty pairs they are
    /// weighted by what is known before the calls are looked at (<see cref="PairWeight"/>); where the staff names the dimensions, all pairs with
    /// enough plays are searched and weigh alike. What is
    /// dropped afterwards makes the list shorter, never longer: with nothing to find, 4 to 8 of 100 charts
    /// show any tell at a rate of 0.10 (tests/Tendency.Simulations, tells null; 500 charts and more of each of four kinds).
    /// </remarks>
    /// <param name="plays">The subject's counted plays, derived columns included.</param>
    /// <param name="outcomeColumn">Any column or dimension; a two-way one counts once, else each value is tried against the rest.</param>
    public static TellReport Search(PlayLog plays, string outcomeColumn, TellOptions options)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Depth, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(options.Depth, 3);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.MinPlays, 1);
        var ground = SearchGround.From(plays, outcomeColumn, options);
        var listed = PairSearch.Run(ground, options, out var searched);
        var kept = Pruning.Keep(ground, options.LeastShare == 0 ? listed : [.. listed.Where(c => ShareOf(ground, c) >= options.LeastShare)], options, searched);
        var heldOut = HeldOut.Games(ground, kept, options);
        var shuffled = Shuffles.Of(ground, kept, options);
        var threshold = listed.Count == 0 ? 0 : listed.Max(c => c.P);
        var tells = kept
            .Select((c, i) => TellWriter.Write(ground, plays, c, heldOut[i], threshold, options) with { ShuffledP = shuffled[i] })
            .OrderByDescending(t => t.ExpectedDifference * Math.Sign(t.Difference))
            .ThenBy(t => t.PValue)
            .ThenBy(t => t.Situation, StringComparer.Ordinal)
            .Select((tell, i) => tell with { Rank = i + 1 });
        return new TellReport(
            [.. tells],
            outcomeColumn,
            ground.Rows.Length,
            ground.GameNames.Count,
            searched,
            listed.Count,
            [.. ground.Dimensions.Select(d => d.Name)])
        { Fdr = options.Fdr };
    }

    private static double ShareOf(SearchGround ground, Candidate candidate)
    {
        var outcome = candidate.OutcomeIn(ground);
        var cell = candidate.PlaysIn(ground);
        return (double)cell.Count(play => ground.Outcome[play] == outcome) / cell.Length;
    }
}
