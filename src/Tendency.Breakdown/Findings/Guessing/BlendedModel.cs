using Tendency.Inference.Forecasts;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>
/// Everything seen before the snap: a logistic regression that starts from the usual calls, blended with a forest of trees. How hard the
/// regression is held back and how much the forest counts is weighed inside the games learned from.
/// </summary>
internal static class BlendedModel
{
    private const int MostFolds = 5;

    private static readonly double[] s_precisions = [8, 24, 64];
    // A quarter to the forest, the rest to the regressions alike.
    private static readonly double[] s_fixedShares = [0.25, 0.25, 0.25, 0.25];
    private static readonly double[] s_forestShares = [0, 0.25, 0.5];

    /// <returns>Probability of each outcome for each play asked about.</returns>
    public static double[][] Forecast(GuessGround ground, int[] learn, int[] ask, GuessOptions options)
    {
        var shares = options.Weighs ? Weigh(ground, learn, options) : s_fixedShares;
        var parts = s_precisions.Select(precision => Regression(ground, learn, ask, precision)).Append(Forest(ground, learn, ask, options.Trees, options.Seed)).ToArray();
        return Mix(parts, shares);
    }

    /// <summary>
    /// How much each regression and, last, the forest counts: every combination of a regression and a share of forest weighs in by its
    /// likelihood on the games left out, so that a lucky one does not take all (pseudo-Bayesian averaging; Geisser and Eddy 1979 [from memory]).
    /// </summary>
    private static double[] Weigh(GuessGround ground, int[] learn, GuessOptions options)
    {
        var loss = new double[s_precisions.Length, s_forestShares.Length];
        var games = learn.Select(play => ground.Game[play]).Distinct().Order().ToArray();
        var folds = games.Length < 2 ? 0 : Math.Min(MostFolds, games.Length);
        for (var f = 0; f < folds; f++)
        {
            var outside = games.Where((_, i) => i % folds == f).ToHashSet();
            int[] known = [.. learn.Where(play => !outside.Contains(ground.Game[play]))];
            int[] tried = [.. learn.Where(play => outside.Contains(ground.Game[play]))];
            var forest = Forest(ground, known, tried, Math.Max(1, options.Trees / 4), options.Seed);
            for (var a = 0; a < s_precisions.Length; a++)
            {
                var regression = Regression(ground, known, tried, s_precisions[a]);
                for (var b = 0; b < s_forestShares.Length; b++)
                {
                    loss[a, b] += Loss(ground, tried, Mix([regression, forest], [1 - s_forestShares[b], s_forestShares[b]]));
                }
            }
        }

        var least = loss.Cast<double>().Min();
        var shares = new double[s_precisions.Length + 1];
        for (var a = 0; a < s_precisions.Length; a++)
        {
            for (var b = 0; b < s_forestShares.Length; b++)
            {
                var weight = Math.Exp(least - loss[a, b]);
                shares[a] += weight * (1 - s_forestShares[b]);
                shares[^1] += weight * s_forestShares[b];
            }
        }

        var total = shares.Sum();
        return [.. shares.Select(share => share / total)];
    }

    internal static double[][] Regression(GuessGround ground, int[] learn, int[] ask, double precision)
    {
        var rows = Array.ConvertAll(learn, play => ground.Seen.Rows[play]);
        return ground.EachOutcome(learn, (outcome, hit) =>
        {
            var prior = RegressionPrior.For(ground, outcome, hit, precision);
            var model = PenalizedLogistic.Fit(rows, hit, prior.Expected, prior.Precision);
            return Array.ConvertAll(ask, play => model.Probability(ground.Seen.Rows[play]));
        });
    }

    internal static double[][] Forest(GuessGround ground, int[] learn, int[] ask, int trees, int seed)
    {
        var rows = Array.ConvertAll(learn, play => ground.Seen.Compact[play]);
        return ground.EachOutcome(learn, (_, hit) =>
        {
            var model = BaggedTrees.Fit(rows, hit, trees, seed);
            return Array.ConvertAll(ask, play => model.Probability(ground.Seen.Compact[play]));
        });
    }

    private static double[][] Mix(double[][][] forecasts, double[] shares) => [.. Enumerable.Range(0, forecasts[0].Length).Select(i =>
        Enumerable.Range(0, forecasts[0][i].Length).Select(outcome => forecasts.Zip(shares, (f, share) => share * f[i][outcome]).Sum()).ToArray())];

    private static double Loss(GuessGround ground, int[] plays, double[][] forecast) =>
        plays.Select((play, i) => -Math.Log(forecast[i][ground.Outcome[play]])).Sum();
}
