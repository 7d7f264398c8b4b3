using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Findings.SelfScouts;
using Tendency.Breakdown.Situations;

namespace Tendency.Breakdown.Tests.Findings.SelfScouts;

public sealed class ScoutComparisonTests
{
    [Fact]
    public void Of_PublishedPair_HasNewcombesRange()
    {
        // Newcombe 1998, Statistics in Medicine 17:873, table II, example (a): 56/70 less 48/80, method 10: 0.0524 to 0.3339.
        var ours = ChartOfCalls.Of(1, ("strong", "none", _ => 56, _ => 14));
        var theirs = ChartOfCalls.Of(1, ("strong", "none", _ => 48, _ => 32));

        var all = Assert.Single(ScoutComparison.Of(ours, theirs, Unit.Offense, SelfScoutOptions.Default), row => row.Conditions.Count == 0);

        Assert.Equal((new Tally(56, 70), new Tally(48, 80)), (all.Ours, all.Theirs));
        Assert.Equal(0.0524, all.Range.Low, 4);
        Assert.Equal(0.3339, all.Range.High, 4);
    }

    [Fact]
    public void Of_SetsExchanged_MirrorsEveryRow()
    {
        var one = ScoutComparison.Of(OurTeam.Offense.Plays, OurTeam.Defense.Plays, Unit.Offense, SelfScoutOptions.Default).ToDictionary(Key);
        var two = ScoutComparison.Of(OurTeam.Defense.Plays, OurTeam.Offense.Plays, Unit.Offense, SelfScoutOptions.Default);

        Assert.NotEmpty(two);
        foreach (var row in two.Where(row => one.ContainsKey(Key(row))))
        {
            Assert.Equal(-one[Key(row)].Difference, row.Difference, 12);
            Assert.Equal(one[Key(row)].PValue, row.PValue, 9);
        }

        static string Key(ComparedShare row) => $"{string.Join('&', row.Conditions)}:{row.Column}={row.Outcome}";
    }

    [Fact]
    public void Of_SameSetTwice_FindsNothing() => Assert.All(
        ScoutComparison.Of(OurTeam.Offense.Plays, OurTeam.Offense.Plays, Unit.Offense, SelfScoutOptions.Default),
        row => Assert.Equal((0, 1.0), (row.Difference, Math.Round(row.QValue, 9))));
}
