using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Clusters;

public sealed class GroupedReferenceTests
{
    [Fact]
    public void GroupedShare_ReferenceGrid_Within1e11()
    {
        foreach (var row in Grid.Read("grid_clusters"))
        {
            var share = new GroupedShare(Groups(row));
            row.Absolute("p", share.Share!.Value, 1e-11);
            row.Absolute("var_linear", share.LinearVariance ?? double.NaN, 1e-11);
            row.Absolute("deff_linear", share.LinearDesignEffect ?? double.NaN, 1e-11);
            row.Absolute("n_eff_linear", share.LinearDesignEffect is > 0 and var effect ? share.Trials / effect : double.NaN, 1e-9);
            var wide = share.KornGraubard(0.95);
            row.Absolute("kg_lo", wide?.Low ?? double.NaN, 1e-9);
            row.Absolute("kg_hi", wide?.High ?? double.NaN, 1e-9);
        }
    }

    [Fact]
    public void Bootstrap_AllResamples_Within1e12()
    {
        foreach (var row in Grid.Read("grid_cluster_bootstrap_exact"))
        {
            var exact = GroupBootstrap.Exact(Groups(row));
            row.Absolute("boot_mean", exact.Mean, 1e-12);
            row.Absolute("boot_sd", exact.StandardDeviation, 1e-12);
            row.Absolute("q025", exact.Quantile(0.025), 1e-12);
            row.Absolute("q05", exact.Quantile(0.05), 1e-12);
            row.Absolute("q50", exact.Quantile(0.5), 1e-12);
            row.Absolute("q95", exact.Quantile(0.95), 1e-12);
            row.Absolute("q975", exact.Quantile(0.975), 1e-12);
            row.Absolute("min_rate", exact.Values[0], 1e-12);
            row.Absolute("max_rate", exact.Values[^1], 1e-12);
            row.Relative("prob_min", exact.Probabilities[0], 1e-12);
        }
    }

    // Mean within 5 sd/sqrt B; quantiles at most one attainable value away from the exact one.
    [Fact]
    public void Bootstrap_Simulated_ApproachesAllResamples()
    {
        const int Draws = 20_000;
        foreach (var row in Grid.Read("grid_cluster_bootstrap_exact"))
        {
            var exact = GroupBootstrap.Exact(Groups(row));
            var drawn = GroupBootstrap.Simulate(Groups(row), Draws, 11);
            Assert.Equal(exact.Mean, drawn.Mean, 5 * exact.StandardDeviation / Math.Sqrt(Draws));
            Assert.InRange(drawn.Quantile(0.5), exact.Quantile(0.48), exact.Quantile(0.52));
            Assert.InRange(drawn.Quantile(0.975), exact.Quantile(0.97), exact.Quantile(0.98));
        }
    }

    [Fact]
    public void Homogeneity_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_drift_homogeneity"))
        {
            var (test, exact) = Drift.Homogeneity(Table(row));
            row.Relative("G", test.G, 1e-12, 1e-13);
            row.Absolute("df", test.Freedom, 0);
            row.Relative("p_chisq", test.P, 1e-10);
            row.Relative("p_exact", exact ?? double.NaN, 1e-9, 1e-15);
        }
    }

    [Fact]
    public void ChangePoint_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_change_point"))
        {
            var table = Table(row);
            var change = ChangePoint.Find(table)!;
            row.Absolute("split_after", change.After, 0);
            row.Relative("max_G", change.G, 1e-12, 1e-12);
            row.Relative("p_perm", ChangePoint.PermutationP(table)!.Value, 1e-9);
        }
    }

    // In a longer study with nothing changing, a nominal 10 % test gave 2-12 % false alarms. 120 opponents here:
    // the standard error of a 10 % rate is 2.7 points, so at most 20 % leaves 3 of them above 12 %.
    [Fact]
    public void Bootstrap_NothingChanges_SeldomAlarms()
    {
        var alarms = 0;
        for (var seed = 0; seed < 120; seed++)
        {
            var table = new RandomMix([0.45, 0.55], 0.03, seed).Counts([12, 14, 10, 13, 12, 11]);
            alarms += Drift.Bootstrap(table, 0.03, 199, seed + 1000).ChangeP <= 0.10 ? 1 : 0;
        }

        Assert.InRange(alarms, 0, 24);
    }

    // The quick statistics of the bootstrap are the ones the grids check.
    [Fact]
    public void GroupG_ReferenceTables_AgreesWithTheTests()
    {
        foreach (var row in Grid.Read("grid_change_point").Concat(Grid.Read("grid_drift_homogeneity")))
        {
            var table = Table(row);
            var counts = Enumerable.Range(0, table.Rows * 2).Select(i => table[i / 2, i % 2]).ToArray();
            var (spread, change) = new GroupG(table.RowTotals(), 2).Of(counts);
            Assert.Equal(HomogeneityTest.Run(table).G, spread, 1e-10);
            Assert.Equal(ChangePoint.Find(table)!.G, change, 1e-10);
        }
    }

    [Fact]
    public void Bootstrap_ClearChange_IsFoundAndRepeats()
    {
        var table = new CountTable(6, 2, [18, 2, 17, 3, 19, 1, 3, 17, 2, 18, 4, 16]);
        var first = Drift.Bootstrap(table, 0.02, 999, 5);
        Assert.Equal(first, Drift.Bootstrap(table, 0.02, 999, 5));
        Assert.Equal(3, ChangePoint.Find(table)!.After);
        Assert.True(first.ChangeP <= 0.01, $"p = {first.ChangeP}");
    }

    private static List<GroupCount> Groups(GridRow row) =>
        [.. row.Numbers("x").Zip(row.Numbers("m"), (hits, trials) => new GroupCount(hits, trials))];

    private static CountTable Table(GridRow row)
    {
        int[] x = row.Integers("x"), n = row.Integers("n");
        return new CountTable(x.Length, 2, x.SelectMany((hits, g) => new[] { hits, n[g] - hits }));
    }
}
