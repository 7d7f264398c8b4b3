using CsCheck;
using Tendency.Inference.Comparisons;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Comparisons;

public sealed class ExactTestLawTests
{
    private static readonly Gen<(int Hits, int Cell, int TotalHits, int Total)> Stratum =
        from a in Gen.Int[0, 7]
        from b in Gen.Int[0, 7]
        from c in Gen.Int[0, 12]
        from d in Gen.Int[0, 12]
        select (a, a + b, a + c, a + b + c + d);

    [Fact]
    public void Stratified_OneStratum_IsFisher() => Law.Holds(
        Stratum,
        300,
        s =>
        {
            var exact = Run([s]);
            var fisher = FisherTest.Run(s.Hits, s.Cell - s.Hits, s.TotalHits - s.Hits, s.Total - s.Cell - s.TotalHits + s.Hits);
            Assert.Equal(fisher.TwoSided, exact.TwoSided, 1e-12);
            Assert.Equal(fisher.Less, exact.Less, 1e-12);
            Assert.Equal(fisher.MidTwoSided, exact.MidTwoSided, 1e-12);
        });

    [Fact]
    public void Stratified_OrderEmptyStrataAndLabels_ChangeNothing() => Law.Holds(
        Stratum.Array[1, 6],
        300,
        strata =>
        {
            var forward = Run(strata);
            var padded = Run([.. strata.Reverse(), (0, 0, 3, 5), (0, 0, 0, 0)]);
            var misses = Run([.. strata.Select(s => (s.Cell - s.Hits, s.Cell, s.Total - s.TotalHits, s.Total))]);
            Assert.Equal(forward.TwoSided, padded.TwoSided, 1e-12);
            Assert.Equal(forward.TwoSided, misses.TwoSided, 1e-12);
            Assert.Equal(forward.Less, misses.Greater, 1e-12);
            Assert.Equal(forward.Z, -misses.Z, 1e-9);
            Assert.InRange(forward.TwoSided, 0, 1);
            Assert.True(forward.MidTwoSided <= forward.TwoSided);
            Assert.True(forward.Less + forward.Greater >= 1 - 1e-12);
        });

    // Brute force: deal every stratum's labels in all ways and count.
    [Fact]
    public void Stratified_SmallStrata_AgreesWithDealingAllLabels()
    {
        (int Hits, int Cell, int TotalHits, int Total)[] strata = [(2, 3, 3, 6), (1, 2, 2, 5), (3, 3, 4, 7)];
        var counts = new Dictionary<int, long> { [0] = 1 };
        foreach (var s in strata)
        {
            var next = new Dictionary<int, long>();
            for (var labels = 0; labels < 1 << s.Total; labels++)
            {
                if (System.Numerics.BitOperations.PopCount((uint)labels) != s.TotalHits)
                {
                    continue;
                }

                var inCell = System.Numerics.BitOperations.PopCount((uint)labels & ((1u << s.Cell) - 1));
                foreach (var (sum, ways) in counts)
                {
                    next[sum + inCell] = next.GetValueOrDefault(sum + inCell) + ways;
                }
            }

            counts = next;
        }

        double all = counts.Values.Sum();
        var exact = Run(strata);
        Assert.Equal(counts.Where(pair => pair.Key >= 6).Sum(pair => pair.Value) / all, exact.Greater, 1e-12);
        Assert.Equal(counts.Where(pair => pair.Value <= counts[6]).Sum(pair => pair.Value) / all, exact.TwoSided, 1e-12);
        Assert.Equal(counts.Sum(pair => pair.Key * pair.Value) / all, exact.Expected, 1e-12);
        Assert.Equal(counts.Sum(pair => (pair.Key - exact.Expected) * (pair.Key - exact.Expected) * pair.Value) / all, exact.Variance, 1e-12);
    }

    [Fact]
    public void Homogeneity_RowsAndColumnsMoved_ChangesNothing() => Law.Holds(
        Gen.Int[0, 9].Array[12],
        300,
        counts =>
        {
            var table = new CountTable(3, 4, counts);
            var test = HomogeneityTest.Run(table);
            var moved = HomogeneityTest.Run(new CountTable(4, 3, table.Transposed() is var t ? Enumerable.Range(0, 12).Select(i => t[3 - (i / 3), i % 3]) : []));
            Assert.Equal(test.G, moved.G, 1e-9);
            Assert.Equal(test.P, moved.P, 1e-9);
            Assert.InRange(test.P, 0, 1);
        });

    private static StratifiedResult Run((int Hits, int Cell, int TotalHits, int Total)[] strata) => StratifiedTest.Run(
        [.. strata.Select(s => s.Hits)],
        [.. strata.Select(s => s.Cell)],
        [.. strata.Select(s => s.TotalHits)],
        [.. strata.Select(s => s.Total)]);
}
