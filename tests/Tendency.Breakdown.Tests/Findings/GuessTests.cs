using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Findings;

namespace Tendency.Breakdown.Tests.Findings;

public sealed class GuessTests
{
    private static readonly PlayLog s_readable = ChartOfCalls.Of(
        5, ("strong", "none", _ => 22, _ => 3), ("weak", "jet", _ => 4, _ => 21));

    [Fact]
    public void Run_BackGivesItAway_BeatsBaseRateAndDownAndDistance()
    {
        var report = Guess.Run(s_readable, "call", GuessOptions.Default);

        Assert.Equal(["base rate", "down and distance", "all"], report.Rows.Select(r => r.Model));
        Assert.All(report.Rows, row => Assert.Equal(250, row.Plays));
        Assert.Equal(43.0 / 50, report.Rows[2].Accuracy, 6);
        Assert.True(report.Rows[2].LogLoss < report.Rows[0].LogLoss - 0.15);
    }

    [Fact]
    public void Run_BaseRate_IsTheTrainingGamesShare()
    {
        // Every other game has 104 runs in 200 plays.
        var run = 104.0 / 200;

        var row = Guess.Run(s_readable, "call", GuessOptions.Default).Rows[0];

        Assert.Equal(-((26 * Math.Log(run)) + (24 * Math.Log(1 - run))) / 50, row.LogLoss, 12);
        Assert.Equal(((26 * (1 - run) * (1 - run)) + (24 * run * run)) / 50, row.Brier, 12);
        Assert.Equal(0, row.BitsSaved, 12);
    }

    [Fact]
    public void Run_AFewUndecidedOptions_AreNoThirdOutcome()
    {
        var calls = s_readable.Category("call");
        var undecided = s_readable.With(CategoryColumn.FromWords("call", Enumerable.Range(0, s_readable.Rows).Select(row => row % 100 == 7 ? "rpo" : calls[row])));

        var report = Guess.Run(undecided, "call", GuessOptions.Default);

        Assert.Equal(3, report.Undecided);
        Assert.Equal(["run", "pass"], report.Outcomes.OrderDescending());
        Assert.All(report.Rows, row => Assert.Equal(247, row.Plays));
        Assert.All(report.Plays, play => Assert.NotEqual("rpo", undecided.Category("call")[play.Row]));

        // Mean of (p - y)² for two outcomes, half of the sum over both.
        Assert.InRange(report.Rows[0].Brier, 0.24, 0.26);
    }

    [Fact]
    public void Run_EvenBaseRate_TieCountsAsPass()
    {
        // Learned from ten runs and ten passes: 0.5 each.
        var even = ChartOfCalls.Of(2, ("strong", "none", g => g == 0 ? 10 : 4, g => g == 0 ? 10 : 16));

        var row = Guess.Run(even, "call", GuessOptions.Default with { Forward = 1 }).Rows[0];

        Assert.Equal(16.0 / 20, row.Accuracy, 12);
    }

    [Fact]
    public void Run_Forward_LearnsFromNoLaterGame()
    {
        var same = Guess.Run(s_readable, "call", GuessOptions.Default with { Forward = 2 });
        var otherEnd = ChartOfCalls.Of(
            5, ("strong", "none", g => g == 4 ? 3 : 22, g => g == 4 ? 22 : 3), ("weak", "jet", g => g == 4 ? 21 : 4, g => g == 4 ? 4 : 21));

        var changed = Guess.Run(otherEnd, "call", GuessOptions.Default with { Forward = 2 });

        Assert.Equal(150, same.Plays.Count);
        Assert.Equal(same.Plays.Take(100).Select(p => p.Forecast[0]), changed.Plays.Take(100).Select(p => p.Forecast[0]));
    }

    [Fact]
    public void Run_ThreeOutcomes_ForecastsSumToOne()
    {
        var calls = s_readable.Category("call");
        var schemes = CategoryColumn.FromWords("run_scheme", Enumerable.Range(0, s_readable.Rows).Select(row =>
            calls[row] == "pass" ? "" : row % 3 == 0 ? "power" : row % 3 == 1 ? "inside zone" : "counter"));

        var report = Guess.Run(s_readable.With(schemes), "run_scheme", GuessOptions.Default);

        Assert.All(report.Plays, p => Assert.Equal(1, p.Forecast.Sum(), 12));
    }

    [Fact]
    public void Run_OneGame_SaysWhyNot() =>
        Assert.Contains("only 1 game charted", Guess.Run(s_readable.Where("game", "G1"), "call", GuessOptions.Default).WhyNot, StringComparison.Ordinal);

    [Fact]
    public void By_BackSide_CountsItsPlays()
    {
        var by = Guess.Run(s_readable, "call", GuessOptions.Default).By(s_readable, "back_side");

        Assert.Equal(["strong", "weak"], by.Select(r => r.Value).Order());
        Assert.All(by, r => Assert.Equal(125, r.Plays));
        Assert.All(by, r => Assert.True(r.BitsSaved > 0));
    }

