using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;

namespace Tendency.Breakdown.Tests.Fronts;

public class FrontCheckTests
{
    private static readonly FrontBook Book = FrontBook.BuiltIn;
    private static readonly FrontOptions Quick = new() { Draws = 4000, CardDraws = 500 };

    /// <summary>Football's fact, both sides and the usual side alone: two 4i and a nose are built for inside zone.</summary>
    [Theory]
    [InlineData("to back", "away")]
    [InlineData("away", "away")]
    public void Rank_InsideZoneAlone_TightBeatsDoubleFiveAndTheOneFiveFronts(string one, string other)
    {
        var check = Check(RunChart.Of((20, "inside zone", one), (20, "inside zone", other)));
        var tight = Rank(check, "tight");
        Assert.All(["double five", "five to back", "five away"], front => Assert.True(tight.Rank < Rank(check, front).Rank, front));
        Assert.True(tight.SuccessAllowed < Rank(check, "double five").SuccessAllowed - 0.1);
    }

    /// <summary>As power rises the order reverses, at the share the ratings imply: 2 - 3p = -1 + 2p at p = 0.6, and 2 - 3p = 1 - p at p = 0.5.</summary>
    [Fact]
    public void Rank_PowerRises_TheOrderReversesWhereTheRatingsSay()
    {
        foreach (var power in Enumerable.Range(0, 11))
        {
            var zone = 40 - (4 * power);
            var check = Check(RunChart.Of((zone / 2, "inside zone", "to back"), (zone / 2, "inside zone", "away"), (2 * power, "power", "to back"), (2 * power, "power", "away")));
            var tight = Rank(check, "tight").Rank;
            if (power != 6)
            {
                Assert.Equal((power, power < 6), (power, tight < Rank(check, "double five").Rank));
            }

            if (power != 5)
            {
                Assert.Equal((power, power < 5), (power, tight < Rank(check, "five to back").Rank));
            }
        }
    }

    [Theory]
    [InlineData("double five", "pull", 0.6)]
    [InlineData("double five", "gap", 0.6)]
    [InlineData("five to back", "pull", 0.5)]
    public void BreakEven_ZoneAndPowerOnBothSides_IsWhereTheRatingsMeet(string other, string family, double share)
    {
        var check = Check(RunChart.Of((15, "inside zone", "to back"), (15, "inside zone", "away"), (5, "power", "to back"), (5, "power", "away")));
        var turn = check.BreakEven("tight", other, family)!;
        Assert.Equal(share, turn.BreakEvenShare!.Value, 1e-9);
        Assert.Equal(("tight", other), (turn.BetterBelow, turn.BetterAbove));
        Assert.Equal(0.25, turn.ShareNow, 1e-12);
        Assert.InRange(0.25, turn.Low, turn.High);
    }

    [Theory]
    [InlineData(5, "Tight allows less than Double five until pulling schemes pass 60% of runs; they are at 25% (14–40%).")]
    [InlineData(40, "Double five allows less than Tight as long as pulling schemes stay above 60% of runs; they are at 73% (64–80%).")]
    public void BreakEvenSentence_BelowAndAboveTheTurn_SaysWhenAndWhereTheyAre(int power, string sentence)
    {
        var check = Check(RunChart.Of((15, "inside zone", "to back"), (15, "inside zone", "away"), (power, "power", "to back"), (power, "power", "away")));
        Assert.Equal(sentence, check.BreakEven("double five", "tight", "pull")!.Sentence);
    }

    [Fact]
    public void BreakEven_TwoFronts_IsTheShareThatCostsTheFirstItsPlace()
    {
        var chart = RunChart.Of((15, "inside zone", "to back"), (15, "inside zone", "away"), (5, "power", "to back"), (5, "power", "away"));
        var check = FrontCheck.Of(Charts.ChartText.Plays(chart), Book, Book.Plan(["double five", "tight"]).Fronts, Quick);
        var turn = check.BreakEven("double five", "tight", "pull")!;
        Assert.Equal(0.6, turn.BreakEvenShare!.Value, 1e-9);
        Assert.Equal("tight", turn.BetterNow);
    }

    /// <summary>A staff that gives its ratings no weight still gets a check: half a play is the least.</summary>
    [Fact]
    public void From_WeekWithoutPriorPlays_StillRanks()
    {
        var options = FrontOptions.From(new() { PriorPlays = 0 }) with { Draws = 500 };
        var check = FrontCheck.Of(Charts.ChartText.Plays(RunChart.Of((20, "inside zone", "away"))), Book, Book.Fronts, options);
        Assert.Equal(13, check.Ranking.Ranks.Count);
        Assert.All(check.Ranking.Ranks, r => Assert.InRange(r.SuccessAllowed, 0, 1));
    }

