using CsCheck;
using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Shrinkage;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Clusters;

public sealed class ClusterLawTests
{
    [Fact]
    public void EffectiveSize_AnyGroups_StaysBelowTheCountAndIgnoresScale() => Law.Holds(
        Gen.Select(Gen.Int[0, 30].Array[1, 10], Gen.Double[0.1, 3].Array[10], Gen.Double[-0.2, 1]),
        300,
        (sizes, weights, rho) =>
        {
            (double, double)[] groups = [.. sizes.Select((m, g) => ((double)m, weights[g]))];
            var n = EffectiveSize.OfWeightedGroups(groups, rho);
            Assert.InRange(n, 0, sizes.Sum());
            Assert.Equal(n, EffectiveSize.OfWeightedGroups(groups.Select(g => (g.Item1, g.Item2 * 7)), rho), 1e-9);
            double[] each = [.. sizes.SelectMany((m, g) => Enumerable.Repeat(weights[g], m))];
            int[] group = [.. sizes.SelectMany((m, g) => Enumerable.Repeat(g, m))];
            Assert.Equal(n, EffectiveSize.Of(each, group, rho), 1e-9);
            if (rho <= 0)
            {
                Assert.Equal(EffectiveSize.Kish(each), n, 1e-9);
            }
        });

    [Fact]
    public void EffectiveSize_OneHeavyPlay_CountsAsOne()
    {
        Assert.Equal(1, EffectiveSize.Kish([0, 0, 3]));
        Assert.Equal(0, EffectiveSize.Kish([]));
        Assert.Equal(0.25, EffectiveSize.RecencyWeight(8, 4));
    }

    [Fact]
    public void EffectiveSize_CellsAlike_IsThatOfGroups() => Law.Holds(
        Gen.Select(Gen.Int[0, 12].Array[1, 6].Array[1, 8], Gen.Double[0.1, 3].Array[8], Gen.Double[0, 1].Array[2]),
        300,
        (groups, weights, rho) =>
        {
            var (inCell, across) = (rho[0], rho[1]);
            (IEnumerable<double> Cells, double Weight)[] sizes = [.. groups.Select((group, g) => (group.Select(n => (double)n), weights[g]))];
            Assert.Equal(EffectiveSize.OfWeightedGroups(sizes.Select(group => (group.Cells.Sum(), group.Weight)), inCell), EffectiveSize.OfCells(sizes, inCell, inCell), 1e-9);
            Assert.Equal(EffectiveSize.OfWeightedGroups(sizes.SelectMany(group => group.Cells.Select(n => (n, group.Weight))), inCell), EffectiveSize.OfCells(sizes, inCell, 0), 1e-9);
            Assert.InRange(EffectiveSize.OfCells(sizes, inCell, across), 0, sizes.Sum(group => group.Cells.Sum()));
        });

    [Fact]
    public void Correlation_AcrossOneCell_EqualsThatOfTheCell()
    {
        GroupCount[] cell = [new(7, 9), new(2, 8), new(5, 6), new(0, 0)];
        Assert.Equal(WithinGroupCorrelation.OfOneCell(cell).Estimate!.Value, WithinGroupCorrelation.AcrossCells([[cell]]).Estimate!.Value, 1e-12);
    }

    [Fact]
    public void Correlation_CellsOfAGroupGoOppositeWays_ShowsInCellsAndNotAcross()
    {
        GroupCount[] one = [new(9, 10), new(1, 10), new(9, 10), new(1, 10)];
        GroupCount[] other = [new(1, 10), new(9, 10), new(1, 10), new(9, 10)];
        Assert.True(WithinGroupCorrelation.Pooled([one, other]).Estimate > 0.5);
        Assert.True(WithinGroupCorrelation.AcrossCells([[one, other]]).Estimate < 0);
        Assert.True(WithinGroupCorrelation.AcrossCells([[one, one]]).Estimate > 0.5);
    }

    [Fact]
    public void Correlation_PooledCopies_EqualsOneCell()
    {
        GroupCount[] cell = [new(7, 9), new(2, 8), new(5, 6), new(0, 0)];
        var one = WithinGroupCorrelation.OfOneCell(cell);
        var pooled = WithinGroupCorrelation.Pooled([cell, cell, [new GroupCount(3, 4)]]);
        Assert.Equal(one.Estimate!.Value, pooled.Estimate!.Value, 1e-12);
        Assert.Equal(3, pooled.Groups);
    }

    [Fact]
    public void Correlation_AllPlaysTheSame_IsUndefinedAndFloored()
    {
        var same = WithinGroupCorrelation.OfOneCell([new(4, 4), new(5, 5), new(6, 6)]);
        Assert.Null(same.Estimate);
        Assert.Equal(0.02, same.Usable);
        var many = WithinGroupCorrelation.OfOneCell(Enumerable.Repeat(new GroupCount(2, 4), 6));
        Assert.Equal(0, many.Usable);
    }

