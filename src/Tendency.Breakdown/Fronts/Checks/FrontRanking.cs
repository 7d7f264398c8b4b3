using Tendency.Inference.Games;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>One front against an uncertain mix.</summary>
/// <param name="SuccessAllowed">The offense's expected success, exact mean over mix and cells.</param>
/// <param name="Low">Equal-tailed range of the joint draws.</param>
/// <param name="ProbabilityBest">Share of joint draws, the mix the same for all fronts, in which it allows least.</param>
/// <param name="Rank">1 = allows least.</param>
/// <param name="ExpectedLoss">What choosing it gives away on average, in success: the cost of being wrong.</param>
public sealed record FrontRank(string Front, double SuccessAllowed, double Low, double High, double ProbabilityBest, int Rank, double ExpectedLoss);

/// <summary>Fronts in order of the success they allow.</summary>
/// <param name="Ranks">Rising in success allowed; equal ones in the plan's order.</param>
public sealed record FrontRanking(IReadOnlyList<FrontRank> Ranks)
{
    /// <summary>From this chance on a front may be called best.</summary>
    public const double SureEnough = 0.6;

    public bool HasClearWinner => Ranks.Count > 0 && Ranks[0].ProbabilityBest >= SureEnough;

    /// <summary>The verdict a page may print.</summary>
    public string Verdict => Ranks.Count == 0 ? "no run with a rated scheme, so nothing to compare the fronts by" : HasClearWinner ? $"{FrontWord.Of(Ranks[0].Front)} is best" : "no clear winner";

    public static FrontRanking Of(FrontMatrix matrix, FrontOptions options, int draws) =>
        Of(
            [.. matrix.Fronts.Select(f => f.Name)],
            matrix.Rates,
            matrix.Mix.Posterior.Weights,
            options,
            draws);

    /// <summary>Tables to draw from. The ranking takes the larger value for the better: the defense's is the share of plays it stops.</summary>
    /// <param name="weights">By front, the Beta (successes, failures) of every part of the mix.</param>
    internal static RateTables Rates(IEnumerable<IEnumerable<(double Alpha, double Beta)>> weights) =>
        new([.. weights.Select(row => row.ToArray()).Where(row => row.Length > 0).Select(row => new UncertainOption([.. row.Select(w => w.Beta)], [.. row.Select(w => w.Alpha)]))]);

    /// <param name="mix">Dirichlet weights of the parts.</param>
    internal static FrontRanking Of(IReadOnlyList<string> fronts, RateTables rates, IReadOnlyList<double> mix, FrontOptions options, int draws)
    {
        if (mix.Count == 0)
        {
            return new FrontRanking([]);
        }

        var ranked = OptionRanking.Simulate(rates, mix, options.Level, draws, options.Seed);
        var order = Enumerable.Range(0, fronts.Count).OrderBy(f => Math.Round(1 - ranked[f].Mean, 12)).ToArray();
        return new FrontRanking([.. order.Select((f, i) => Rank(fronts[f], ranked[f], i + 1))]);
    }

    private static FrontRank Rank(string front, RankedOption ranked, int rank)
    {
        var range = new Interval(1 - ranked.Range.High, 1 - ranked.Range.Low).ClippedToShare();
        return new FrontRank(front, 1 - ranked.Mean, range.Low, range.High, ranked.BestChance, rank, ranked.ExpectedLoss);
    }
}
