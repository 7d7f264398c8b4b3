using Tendency.Inference.Forecasts;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>
/// Everything seen before the snap: a logistic regression that starts from the usual calls, blended with a forest of trees. How hard the
/// regression is held back and how much the forest counts is chosen inside the games learned from.
/// </summary>
internal static class BlendedModel
{
    private const int Trees = 300;
    private const int TreesToChoose = 80;
    private const int MostFolds = 5;

    private static readonly double[] s_precisions = [8, 24, 64];
    private static readonly double[] s_forestShares = [0, 0.25, 0.5];

    /// <summary>Used when the games learned from are too few to choose on.</summary>
    private static readonly Settings s_usual = new(24, 0.25);

    /// <returns>Probability of each outcome for each play asked about.</returns>
    public static double[][] Forecast(GuessGround ground, int[] learn, int[] ask, int seed)
    {
        var settings = Choose(ground, learn, seed);
        var regression = Regression(ground, learn, ask, settings.Precision);
        return settings.ForestShare == 0 ? regression : Blend(regression, Forest(ground, learn, ask, Trees, seed), settings.ForestShare);
    }

    private static Settings Choose(GuessGround ground, int[] learn, int seed)
    {
        var games = learn.Select(play => ground.Game[play]).Distinct().Order().ToArray();
        if (games.Length < 2)
        {
            return s_usual;
        }

        var loss = new double[s_precisions.Length, s_forestShares.Length];
        var folds = Math.Min(MostFolds, games.Length);
        for (var f = 0; f < folds; f++)
        {
            var outside = games.Where((_, i) => i % folds == f).ToHashSet();
            int[] known = [.. learn.Where(play => !outside.Contains(ground.Game[play]))];
            int[] tried = [.. learn.Where(play => outside.Contains(ground.Game[play]))];
            var forest = Forest(ground, known, tried, TreesToChoose, seed);
            for (var a = 0; a < s_precisions.Length; a++)
            {
                var regression = Regression(ground, known, tried, s_precisions[a]);
                for (var b = 0; b < s_forestShares.Length; b++)
                {
                    loss[a, b] += Loss(ground, tried, Blend(regression, forest, s_forestShares[b]));
                }
            }
        }

        var best = (Loss: double.PositiveInfinity, Settings: s_usual);
        for (var a = 0; a < s_precisions.Length; a++)
        {
            for (var b = 0; b < s_forestShares.Length; b++)
            {
                best = loss[a, b] < best.Loss ? (loss[a, b], new Settings(s_precisions[a], s_forestShares[b])) : best;
            }
        }

        return best.Settings;
    }

    internal static double[][] Regression(GuessGround ground, int[] learn, int[] ask, double precision)
    {
        var rows = Array.ConvertAll(learn, play => ground.Seen.Rows[play]);
        return EachOutcome(ground, learn, (outcome, hit) =>
        {
            var prior = RegressionPrior.For(ground, outcome, hit, precision);
            var model = PenalizedLogistic.Fit(rows, hit, prior.Expected, prior.Precision);
            return Array.ConvertAll(ask, play => model.Probability(ground.Seen.Rows[play]));
        });
    }

    internal static double[][] Forest(GuessGround ground, int[] learn, int[] ask, int trees, int seed)
    {
        var rows = Array.ConvertAll(learn, play => ground.Seen.Compact[play]);
        return EachOutcome(ground, learn, (_, hit) =>
        {
            var model = BaggedTrees.Fit(rows, hit, trees, seed);
            return Array.ConvertAll(ask, play => model.Probability(ground.Seen.Compact[play]));
        });
    }

    /// <summary>Two outcomes need one model; of more, each gets its own against the rest, and the probabilities are scaled to one.</summary>
    private static double[][] EachOutcome(GuessGround ground, int[] learn, Func<int, bool[], double[]> forecast)
    {
        var models = Enumerable.Range(0, ground.IsTwoWay ? 1 : ground.Outcomes.Count)
            .Select(outcome => forecast(outcome, Array.ConvertAll(learn, play => ground.Outcome[play] == outcome)))
            .ToArray();
        return [.. Enumerable.Range(0, models[0].Length).Select(i =>
        {
            if (ground.IsTwoWay)
            {
                return [models[0][i], 1 - models[0][i]];
            }

            var sum = models.Sum(m => m[i]);
            return models.Select(m => m[i] / sum).ToArray();
        })];
    }

    private static double[][] Blend(double[][] a, double[][] b, double shareOfB) =>
        [.. a.Zip(b, (x, y) => x.Zip(y, (p, q) => ((1 - shareOfB) * p) + (shareOfB * q)).ToArray())];

    private static double Loss(GuessGround ground, int[] plays, double[][] forecast) =>
        plays.Select((play, i) => -Math.Log(forecast[i][ground.Outcome[play]])).Sum();

    private readonly record struct Settings(double Precision, double ForestShare);
}
