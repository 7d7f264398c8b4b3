using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Findings;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Intervals;
using Tendency.Inference.Multiplicity;

namespace Tendency.Breakdown.Tests.Findings;

public sealed class TellsTests
{
    // 9 of 10 runs with the back strong against 12 of 28 elsewhere, in each of four games; the motion says nothing.
    private static readonly PlayLog s_backStrong = ChartOfCalls.Of(
        4,
        ("strong", "none", _ => 6, _ => 1),
        ("strong", "jet", _ => 3, _ => 0),
        ("weak", "none", _ => 9, _ => 12),
        ("weak", "jet", _ => 3, _ => 4));

    [Fact]
    public void Search_OneHabit_FoundOnceWithItsFigures()
    {
        var report = Tells.Search(s_backStrong, "call", TellOptions.Default);

        var tell = Assert.Single(report.Tells);
        Assert.Equal("back_side=strong", tell.Situation);
        Assert.Equal("run", tell.Outcome);
        Assert.Equal((36, 40), (tell.Count, tell.Plays));
        Assert.Equal(84.0 / 152, tell.BaseShare, 12);
        Assert.Equal((4, 4), (tell.Games, tell.GamesSameWay));
        Assert.Equal(40, tell.PlaysList.Count);
        Assert.Equal("G1:1", tell.PlaysList[0]);
        Assert.Equal((36, 40), (tell.HeldOutCount, tell.HeldOutPlays));
        Assert.InRange(tell.ShuffledP!.Value, 0.001, 0.01);
        Assert.InRange(tell.ShrunkShare, tell.BaseShare, tell.Share);
        Assert.InRange(tell.CorrectedDifference, 0, tell.Difference);
    }

    [Fact]
    public void Search_TwoValues_TellsTheRarerAndSaysWhatTheyDoElse()
    {
        // The two halves are one test; 36 of 40 is farther from 84 of 152 than 64 of 112 is from 68 of 152.
        var tell = Tells.Search(s_backStrong, "call", TellOptions.Default).Tells[0];

        Assert.Equal("back_side=strong", tell.Situation);
        Assert.Equal(new TellOtherHalf(new TellCondition("back_side", "weak"), "pass", 112, 64), tell.Otherwise);
        Assert.Equal("else, back weak: pass 57% (64 of 112)", TellSentence.Otherwise(tell, "call"));
        Assert.StartsWith("weak", Tells.Search(Renamed("strong", "weaker"), "call", TellOptions.Default).Tells[0].Conditions[0].Value, StringComparison.Ordinal);
        static PlayLog Renamed(string often, string rare) => ChartOfCalls.Of(
            4, (rare, "none", _ => 6, _ => 1), (rare, "jet", _ => 3, _ => 0), (often, "none", _ => 9, _ => 12), (often, "jet", _ => 3, _ => 4));
    }

    [Fact]
    public void SearchedAnew_AHabitOfEveryGame_CameAsOftenInTheGameLeftOut()
    {
        // Every game alike: the other three show back strong, 9 of 10 each, and so does the one left out.
        var anew = SearchedAnew.Of(s_backStrong, "call", TellOptions.Default)!;

        Assert.Equal((4, 40, 36), (anew.Tells, anew.Plays, anew.Count));
        Assert.Equal(0.9, anew.ShareFound, 12);
        Assert.Equal(84.0 / 152, anew.UsualShare, 12);
        Assert.Null(SearchedAnew.Of(s_backStrong.Where("game", "G1"), "call", TellOptions.Default));
    }

    [Fact]
    public void SearchedAnew_AHabitOfOneGame_IsNoneInTheGameLeftOut()
    {
        // Back strong means run in the first game, 20 of 20, where the others are even: found only with that game among those searched.
        var plays = ChartOfCalls.Of(4, ("strong", "none", g => g == 0 ? 20 : 6, g => g == 0 ? 0 : 6), ("weak", "none", g => g == 0 ? 4 : 14, g => g == 0 ? 26 : 16));

        var anew = SearchedAnew.Of(plays, "call", TellOptions.Default)!;

        Assert.Equal(0.5, (double)anew.Count / anew.Plays, 12);
        Assert.True(anew.ShareFound > 0.6);
    }