    [Fact]
    public void BreakEven_OneFrontDominates_NamesItTwiceWithoutAShare()
    {
        var check = Check(RunChart.Of((15, "inside zone", "to back"), (15, "inside zone", "away"), (10, "power", "away")));
        var turn = check.BreakEven("bear", "wide nine", "pull")!;
        Assert.Null(turn.BreakEvenShare);
        Assert.Equal(("bear", "bear"), (turn.BetterBelow, turn.BetterAbove));
    }

    /// <summary>By hand: half of 40 runs succeed, the rating is +2, so 0.5 - 0.12 = 0.38 worth 8 plays; 1 of 4 on film gives (3.04 + 1) / 12.</summary>
    [Fact]
    public void Matrix_FourPlaysOfFilm_PullTheRatingByTheirWeight()
    {
        var chart = RunChart.Of((18, "inside zone", "away"), (18, "power", "away"))
            + RunChart.Line(37, "inside zone", "away", "tight", succeeds: true)
            + RunChart.Line(38, "inside zone", "away", "tight", succeeds: false)
            + RunChart.Line(39, "inside zone", "away", "tight", succeeds: false)
            + RunChart.Line(40, "inside zone", "away", "tight", succeeds: false)
            + RunChart.Line(41, "inside zone", "away", "over", succeeds: true)
            + RunChart.Line(42, "inside zone", "away", "over", succeeds: true);
        var cell = Cell(Check(chart), "tight", "inside zone", RunTo.Away);
        Assert.Equal((4, 1), (cell.Plays, cell.Successes));
        Assert.Equal(0.38, cell.Prior, 1e-12);
        Assert.Equal(4.04 / 12, cell.SuccessAllowed, 1e-12);
        Assert.Equal((4.04 / 12) - 0.38, cell.Moved, 1e-12);
        Assert.InRange(cell.SuccessAllowed, cell.Low, cell.High);
    }

    [Fact]
    public void Matrix_UnderTwentyRuns_StartsFromTheUsualSuccess()
    {
        var cell = Cell(Check(RunChart.Of((19, "inside zone", "away"))), "double five", "inside zone", RunTo.Away);
        Assert.Equal(0.45 + 0.06, cell.Prior, 1e-12);
    }

    [Fact]
    public void Matrix_SurfaceNotCharted_LedgerIsUnknown()
    {
        var check = Check(RunChart.Of((20, "inside zone", "away")));
        Assert.Equal("play 0/+1; back -1/0; all -1/+1", Cell(check, "tight", "inside zone", RunTo.Away).Ledger);
        Assert.Equal("unknown", Cell(check, "tight", "inside zone", RunTo.ToBack).Ledger);
        var bare = "game,play,down,distance,call,run_scheme,run_side,back_side\nA,1,1,10,run,inside zone,R,L\n";
        Assert.Equal("unknown", Cell(Check(bare), "tight", "inside zone", RunTo.Away).Ledger);
    }

    [Fact]
    public void Sample_BackInTheMiddle_CountsHalfToEachSideAndInNoCellOfFilm()
    {
        var check = Check(RunChart.Of((20, "inside zone", "away")) + RunChart.Line(21, "inside zone", "middle", "tight", succeeds: true));
        Assert.Equal([0.5, 20.5], check.Matrix.Mix.Cells.Select(c => c.Count));
        Assert.Equal(1, check.Sample.Runs.Count(run => run.RunTo is null));
        Assert.Equal(0, Cell(check, "tight", "inside zone", RunTo.Away).Plays);
    }

    /// <summary>An option to pass that was thrown says something about the run mix and nothing about how runs succeed.</summary>
    [Fact]
    public void Sample_ThrownOption_CountsInTheMixOnly()
    {
        var chart = RunChart.Of((20, "inside zone", "away")) + "A,21,1,10,rpo,power,R,L,R,R,over,30,complete\n" + "A,22,1,10,run,,R,L,R,R,over,3,rush\n";
        var sample = Check(chart).Sample;
        Assert.Equal((21, 22, 1, 1), (sample.Runs.Count, sample.RunCalls, sample.WithoutScheme, sample.Passes));
        Assert.Equal(21, sample.Base.Plays);
        Assert.False(sample.Runs[^1].IsRush);
    }

    /// <summary>Exact mean: shares of a Dirichlet with the counts and one play spread over four cells, times the prior of each cell.</summary>
    [Fact]
    public void Rank_WithoutFilm_SuccessAllowedIsTheWeightedPrior()
    {
        var check = Check(RunChart.Of((30, "inside zone", "away"), (10, "power", "away")));
        var expected = ((30.25 * 0.38) + (0.25 * 0.38) + (10.25 * 0.56) + (0.25 * 0.56)) / 41;
        Assert.Equal(expected, Rank(check, "tight").SuccessAllowed, 1e-12);
    }

