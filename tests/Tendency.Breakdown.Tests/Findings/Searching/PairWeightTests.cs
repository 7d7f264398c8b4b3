using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.Searching;

namespace Tendency.Breakdown.Tests.Findings.Searching;

public sealed class PairWeightTests
{
    private static readonly TellOptions s_named = TellOptions.Default with { Dimensions = ["formation"] };

    [Fact]
    public void Of_FewPairs_AllWeighAlike() =>
        Assert.Equal(1, PairWeight.Of(2, 0.5, 30, TellOptions.Default));

    [Fact]
    public void Of_NamedDimensions_AllWeighAlike() =>
        Assert.Equal(1, PairWeight.Of(2, 1, 1000, s_named));

    [Fact]
    public void Of_EnoughPlaysToShowAHabit_WeighsOne() =>
        Assert.Equal(1, PairWeight.Of(15, 1, 1000, TellOptions.Default));

    [Fact]
    public void Of_TenPlays_WeighsAsItsChanceToShowAHabit()
    {
        // By hand: ten plays at an even base rate have variance 2.5; a habit of 1.25 moves the statistic by 1.25 * sqrt 2.5 = 1.976; the bar at
        // 0.1 / 1000 two-sided is 3.891; P(normal > 3.891 - 1.976) = 0.0278, over one half.
        Assert.Equal(0.0278 / 0.5, PairWeight.Of(2.5, 1, 1000, TellOptions.Default), 3);
    }

    [Fact]
    public void Search_ManyPairs_QValuesSpendNoMoreThanTheRate()
    {
        var plays = ChartOfCalls.Of(
            4, ("strong", "none", _ => 6, _ => 1), ("strong", "jet", _ => 3, _ => 0), ("weak", "none", _ => 9, _ => 12), ("weak", "jet", _ => 3, _ => 4));
        var ground = SearchGround.From(plays, "call", TellOptions.Default);

        var listed = PairSearch.Run(ground, TellOptions.Default, out _);

        Assert.NotEmpty(listed);
        Assert.InRange(listed.Sum(c => c.Part), 0, 1);
        Assert.All(listed, c => Assert.InRange(c.Q, c.P, 0.10));
    }

    [Fact]
    public void Search_All_PaysForThoseThatCanNotPassToo()
    {
        // 2 plays a game of jet motion from either side: 8 plays each, enough to be searched, too few to pass by any calls.
        var plays = ChartOfCalls.Of(
            4, ("strong", "none", _ => 12, _ => 2), ("strong", "jet", _ => 1, _ => 1), ("weak", "none", _ => 15, _ => 24), ("weak", "jet", _ => 1, _ => 1));
        var all = s_named with { Dimensions = ["back_side", "motion"], SearchesAll = true, Fdr = 0.001 };

        _ = PairSearch.Run(SearchGround.From(plays, "call", all), all with { SearchesAll = false }, out var some);
        var listed = PairSearch.Run(SearchGround.From(plays, "call", all), all, out var every);

        // Two backs, two motions, four of both.
        Assert.Equal(8, every);
        Assert.True(some < every);
        Assert.NotEmpty(listed);
        Assert.All(listed, c => Assert.Equal(1.0 / 8, c.Part, 12));
    }
}