    [Fact]
    public void Search_TwoConditions_CountsWhatOneShows()
    {
        // Strong with jet motion 18 of 20 in each game; strong alone 28 of 40, jet alone 28 of 40; else even.
        var plays = ChartOfCalls.Of(4, ("strong", "jet", _ => 18, _ => 2), ("strong", "none", _ => 10, _ => 10), ("weak", "jet", _ => 10, _ => 10), ("weak", "none", _ => 10, _ => 10));

        var tell = Tells.Search(plays, "call", TellOptions.Default).Tells[0];

        Assert.Equal("back_side=strong & motion=jet", tell.Situation);
        Assert.Equal((160, 112), (tell.Parent!.Plays, tell.Parent.Count));
        Assert.EndsWith(" alone 70% (112 of 160)", TellSentence.Parent(tell), StringComparison.Ordinal);
        Assert.Equal("I form alone 70% (112 of 160)", TellSentence.Parent(tell with { Parent = tell.Parent with { Conditions = [new TellCondition("formation", "I form")] } }));
        Assert.Equal("plays G1 1, 2, 3; 77 more", TellSentence.Plays(tell, 3));
    }

    [Fact]
    public void Of_HeldOutPlays_SayWhetherItHeld()
    {
        var tell = Tells.Search(s_backStrong, "call", TellOptions.Default).Tells[0];
        var against = tell with { ByGame = [.. tell.ByGame.Select(game => game with { Count = 1 })] };
        var few = tell with { ByGame = [.. tell.ByGame.Select((game, i) => game with { Plays = 2, Count = 2, FoundWithoutIt = i < 2 })] };

        Assert.EndsWith("held out 36 of 40", TellSentence.Of(tell, "call"), StringComparison.Ordinal);
        Assert.EndsWith("held out 4 of 40, it did not hold", TellSentence.Of(against, "call"), StringComparison.Ordinal);
        Assert.EndsWith("held out 4 of 4, too few to try it on", TellSentence.Of(few, "call"), StringComparison.Ordinal);
    }

    [Fact]
    public void Search_ThreeValues_HaveNoOtherHalf()
    {
        var plays = ChartOfCalls.Of(4, ("strong", "none", _ => 9, _ => 1), ("weak", "none", _ => 8, _ => 12), ("middle", "none", _ => 3, _ => 5));

        Assert.All(Tells.Search(plays, "call", TellOptions.Default).Tells, tell => Assert.Null(tell.Otherwise));
        Assert.NotEmpty(Tells.Search(plays, "call", TellOptions.Default).Tells);
    }

    [Fact]
    public void Search_TwoColumnsByHand_SameFamilyAndFigures()
    {
        // All cells of back_side, motion and both crossed, counted by hand: (hits, plays) in each game of 21 of 38.
        (int Runs, int Plays)[] cells = [(9, 10), (12, 28), (15, 28), (6, 10), (6, 7), (3, 3), (9, 21), (3, 7)];
        var p = cells.Select(c => StratifiedTest.Run(Four(c.Runs), Four(c.Plays), Four(21), Four(38)).TwoSided).ToArray();
        var q = AdjustedP.BenjaminiHochberg(p);

        var report = Tells.Search(s_backStrong, "call", TellOptions.Default with { Dimensions = ["back_side", "motion"] });

        Assert.Equal(cells.Length, report.Searched);
        Assert.Equal(q.Count(value => value <= 0.10), report.Listed);
        Assert.Equal(p[0], report.Tells[0].PValue, 14);
        Assert.Equal(q[0], report.Tells[0].QValue, 14);
        static int[] Four(int count) => [count, count, count, count];
    }

    [Fact]
    public void Search_DifferenceRange_IsNewcombeAgainstTheRestTimesItsPart()
    {
        var tell = Tells.Search(s_backStrong, "call", TellOptions.Default).Tells[0];

        var rest = Difference.Newcombe(36, 40, 48, 112, 0.95);
        Assert.Equal(rest.Low * 112 / 152, tell.DifferenceRange.Low, 12);
        Assert.Equal(rest.High * 112 / 152, tell.DifferenceRange.High, 12);
    }

    [Fact]
    public void Search_HabitOfOneGameOnly_HeldOutNowhereElse()
    {
        // All the difference comes from the first game: without it nothing is left to find.
        var plays = ChartOfCalls.Of(
            4, ("strong", "none", g => g == 0 ? 20 : 5, g => g == 0 ? 0 : 5), ("weak", "none", g => g == 0 ? 2 : 10, g => g == 0 ? 18 : 10));

        var tell = Assert.Single(Tells.Search(plays, "call", TellOptions.Default).Tells);

        Assert.Equal(1, tell.GamesSameWay);
        Assert.False(tell.ByGame[0].FoundWithoutIt);
    }

    [Fact]
    public void Search_MoreThanTwoOutcomes_EachAgainstTheRest()
    {
        var calls = s_backStrong.Category("call");
        var schemes = CategoryColumn.FromWords("run_scheme", Enumerable.Range(0, s_backStrong.Rows).Select(row =>
            calls[row] == "pass" ? "" : s_backStrong.Category("back_side")[row] == "strong" ? "power" : row % 2 == 0 ? "inside zone" : "counter"));

        var report = Tells.Search(s_backStrong.With(schemes), "run_scheme", TellOptions.Default with { Dimensions = ["back_side"] });

        Assert.Equal(84, report.Plays);
        Assert.Equal(2 * 3, report.Searched);
        Assert.Contains(report.Tells, t => t is { Situation: "back_side=strong", Outcome: "power", Count: 36, Plays: 36 });
    }

