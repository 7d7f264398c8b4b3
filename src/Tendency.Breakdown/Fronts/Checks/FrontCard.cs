using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Inference.Games;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>One line of the front card by situation.</summary>
/// <param name="RunShare">Their run share here, of runs and passes, with its range.</param>
/// <param name="TopRuns">Their commonest runs here, with counts.</param>
/// <param name="Front">The front that allows least over runs and passes in their present share.</param>
/// <param name="Sure">Chance that it is the best of the plan here.</param>
/// <param name="Verdict">"best", or "no clear winner" where the chance is under 0.6.</param>
/// <param name="Second">The next front; empty when the plan has one only.</param>
/// <param name="Cost">What the second choice gives away against the first, in success.</param>
/// <param name="OnRuns">The front that allows least over their runs here alone.</param>
/// <param name="OnRunsSure">Chance that it is the best against those runs.</param>
public sealed record FrontCardLine(
    string Situation, int Plays, int Runs, double RunShare, Interval RunShareRange, IReadOnlyList<(string Run, int Plays)> TopRuns,
    string Front, double SuccessAllowed, double Sure, string Verdict, string Second, double Cost,
    string OnRuns, double OnRunsSure)
{
    /// <summary>The run share when some games count more; the plain one otherwise. The front is chosen by it.</summary>
    public WeightedShare? Weighted { get; init; }
}

/// <summary>The coordinator's card: situation, their call odds, our front, how sure, second choice.</summary>
/// <remarks>
/// A pass is one more part of the mix: a front's success allowed on it is their pass success less rush step x rush rating, which may be a point off.
/// Situations lean on the whole mix by eight plays, run schemes and passes alike: the usual weight for thin cells.
/// </remarks>
public static class FrontCard
{
    private const int MostRuns = 3;

    public static IReadOnlyList<FrontCardLine> Of(PlayLog log, FrontCheck check, FrontOptions options) => Of(log, CardSituation.Of(log), check, options);

    /// <summary>The card of other situations; one without a run or pass has no line.</summary>
    public static IReadOnlyList<FrontCardLine> Of(PlayLog log, IReadOnlyList<CardSituation> situations, FrontCheck check, FrontOptions options)
    {
        var lines = new List<FrontCardLine>();
        if (check.Matrix.Fronts.Count == 0 || check.Matrix.Mix.Cells.Count == 0)
        {
            return lines;
        }

        var runs = check.Matrix.Rates;
        var all = runs.With([.. check.Passes.Select(pass => (pass.Weights.Beta, pass.Weights.Alpha))]);
        var ranges = new LikelyRanges(log, options.Level);
        foreach (var situation in situations)
        {
            if (Line(log, situation, check, (runs, all), ranges, options) is { } line)
            {
                lines.Add(line);
            }
        }

        return lines;
    }

    private static FrontCardLine? Line(PlayLog log, CardSituation situation, FrontCheck check, (RateTables Runs, RateTables All) rates, LikelyRanges ranges, FrontOptions options)
    {
        var calls = log.Category(ColumnNames.Call);
        var rows = Enumerable.Range(0, log.Rows).Where(r => situation.Holds(r) && calls[r] is "run" or "pass").ToArray();
        var runs = rows.Count(r => calls[r] == "run");
        var passes = rows.Length - runs;
        if (runs + passes == 0)
        {
            return null;
        }

        var here = check.Sample.Runs.Where(r => situation.Holds(r.Row)).ToArray();
        var mix = RunMix.Of(here, check.Sample.Runs, CardSituation.PriorPlays, check.Matrix.Mix, options.Weights);
        var ranking = Ranking(check, rates.All, mix, Leaning(log, log.Take(rows), options), options);
        var onRuns = FrontRanking.Of([.. check.Matrix.Fronts.Select(f => f.Name)], rates.Runs, mix.Posterior.Weights, options, options.CardDraws).Ranks[0];
        var first = ranking.Ranks[0];
        var second = ranking.Ranks.Skip(1).FirstOrDefault();
        var top = mix.Charted.Select(c => (Run: $"{c.Scheme.Name} {c.Side.Word()}", Plays: here.Count(r => r.Scheme == c.Scheme && r.RunTo == c.Side)));
        return new FrontCardLine(
            situation.Name,
            runs + passes,
            runs,
            (double)runs / (runs + passes),
            ranges.Of(log.Take(rows), ColumnNames.Call, "run"),
            [.. top.Where(t => t.Plays > 0).OrderByDescending(t => t.Plays).Take(MostRuns)],
            first.Front,
            first.SuccessAllowed,
            first.ProbabilityBest,
            ranking.HasClearWinner ? "best" : "no clear winner",
            second?.Front ?? "",
            second is null ? 0 : second.SuccessAllowed - first.SuccessAllowed,
            onRuns.Front,
            onRuns.ProbabilityBest)
        { Weighted = ranges.Weighted(log.Take(rows), ColumnNames.Call, "run", options.Weights) };
    }

    // As run schemes do: the share of runs among all runs and passes counts like eight plays more.
    private static (double Runs, double Passes) Leaning(PlayLog log, PlayLog here, FrontOptions options)
    {
        var usual = options.Weights.Share(log.Where(ColumnNames.Call, "run", "pass"), ColumnNames.Call, "run", options.Level).Share;
        var calls = options.Weights.Share(here, ColumnNames.Call, "run", options.Level);
        var (runs, passes) = options.Weights.IsOn
            ? (calls.Share * calls.EffectivePlays, (1 - calls.Share) * calls.EffectivePlays)
            : (calls.Tally.Count, calls.Tally.Plays - calls.Tally.Count);
        return (runs + (CardSituation.PriorPlays * usual), passes + (CardSituation.PriorPlays * (1 - usual)));
    }

    private static FrontRanking Ranking(FrontCheck check, RateTables rates, RunMix mix, (double Runs, double Passes) calls, FrontOptions options)
    {
        // The runs' part of the mix is scaled to the run calls, then passes stand beside it: one Dirichlet over all calls.
        var scale = (calls.Runs + 0.5) / mix.Posterior.Total;
        return FrontRanking.Of(
            [.. check.Matrix.Fronts.Select(f => f.Name)],
            rates,
            [.. mix.Posterior.Weights.Select(w => w * scale), calls.Passes + 0.5],
            options,
            options.CardDraws);
    }
}
