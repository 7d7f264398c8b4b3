using System.Diagnostics;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.Guessing;
using Tendency.Inference.Scores;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>How well calls are guessed over a season, every team, each game from the four before it.</summary>
internal static class GuessStudy
{
    /// <summary>The blend's parts, and the same learners without any idea of football for comparison.</summary>
    private static IEnumerable<(string Name, Func<int[], int[], double[][]> Forecast)> Learners(GuessGround ground)
    {
        var blank = ground with
        {
            IsCall = false,
            Seen = new Features(
                [.. ground.Seen.Rows.Select(row => row.Select((x, j) => j < UsualCalls.Parts ? 0 : x).ToArray())],
                [.. ground.Seen.Compact.Select(row => row[(UsualCalls.Parts + 1)..])],
                [.. ground.Seen.Restraint.Select(_ => 1.0)]),
        };
        yield return ("plain regression", (learn, ask) => BlendedModel.Regression(blank, learn, ask, 1));
        yield return ("plain forest", (learn, ask) => BlendedModel.Forest(blank, learn, ask, 200, 1));
        yield return ("usual calls alone", (learn, ask) => [.. ask.Select(i => ground.Seen.Rows[i][..UsualCalls.Parts].Sum()).Select(odds => 1 / (1 + Math.Exp(-odds))).Select(pass =>
            ground.Outcomes[0] == "pass" ? (double[])[pass, 1 - pass] : [1 - pass, pass])]);
        foreach (var precision in (double[])[8, 24, 64])
        {
            yield return ($"regression {precision}", (learn, ask) => BlendedModel.Regression(ground, learn, ask, precision));
        }

        yield return ("forest", (learn, ask) => BlendedModel.Forest(ground, learn, ask, 200, 1));
        yield return ("half forest, half 16", (learn, ask) => [.. BlendedModel.Regression(ground, learn, ask, 16).Zip(BlendedModel.Forest(ground, learn, ask, 200, 1), (a, b) => a.Zip(b, (x, y) => (x + y) / 2).ToArray())]);
    }

    // Seven games full of looks, three habits among them, calls otherwise as usual by down and distance.
    private static PlayLog WithHabits(int seed, int team)
    {
        var chance = new Random(unchecked((seed * 7919) + team));
        var looks = SimulatedSnaps.Looks(chance.Next(), 7, 60);
        var derived = SimulatedSnaps.WithCalls(looks, Enumerable.Repeat("run", looks.Rows));
        var habits = PlantedHabits.Choose(derived, 3, PlantedHabits.Columns, chance);
        var runs = PlantedHabits.RunChances(derived, 0.5, 0.25, habits, chance);
        var snaps = Snapshot.Of(derived);
        var shifted = runs.Select((p, row) => 1 / (1 + Math.Exp(-(Math.Log(p / (1 - p)) - (0.6 * UsualCalls.PassLogOdds(snaps[row])[0]) + 0.4))));
        return SimulatedSnaps.WithCalls(looks, PlantedHabits.Draw([.. shifted], chance));
    }

    /// <summary>Simulated teams: a season of public play-by-play each, or seven games with habits.</summary>
    public static void Run(bool habits, int teams, int seed, TextWriter output) => Run(
        Enumerable.Range(0, teams).Select(team => habits ? WithHabits(seed, team) : ProfessionalSeason.Team(unchecked((seed * 100) + (team / 8)), team, 16)), 4, output);

    /// <summary>The charts of a folder, each of one offense.</summary>
    /// <param name="forward">Games learned from; 0 = all others.</param>
    public static void Run(string folder, int forward, TextWriter output) => Run(
        Directory.GetFiles(folder, "*.csv").Order(StringComparer.Ordinal).Select(SeasonStudy.Read), forward, output);

    private static void Run(IEnumerable<PlayLog> charts, int forward, TextWriter output)
    {
        var watch = Stopwatch.StartNew();
        var sums = new Dictionary<string, (double Plays, double Right, double Loss, double Brier)>(StringComparer.Ordinal);
        var forecasts = new List<(double Run, bool WasRun)>();
        var (all, passes, gun, games) = (0, 0, 0, 0);
        foreach (var plays in charts)
        {
            all += plays.Rows;
            passes += Enumerable.Range(0, plays.Rows).Count(row => plays.Category(ColumnNames.Call)[row] == "pass");
            gun += Enumerable.Range(0, plays.Rows).Count(row => plays.Category(ColumnNames.BackSet)[row] == "gun");
            games += plays.Category(ColumnNames.Game).Levels.Count - 1;
            var ground = GuessGround.From(plays, ColumnNames.Call);
            foreach (var (name, forecast) in Learners(ground))
            {
                var (count, right, loss, brier) = (0.0, 0.0, 0.0, 0.0);
                for (var game = forward; game < ground.Games; game++)
                {
                    int[] learn = [.. Enumerable.Range(0, ground.Rows.Length).Where(i => forward == 0 ? ground.Game[i] != game : ground.Game[i] < game && ground.Game[i] >= game - forward)];
                    int[] ask = [.. Enumerable.Range(0, ground.Rows.Length).Where(i => ground.Game[i] == game)];
                    var p = forecast(learn, ask);
                    for (var i = 0; i < ask.Length; i++)
                    {
                        var y = ground.Outcome[ask[i]];
                        (count, right, loss, brier) = (count + 1, right + (p[i][y] > 0.5 ? 1 : 0), loss - Math.Log(p[i][y]), brier + ((1 - p[i][y]) * (1 - p[i][y])));
                    }
                }

                var sum = sums.GetValueOrDefault(name);
                sums[name] = (sum.Plays + count, sum.Right + right, sum.Loss + loss, sum.Brier + brier);
            }

            var report = Guess.Run(plays, ColumnNames.Call, GuessOptions.Default with { Forward = forward });
            var run = report.Outcomes.ToList().IndexOf("run");
            forecasts.AddRange(report.Plays.Select(play => (play.Forecast[run], play.Outcome == run)));
            foreach (var row in report.Rows)
            {
                var sum = sums.GetValueOrDefault(row.Model);
                sums[row.Model] = (sum.Plays + row.Plays, sum.Right + (row.Accuracy * row.Plays), sum.Loss + (row.LogLoss * row.Plays), sum.Brier + (row.Brier * row.Plays));
            }
        }

        output.WriteLine($"{all} plays, {(double)all / games:0} a game, {100.0 * passes / all:0}% passes, {100.0 * gun / all:0}% from the gun");
        foreach (var (model, sum) in sums)
        {
            output.WriteLine($"{model,-18} {sum.Plays,6:0} plays  accuracy {100 * sum.Right / sum.Plays:0.0}%  log loss {sum.Loss / sum.Plays:0.0000}  Brier {sum.Brier / sum.Plays:0.0000}");
        }

        foreach (var bin in CalibrationTable.Of([.. forecasts.Select(f => f.WasRun)], [.. forecasts.Select(f => f.Run)], 10, 0.95))
        {
            output.WriteLine($"run said {bin.From:0%}-{bin.To:0%}  {bin.Count,5} plays  mean {100 * bin.MeanForecast:0.0}%  was {100.0 * bin.Hits / bin.Count:0.0}%");
        }

        output.WriteLine($"{watch.Elapsed.TotalSeconds:0.0} s");
    }
}