    [Fact]
    public void Search_FewUndecidedCalls_TellsRunAndPassOnce()
    {
        var calls = s_backStrong.Category("call");
        var withOption = CategoryColumn.FromWords("call", Enumerable.Range(0, s_backStrong.Rows).Select(row => row % 50 == 49 ? "rpo" : calls[row]));

        var tell = Assert.Single(Tells.Search(s_backStrong.With(withOption), "call", TellOptions.Default).Tells);

        Assert.Equal(("back_side=strong", "run"), (tell.Situation, tell.Outcome));
    }

    [Fact]
    public void Search_SituationsTooSmallToPass_CostNothing()
    {
        // Nineteen motions of eight plays each: 8 runs of 8 has p = 0.005, which no family of that size lets pass at 1 %.
        var motions = CategoryColumn.FromWords("motion", Enumerable.Range(0, s_backStrong.Rows).Select(row => $"m{row % 19}"));

        var report = Tells.Search(s_backStrong.With(motions), "call", TellOptions.Default with { Dimensions = ["back_side", "motion"], Depth = 1, Fdr = 0.01 });

        Assert.Equal(2, report.Searched);
        Assert.Single(report.Tells);
    }

    [Fact]
    public void Search_OneGame_FindsNothing() =>
        Assert.Empty(Tells.Search(ChartOfCalls.Of(1, ("strong", "none", _ => 30, _ => 0), ("weak", "none", _ => 0, _ => 30)), "call", TellOptions.Default).Tells);

    [Fact]
    public void Search_UnchartedOutcome_FindsNothing() =>
        Assert.Equal(0, Tells.Search(s_backStrong, "coverage", TellOptions.Default).Plays);

    [Fact]
    public void Sentence_OneHabit_ReadsLikeACoach() =>
        Assert.Equal(
            "Back strong: run 90% (36 of 40; likely 77–96%), usual 55%; same way in 4 of 4 games; held out 36 of 40",
            TellSentence.Of(Tells.Search(s_backStrong, "call", TellOptions.Default).Tells[0], "call"));

    [Theory]
    [InlineData("down_distance", "3 & long", "3rd & long")]
    [InlineData("wing", "L", "wing left")]
    [InlineData("hash", "M", "middle of the field")]
    [InlineData("motion", "none", "no motion")]
    [InlineData("back_side", "weak", "back weak")]
    public void Words_Condition_InTradeWords(string name, string value, string words) => Assert.Equal(words, SituationWords.Of(name, value));

    // 1 of 1 on a game left out is the right way, and proves nothing: five plays are the least a rate is printed for.
    [Theory]
    [InlineData(1, 1, false, false)]
    [InlineData(4, 4, false, false)]
    [InlineData(4, 5, true, true)]
    [InlineData(2, 5, true, false)]
    public void HeldUp_FewPlaysOfGamesLeftOut_IsNotHeld(int count, int plays, bool tried, bool held)
    {
        var none = new Interval(0, 1);
        var tell = new Tell
        {
            Rank = 1,
            Conditions = [new TellCondition("back_side", "strong")],
            Outcome = "run",
            Plays = 20,
            Count = 18,
            Range = none,
            BaseShare = 0.5,
            DifferenceRange = none,
            PValue = 0.001,
            QValue = 0.01,
            ShrunkShare = 0.75,
            CorrectedDifference = 0.2,
            HoldsWithinDownAndDistance = true,
            Rows = [],
            PlaysList = [],
            ByGame = [new TellGame("A", 20 - plays, 18 - count, 0.5, false), new TellGame("B", plays, count, 0.5, true)],
        };

        Assert.Equal((tried, held), (tell.WasTried, tell.HeldUp));
        Assert.Equal(!tried, TellSentence.Of(tell, "call").EndsWith("too few to try it on", StringComparison.Ordinal));
    }

    [Fact]
    public void Search_Tells_AreRankedByWhatToExpect()
    {
        var plays = ChartOfCalls.Of(
            6, ("strong", "none", _ => 9, _ => 1), ("weak", "none", _ => 4, _ => 6), ("weak", "jet", _ => 0, _ => 3), ("middle", "none", _ => 5, _ => 5));

        var tells = Tells.Search(plays, "call", TellOptions.Default).Tells;

        Assert.True(tells.Count > 1);
        var expected = tells.Select(tell => tell.ExpectedDifference * Math.Sign(tell.Difference)).ToArray();
        Assert.Equal(expected.OrderDescending(), expected);
    }
}
