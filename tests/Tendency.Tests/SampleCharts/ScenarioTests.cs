using Tendency.SampleCharts;

namespace Tendency.Tests.SampleCharts;

public sealed class ScenarioTests
{
    [Fact]
    public void Generate_SameSeed_GivesTheSameText()
    {
        var options = new ScenarioOptions { GameSwing = 0.5 };
        Assert.Equal(Scenario.Generate(7, 2, options).ToText(), Scenario.Generate(7, 2, options).ToText());
        Assert.NotEqual(Scenario.Generate(7, 2, options).ToText(), Scenario.Generate(8, 2, options).ToText());
    }

    /// <summary>100 games of a fair coin: about 5,500 snaps, so four standard errors are 0.027.</summary>
    [Fact]
    public void Walk_NothingPlanted_RunsHalfTheTimeInEveryFormation()
    {
        var snaps = Scenario.Walk(11, 100, new ScenarioOptions()).SelectMany(game => game).Where(snap => snap.Call.Kind != "none").ToList();
        Assert.All(snaps.GroupBy(snap => snap.Look.Formation).Append(snaps.GroupBy(_ => "all").Single()), cell =>
            Assert.InRange(cell.Count(snap => snap.Call.RunBall) / (double)cell.Count(), 0.5 - (2 / Math.Sqrt(cell.Count())), 0.5 + (2 / Math.Sqrt(cell.Count()))));
    }

    /// <summary>With a swing of 0.5 the log odds of 120 games have that spread, sampling noise of a 55-snap game (variance 4/55) taken off.</summary>
    [Fact]
    public void Walk_GameSwing_HasItsSpread()
    {
        var games = Scenario.Walk(3, 120, new ScenarioOptions { GameSwing = 0.5 });
        var odds = games.Select(game =>
        {
            var calls = game.Where(snap => snap.Call.Kind != "none").ToList();
            var runs = calls.Count(snap => snap.Call.RunBall);
            return (Odds: Math.Log((runs + 0.5) / (calls.Count - runs + 0.5)), Noise: 4.0 / calls.Count);
        }).ToList();
        var mean = odds.Average(game => game.Odds);
        var spread = Math.Sqrt(odds.Average(game => Math.Pow(game.Odds - mean, 2)) - odds.Average(game => game.Noise));
        Assert.InRange(spread, 0.4, 0.6);
    }

    [Fact]
    public void DrawTells_ThreeOverSixGames_RaiseTheOddsByWhatTheySay()
    {
        var logRatios = new List<double>();
        for (ulong seed = 0; seed < 15; seed++)
        {
            var tells = Scenario.DrawTells(seed, games: 6, count: 3);
            Assert.Equal(3, tells.Count);
            var snaps = Scenario.Walk(seed, 6, new ScenarioOptions { Tells = tells }).SelectMany(game => game).Where(snap => snap.Call.Kind != "none").ToList();
            foreach (var tell in tells)
            {
                var only = snaps.Where(snap => tell.Holds(snap.At, snap.Look) && !tells.Any(other => other != tell && other.Holds(snap.At, snap.Look))).ToList();
                var runs = only.Count(snap => snap.Call.RunBall);
                logRatios.Add(Math.Sign(tell.LogOdds) * Math.Log((runs + 0.5) / (only.Count - runs + 0.5)));
            }
        }

        // 45 tells of 1.3–1.6 on some 35 snaps each: standard error of the mean near 0.065.
        Assert.InRange(logRatios.Average(), 1.25, 1.65);
    }
}
