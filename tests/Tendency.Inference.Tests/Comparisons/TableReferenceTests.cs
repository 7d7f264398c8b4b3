using Tendency.Inference.Comparisons;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Comparisons;

public sealed class TableReferenceTests
{
    [Fact]
    public void Homogeneity_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_gtest"))
        {
            var test = HomogeneityTest.Run(Table(row));
            row.Relative("G", test.G, 1e-12, 1e-12);
            row.Absolute("df", test.Freedom, 0);
            row.Relative("p", test.P, 1e-10);
            row.Relative("X2", test.PearsonX2, 1e-12, 1e-12);
            row.Relative("pX2", test.PearsonP, 1e-10);
            row.Relative("q", test.WilliamsQ, 1e-12);
            row.Relative("Gadj", test.WilliamsG, 1e-12, 1e-12);
            row.Relative("pGadj", test.WilliamsP, 1e-10);
            row.Relative("V", test.CramersV ?? double.NaN, 1e-12);
            row.Relative("minE", test.SmallestExpected ?? double.NaN, 1e-12);
        }
    }

    [Fact]
    public void FreemanHalton_ReferenceGrid_Within1e9Relative()
    {
        foreach (var row in Grid.Read("grid_exact_rxc"))
        {
            var table = Table(row);
            row.Relative("fh_p", FreemanHaltonTest.P(table) ?? double.NaN, 1e-9, 1e-15);
            row.Relative("g", HomogeneityTest.Run(table).G, 1e-12);
        }
    }

    // "Job satisfaction" (Agresti 2002, p. 57), the 4 x 4 example of R's fisher.test.
    [Fact]
    public void FreemanHalton_JobSatisfaction_GivesPrintedP()
    {
        var p = FreemanHaltonTest.P(new CountTable(4, 4, [1, 2, 1, 0, 3, 3, 6, 1, 10, 10, 14, 9, 6, 7, 12, 11]));
        Assert.Equal(0.78268493896563884, p!.Value, 1e-9);
    }

    [Fact]
    public void FreemanHalton_TwoByTwo_AgreesWithFisher()
    {
        var p = FreemanHaltonTest.P(new CountTable(2, 2, [10, 2, 3, 15]));
        Assert.Equal(FisherTest.Run(10, 2, 3, 15).TwoSided, p!.Value, 1e-13);
    }

    // Exact p of G over two-column tables from the drift grid; five Monte Carlo errors and the + 1.
    [Fact]
    public void PermutationP_DriftGrid_ApproachesExactP()
    {
        const int Draws = 1999;
        foreach (var row in Grid.Read("grid_drift_homogeneity"))
        {
            int[] x = row.Integers("x"), n = row.Integers("n");
            var table = new CountTable(x.Length, 2, x.SelectMany((hits, g) => new[] { hits, n[g] - hits }));
            var p = row.Number("p_exact");
            row.Absolute("p_exact", HomogeneityTest.PermutationP(table, Draws, 3), (5 * Math.Sqrt(p * (1 - p) / Draws)) + (1.0 / Draws));
        }
    }

    [Fact]
    public void Homogeneity_EmptyTable_HasP1()
    {
        var test = HomogeneityTest.Run(new CountTable(2, 3, [0, 0, 0, 0, 0, 0]));
        Assert.Equal((0, 0, 1), (test.Freedom, test.G, test.P));
        Assert.Equal(1, FreemanHaltonTest.P(new CountTable(2, 2, [3, 0, 4, 0])));
    }

    private static CountTable Table(GridRow row) => new(row.Integer("nrow"), row.Integer("ncol"), row.Integers("counts"));
}