    [Fact]
    public void Rank_EveryFront_OrderRangeAndChancesHold()
    {
        var ranks = Check(RunChart.Of((30, "inside zone", "away"), (10, "power", "to back"), (8, "counter gt", "away"))).Ranking.Ranks;
        Assert.Equal(Enumerable.Range(1, 13), ranks.Select(r => r.Rank));
        Assert.Equal(ranks.Select(r => r.SuccessAllowed).Order(), ranks.Select(r => r.SuccessAllowed));
        Assert.Equal(1, ranks.Sum(r => r.ProbabilityBest), 1e-9);
        Assert.All(ranks, r => Assert.True(r.Low <= r.SuccessAllowed && r.SuccessAllowed <= r.High && r.ExpectedLoss >= 0));
    }

    [Fact]
    public void Rank_NoRun_HasNothingToSay()
    {
        var check = Check("game,play,down,distance,call\nA,1,1,10,pass\n");
        Assert.Empty(check.Ranking.Ranks);
        Assert.Null(check.IfTheyAdjust);
        Assert.Equal("no run with a rated scheme, so nothing to compare the fronts by", check.Ranking.Verdict);
        Assert.Empty(FrontCard.Of(Charts.ChartText.Plays("game,play,down,distance,call\nA,1,1,10,pass\n"), check, Quick));
    }

    /// <summary>Two runs, two fronts: inside zone 2 v -1, power -1 v 1; the closed form of the 2 x 2 game gives tight 2/5.</summary>
    [Fact]
    public void IfTheyAdjust_ZoneAndPowerAgainstTwoFronts_MixesAsTheClosedFormSays()
    {
        var log = Charts.ChartText.Plays(RunChart.Of((30, "inside zone", "away"), (10, "power", "away")));
        var check = FrontCheck.Of(log, Book, Book.Plan(["tight", "double five"]).Fronts, Quick);
        var game = check.IfTheyAdjust!;
        Assert.Equal(0.4, game.Ours.Single(o => o.Front == "tight").Share, 1e-9);
        Assert.Equal(0.5 - (0.06 * 0.2), game.Value, 1e-9);
        Assert.True(game.BestReply <= game.Value + 1e-12);
        Assert.Equal("If they adjust, show Double five and Tight about three to two.", game.Sentence);
    }

    [Theory]
    [InlineData(0.75, 0.25, "If they adjust, show A and B about three to one.")]
    [InlineData(0.5, 0.5, "If they adjust, show A and B about equally.")]
    [InlineData(0.88, 0.12, "If they adjust, stay in A and show B now and then.")]
    [InlineData(0.97, 0.03, "Stay in A: if they adjust, no other front of ours holds them lower.")]
    public void Say_TwoFronts_IsASentenceACoachAccepts(double a, double b, string sentence) =>
        Assert.Equal(sentence, SchemeGame.Say([("a", a), ("b", b)]));

    [Fact]
    public void Say_ManyFronts_RoundsToFivePercentAndLeavesOutTheRest() =>
        Assert.Equal("If they adjust, show A 45%, B 35%, C 15% of the time.", SchemeGame.Say([("a", 0.46), ("b", 0.34), ("c", 0.16), ("d", 0.04)]));

    [Fact]
    public void Card_EachSituation_GivesFrontChanceAndSecondChoice()
    {
        var chart = RunChart.Of((30, "inside zone", "away"), (10, "power", "to back"));
        var log = Charts.ChartText.Plays(chart);
        var check = FrontCheck.Of(log, Book, Book.Fronts, Quick);
        var lines = FrontCard.Of(log, check, Quick);
        Assert.Equal("all plays", lines[0].Situation);
        Assert.Equal((40, 40, 1.0), (lines[0].Plays, lines[0].Runs, lines[0].RunShare));
        Assert.Equal(("inside zone away", 30), lines[0].TopRuns[0]);
        Assert.All(lines, l => Assert.True(l.Sure is >= 0 and <= 1 && l.Cost >= 0 && l.Front != l.Second));
    }

    [Fact]
    public void Film_ChartedFronts_AreCountedWhetherWeKnowThemOrNot()
    {
        var chart = RunChart.Of((2, "inside zone", "away")) + RunChart.Line(3, "power", "away", "six one", succeeds: true);
        var film = Check(chart).Film;
        Assert.Contains(film, r => r is { Front: "six one", RunScheme: "", Plays: 1, Successes: 1 });
        Assert.Contains(film, r => r is { Front: "six one", RunScheme: "power", Side: RunTo.Away });
    }

    private static FrontCheck Check(string chart) => FrontCheck.Of(Charts.ChartText.Plays(chart), Book, Book.Fronts, Quick);

    private static FrontRank Rank(FrontCheck check, string front) => check.Ranking.Ranks.Single(r => r.Front == front);

    private static MatrixCell Cell(FrontCheck check, string front, string scheme, RunTo side) =>
        check.Matrix.Cells.SelectMany(c => c).Single(c => c.Front == front && c.RunScheme == scheme && c.Side == side);
}