    [Fact]
    public void GroupedShare_NothingOrOneGroup_ClaimsNothing()
    {
        var none = new GroupedShare([new GroupCount(0, 0)]);
        Assert.Null(none.Share);
        Assert.Equal((0, 1), (none.Interval(0.02, 0.95).Low, none.Interval(0.02, 0.95).High));
        Assert.Null(new GroupedShare([new GroupCount(3, 5)]).KornGraubard(0.95));
    }

    [Fact]
    public void BackOff_AnyPath_LiesBetweenCellAndParent() => Law.Holds(
        Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20], Gen.Int[0, 20], Gen.Int[0, 20], Gen.Double[0.5, 60]),
        300,
        (x, misses, moreHits, moreMisses, strength) =>
        {
            var share = BackOff.Share([x + moreHits, x], [x + moreHits + misses + moreMisses, x + misses], [strength]);
            var parent = share.PathMeans[0];
            var raw = x + misses == 0 ? parent : (double)x / (x + misses);
            Assert.InRange(share.Mean, Math.Min(raw, parent) - 1e-12, Math.Max(raw, parent) + 1e-12);
            Assert.True(share.Mean is > 0 and < 1);
            Assert.Equal(share.Mean, share.A / (share.A + share.B), 1e-12);
            Assert.True(share.Interval(0.5).Low >= share.Interval(0.9).Low);
        });

    [Fact]
    public void BackOff_InfiniteStrength_IsTheParent()
    {
        var share = BackOff.Share([30, 9], [50, 10], [double.PositiveInfinity]);
        Assert.Equal(share.PathMeans[0], share.Mean);
        Assert.Equal(0, share.Interval(0.95).Width);
    }

    [Fact]
    public void BackOff_CellLargerThanParent_Throws() =>
        Assert.Throws<ArgumentException>(() => BackOff.Share([3, 9], [50, 10], [12]));

    // Rows of a Dirichlet-multinomial with known strength: the fit comes back near it. 400 rows of 12; the spread of ln M is about 0.1.
    [Fact]
    public void Fit_RowsDrawnWithKnownStrength_FindsIt()
    {
        var table = new RandomMix([0.5, 0.3, 0.2], 1 / 13.0, 4).Counts([.. Enumerable.Repeat(12, 400)]);
        var fit = DirichletMultinomial.Fit([.. Enumerable.Range(0, 400).Select(r => (IReadOnlyList<int>)[table[r, 0], table[r, 1], table[r, 2]])]);
        Assert.InRange(fit.Strength, 8.5, 17);
        Assert.Equal(0.5, fit.Mean[0], 0.05);
    }

    // 100 opponents of 20 cells each. The standard error of a 95 % rate over 2,000 intervals is 0.5 points, more with shared groups: four of
    // them on each side of what longer runs gave (94.4 to 96.5 %). Intervals that take plays as independent fall to 91 % at rho = 0.08.
    [Theory]
    [InlineData(3, 0.0)]
    [InlineData(4, 0.03)]
    [InlineData(6, 0.08)]
    public void Coverage_GroupedShares_IsNearTheLevel(int groups, double rho)
    {
        var random = new Random(20);
        int covered = 0, all = 0;
        for (var opponent = 0; opponent < 100; opponent++)
        {
            double[] shares = [.. Enumerable.Range(0, 20).Select(_ => 0.1 + (0.8 * random.NextDouble()))];
            List<List<GroupCount>> cells = [.. shares.Select(share => Draw(share, groups, rho, random))];
            var correlation = WithinGroupCorrelation.Pooled(cells).AtLeastZero;
            foreach (var (cell, share) in cells.Zip(shares))
            {
                var estimate = new GroupedShare(cell);
                all += estimate.Trials >= 5 ? 1 : 0;
                covered += estimate.Trials >= 5 && estimate.Interval(correlation, 0.95).Contains(share) ? 1 : 0;
            }
        }

        Assert.InRange((double)covered / all, 0.925, 0.985);
    }

    // Counted over sets of groups instead of orders: the same as going through all 120 orders.
    [Fact]
    public void ChangePoint_AllOrders_AgreesWithSets()
    {
        int[][] games = [[8, 2], [5, 6], [9, 3], [2, 7], [3, 8]];
        var observed = ChangePoint.Find(new CountTable(games))!.G;
        var orders = Orders([0, 1, 2, 3, 4]).ToList();
        var reached = orders.Count(order => ChangePoint.Find(new CountTable([.. order.Select(g => games[g])]))!.G >= observed * (1 - 1e-9));
        Assert.Equal(120, orders.Count);
        Assert.Equal(reached / 120.0, ChangePoint.PermutationP(new CountTable(games))!.Value, 1e-12);
    }

    private static List<GroupCount> Draw(double share, int groups, double rho, Random random)
    {
        int[] sizes = [.. Enumerable.Range(0, groups).Select(_ => random.Next(0, 9))];
        var table = new RandomMix([share, 1 - share], rho, random.Next()).Counts(sizes);
        return [.. sizes.Select((size, g) => new GroupCount(table[g, 0], size))];
    }

    private static IEnumerable<int[]> Orders(int[] items) => items.Length == 1
        ? [items]
        : items.SelectMany(first => Orders([.. items.Where(item => item != first)]).Select(rest => (int[])[first, .. rest]));
}