    [Fact]
    public void By_AFewLuckyPlays_DoNotComeBeforeManyReadableOnes()
    {
        // Saved bits of 0.9 on 8 plays and 0.6 on 60, 0.1 on the 132 others: with 12 plays' worth of the overall 0.282 added, 0.529 and 0.547.
        double[] bits = [.. Enumerable.Repeat(0.9, 8), .. Enumerable.Repeat(0.6, 60), .. Enumerable.Repeat(0.1, 132)];
        var motion = CategoryColumn.FromWords("motion", bits.Select(b => b > 0.8 ? "jet" : b > 0.5 ? "orbit" : "none"));
        var plays = new PlayLog(bits.Length, [motion], [], []);
        var guessed = bits.Select((b, row) => new GuessedPlay(row, 0, 0, [0.5, 0.5], Math.Log(2) * (1 + b))).ToArray();

        var by = new GuessReport("call", ["run", "pass"], [], guessed, [], "").By(plays, "motion");

        Assert.Equal(["orbit", "jet", "none"], by.Select(r => r.Value));
        Assert.Equal([0.6, 0.9, 0.1], by.Select(r => Math.Round(r.BitsSaved, 9)));
        Assert.Equal((36 + (12 * 0.282)) / 72, by[0].BitsExpected, 9);
    }

    [Fact]
    public void MostReadable_TwoNamesForTheSamePlays_NamesThemOnceAndOnlyWhatBeatsOverall()
    {
        // Right on all 10 of jet (which is all of gun), on 20 of the 40 others: 30 of 50 overall.
        var motion = CategoryColumn.FromWords("motion", Enumerable.Range(0, 50).Select(row => row < 10 ? "jet" : "none"));
        var set = CategoryColumn.FromWords("back_set", Enumerable.Range(0, 50).Select(row => row < 10 ? "gun" : row < 30 ? "pistol" : "under"));
        var plays = new PlayLog(50, [motion, set], [], []);
        var guessed = Enumerable.Range(0, 50).Select(row => new GuessedPlay(row, 0, row < 10 || row % 2 == 0 ? 0 : 1, [0.5, 0.5], Math.Log(2) * (row < 10 ? 1.8 : 1.1))).ToArray();

        var most = new GuessReport("call", ["run", "pass"], [], guessed, [], "").MostReadable(plays, ["motion", "back_set", "personnel"]);

        Assert.Equal([("motion", "jet")], most.Select(value => (value.Dimension, value.Value)));
    }

    [Fact]
    public void Run_Rows_CarryWilsonsRangeAndTheRangeOverGames()
    {
        // Reference: Student's t with 4 degrees of freedom at 97.5 percent is 2.776445 (any table).
        var plays = ChartOfCalls.Of(5, ("strong", "none", g => 20 + g, _ => 5), ("weak", "jet", _ => 4, g => 18 + (g % 3)));

        var report = Guess.Run(plays, "call", GuessOptions.Default);

        double[] games = [.. report.Plays.GroupBy(play => plays.Category("game")[play.Row]).Select(game => game.Average(play => play.BitsSaved))];
        var mean = games.Average();
        var half = 2.776445 * Math.Sqrt(games.Sum(x => (x - mean) * (x - mean)) / 4 / 5);
        var all = report.Rows[2];
        Assert.Equal(mean - half, all.BitsByGame!.Value.Low, 6);
        Assert.Equal(mean + half, all.BitsByGame!.Value.High, 6);
        Assert.Null(report.Rows[0].BitsByGame);

        // Wilson: (p + z²/2n ± z √(p(1-p)/n + z²/4n²)) / (1 + z²/n).
        var (n, p, z) = (all.Plays, all.Accuracy, 1.959964);
        var middle = p + (z * z / (2 * n));
        var reach = z * Math.Sqrt((p * (1 - p) / n) + (z * z / (4.0 * n * n)));
        Assert.Equal((middle - reach) / (1 + (z * z / n)), all.Likely.Low, 6);
        Assert.Equal((middle + reach) / (1 + (z * z / n)), all.Likely.High, 6);
    }

    [Fact]
    public void Run_ThreeGames_GivesNoRangeOverGames() =>
        Assert.All(Guess.Run(ChartOfCalls.Of(3, ("strong", "none", _ => 15, _ => 5)), "call", GuessOptions.Default).Rows, row => Assert.Null(row.BitsByGame));

    [Fact]
    public void Start_OnlyTheCall_StartsFromUsualCalls()
    {
        Assert.Contains("what offenses usually call", Guess.Run(s_readable, "call", GuessOptions.Default).Start, StringComparison.Ordinal);
        Assert.Equal("", Guess.Run(s_readable, "motion", GuessOptions.Default).Start);
    }

    [Fact]
    public void Run_ThreeOutcomes_CalibrationIsOfTheOneCalled()
    {
        var calls = s_readable.Category("call");
        var three = s_readable.With(CategoryColumn.FromWords("call", Enumerable.Range(0, s_readable.Rows).Select(row => row % 5 == 0 ? "rpo" : calls[row])));

        var report = Guess.Run(three, "call", GuessOptions.Default);

        Assert.Equal("our call", report.Calibrated);
        Assert.Equal(report.Plays.Count(play => play.IsRight), report.Calibration.Sum(bin => bin.Hits));
        Assert.Equal(report.Plays.Count, report.Calibration.Sum(bin => bin.Count));
        Assert.Equal(report.Plays.Count(play => play.Forecast.Max() < 0.6), report.Calibration.Where(bin => bin.To <= 0.6).Sum(bin => bin.Count));
    }
}
