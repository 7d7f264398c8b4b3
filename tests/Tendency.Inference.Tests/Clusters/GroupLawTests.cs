using CsCheck;
using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Clusters;

public sealed class GroupLawTests
{
    private static readonly Gen<GroupCount[]> Groups = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], (hits, misses) => new GroupCount(hits, hits + misses))
        .Array[1, 6].Where(groups => groups.Any(group => group.Trials > 0));

    [Fact]
    public void GroupedShare_HitsAndMissesExchanged_Mirrors() => Law.Holds(
        Gen.Select(Groups, Gen.Double[0, 0.5]),
        200,
        (groups, rho) =>
        {
            var share = new GroupedShare(groups);
            var turned = new GroupedShare(Turned(groups));
            Assert.Equal(share.Share!.Value, 1 - turned.Share!.Value, 1e-12);
            Assert.Equal(share.Interval(rho, 0.9).Low, 1 - turned.Interval(rho, 0.9).High, 1e-12);
            Assert.Equal(share.Trials, share.DesignEffect(rho)!.Value * share.EffectiveTrials(rho), 1e-9);
            Assert.True(share.DesignEffect(rho) >= 1 - 1e-12);
            Assert.Equal(share.LinearVariance ?? 0, turned.LinearVariance ?? 0, 1e-12);
            Assert.True(share.Interval(rho, 0.9).Width >= share.Interval(0, 0.9).Width - 1e-12);
            Assert.Equal(share.KornGraubard(0.9)?.Low ?? 0, 1 - (turned.KornGraubard(0.9)?.High ?? 1), 1e-9);
        });

    [Fact]
    public void Correlation_HitsAndMissesExchanged_StaysTheSame() => Law.Holds(
        Groups,
        200,
        groups =>
        {
            var correlation = WithinGroupCorrelation.OfOneCell(groups);
            var turned = WithinGroupCorrelation.OfOneCell(Turned(groups));
            Assert.Equal(correlation.BetweenSquares, turned.BetweenSquares, 1e-11);
            Assert.Equal(correlation.WithinSquares, turned.WithinSquares, 1e-11);
            Assert.InRange(correlation.Usable, 0, 1);
            Assert.True(correlation.Usable >= correlation.AtLeastZero);
        });

    // Mean of hits and misses are 1; a resample of one group has its rate; quantiles rise.
    [Fact]
    public void Bootstrap_AnyGroups_IsADistributionThatMirrors() => Law.Holds(
        Groups,
        100,
        groups =>
        {
            var exact = GroupBootstrap.Exact(groups);
            var turned = GroupBootstrap.Exact(Turned(groups));
            Assert.Equal(1, exact.Probabilities.Sum(), 1e-12);
            Assert.Equal(exact.Mean, 1 - turned.Mean, 1e-12);
            Assert.Equal(exact.StandardDeviation, turned.StandardDeviation, 1e-12);
            Assert.Equal(groups.Where(g => g.Trials > 0).Min(g => g.Hits / g.Trials), exact.Values[0], 1e-12);
            Assert.True(exact.Quantile(0.1) <= exact.Quantile(0.5) && exact.Quantile(0.5) <= exact.Quantile(0.9));
        });

    [Fact]
    public void ChangePoint_TimeReversedOrColumnsMoved_FindsTheSameChange() => Law.Holds(
        Gen.Int[0, 9].Array[3].Array[2, 7],
        200,
        games =>
        {
            var found = ChangePoint.Find(new CountTable(games))!;
            Assert.Equal(found.G, ChangePoint.Find(new CountTable([.. games.Reverse()]))!.G, 1e-9);
            Assert.Equal(found.G, ChangePoint.Find(new CountTable([.. games.Select(game => game.Reverse().ToArray())]))!.G, 1e-9);
            Assert.InRange(found.After, 1, games.Length - 1);
            Assert.InRange(found.G, 0, HomogeneityTest.Run(new CountTable(games)).G + 1e-9);
            Assert.InRange(ChangePoint.PermutationP(new CountTable(games))!.Value, 0, 1);
        });

    // What permuting single plays would give: of two groups it is the exact test of their table, ordered by G.
    [Fact]
    public void Drift_GroupsMoved_ExactPStaysTheSame() => Law.Holds(
        Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6]).Array[2, 4],
        100,
        games =>
        {
            var (test, p) = Drift.Homogeneity(Table(games));
            var (_, moved) = Drift.Homogeneity(Table([.. games.Reverse()]));
            Assert.Equal(p!.Value, moved!.Value, 1e-12);
            Assert.InRange(p.Value, 0, 1);
            Assert.InRange(test.P, 0, 1);
        });

    private static CountTable Table((int Hits, int Misses)[] games) => new([.. games.Select(game => new[] { game.Hits, game.Misses })]);

    private static GroupCount[] Turned(GroupCount[] groups) => [.. groups.Select(group => new GroupCount(group.Trials - group.Hits, group.Trials))];
}
