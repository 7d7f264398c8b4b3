using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Findings.Guessing;
using Tendency.Inference.Intervals;
using Tendency.Inference.Scores;

namespace Tendency.Breakdown.Findings;

/// <summary>Guesses every call from what is seen before the snap, learning from other games only.</summary>
public static class Guess
{
    private const int CalibrationBins = 5;

    /// <summary>With fewer games the scores of each game say more than Student's range of their mean.</summary>
    private const int FewestGamesForARange = 4;

    /// <summary>With more games than this, more than two seasons, several are left out at a time, so that the work stays bounded.</summary>
    private const int MostFolds = 30;

    /// <param name="plays">The subject's counted plays, derived columns included; games in order of first appearance.</param>
    /// <param name="outcomeColumn">Any column or dimension; usually the call.</param>
    public static GuessReport Run(PlayLog plays, string outcomeColumn, GuessOptions options)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(options.Forward);
        var ground = GuessGround.From(plays, outcomeColumn);
        var whyNot = ground.Rows.Length == 0 ? $"{outcomeColumn} is not charted"
            : ground.Outcomes.Count < 2 ? $"{outcomeColumn} is always {ground.Outcomes[0]}"
            : ground.Games < 2 || ground.Games <= options.Forward ? TooFew(ground.Games, options.Forward)
            : "";
        if (whyNot.Length > 0)
        {
            return new GuessReport(outcomeColumn, ground.Outcomes, [], [], [], whyNot);
        }

        var asked = new List<int>();
        var models = new (string Name, List<double[]> Forecasts)[] { ("base rate", []), ("down and distance", []), ("all", []) };
        var folds = options.Forward == 0 ? Math.Min(ground.Games, MostFolds) : ground.Games;
        for (var fold = options.Forward; fold < folds; fold++)
        {
            int[] learn = [.. PlaysWhere(ground, g => options.Forward == 0 ? g % folds != fold : g < fold && g >= fold - options.Forward)];
            int[] ask = [.. PlaysWhere(ground, g => g % folds == fold)];
            asked.AddRange(ask);
            var rates = DownDistanceModel.BaseRates(ground, learn);
            models[0].Forecasts.AddRange(ask.Select(_ => rates));
            models[1].Forecasts.AddRange(DownDistanceModel.Forecast(ground, learn, ask));
            models[2].Forecasts.AddRange(BlendedModel.Forecast(ground, learn, ask, options));
        }

        var baseLoss = asked.Select((play, i) => -Math.Log(models[0].Forecasts[i][ground.Outcome[play]])).ToArray();
        return new GuessReport(
            outcomeColumn,
            ground.Outcomes,
            [.. models.Select(m => Score(ground, asked, m.Name, m.Forecasts, baseLoss, options.Level))],
            [.. asked.Select((play, i) => new GuessedPlay(
                ground.Rows[play], ground.Outcome[play], Called(ground, models[2].Forecasts[i]), models[2].Forecasts[i], baseLoss[i]))],
            Calibration(ground, asked, models[2].Forecasts, options.Level),
            "")
        {
            Undecided = ground.Undecided,
        };
    }

    private static string TooFew(int games, int forward) =>
        $"only {games} {(games == 1 ? "game" : "games")} charted; a game is guessed from {(forward == 0 ? "1 other" : $"the {(forward == 1 ? "game" : $"{forward} games")} before it")}";

    private static IEnumerable<int> PlaysWhere(GuessGround ground, Func<int, bool> game) =>
        Enumerable.Range(0, ground.Rows.Length).Where(play => game(ground.Game[play]));

    private static GuessRow Score(GuessGround ground, List<int> asked, string model, List<double[]> forecasts, double[] baseLoss, double level)
    {
        var losses = asked.Select((play, i) => -Math.Log(forecasts[i][ground.Outcome[play]])).ToArray();
        var loss = losses.Average();
        var brier = asked.Select((play, i) => ground.IsTwoWay
            ? Square(forecasts[i][0] - (ground.Outcome[play] == 0 ? 1 : 0))
            : forecasts[i].Select((p, j) => Square(p - (ground.Outcome[play] == j ? 1 : 0))).Sum()).Average();
        var right = asked.Where((play, i) => Called(ground, forecasts[i]) == ground.Outcome[play]).Count();
        var saved = asked.Select((play, i) => (Game: ground.Game[play], Bits: (baseLoss[i] - losses[i]) / Math.Log(2))).ToArray();
        double[] games = [.. saved.GroupBy(play => play.Game).Select(game => game.Average(play => play.Bits))];
        return new GuessRow(model, asked.Count, (double)right / asked.Count, loss, brier, (baseLoss.Average() - loss) / Math.Log(2))
        {
            Likely = OneProportion.Wilson(right, asked.Count, level).ClippedToShare(),
            BitsByGame = games.Length < FewestGamesForARange || games.All(bits => bits == 0) ? null : MeanOfGroups.StudentInterval(games, level),
        };
    }

    /// <summary>The likeliest outcome; a tie goes to the pass, without a pass to the outcome listed first.</summary>
    private static int Called(GuessGround ground, double[] forecast)
    {
        var best = 0;
        for (var j = 1; j < forecast.Length; j++)
        {
            if (forecast[j] > forecast[best] || (forecast[j] == forecast[best] && ground.Outcomes[j] == "pass"))
            {
                best = j;
            }
        }

        return best;
    }

    private static IReadOnlyList<CalibrationBin> Calibration(GuessGround ground, List<int> asked, List<double[]> forecasts, double level)
    {
        var about = forecasts.Select(f => ground.IsTwoWay ? 0 : Called(ground, f)).ToArray();
        return CalibrationTable.Of(
            [.. asked.Select((play, i) => ground.Outcome[play] == about[i])], [.. forecasts.Select((f, i) => f[about[i]])], CalibrationBins, level);
    }

    private static double Square(double value) => value * value;
}
