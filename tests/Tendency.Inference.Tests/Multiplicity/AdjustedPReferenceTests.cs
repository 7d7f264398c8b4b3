using Tendency.Inference.Multiplicity;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Multiplicity;

public sealed class AdjustedPReferenceTests
{
    [Fact]
    public void AdjustedP_ReferenceGrid_Within1e13()
    {
        foreach (var rows in Grid.ReadCases("grid_multiple_testing"))
        {
            double[] p = [.. rows.Select(row => row.Number("p"))];
            Check(rows, "bonferroni", AdjustedP.Bonferroni(p));
            Check(rows, "holm", AdjustedP.Holm(p));
            Check(rows, "hochberg", AdjustedP.Hochberg(p));
            Check(rows, "bh", AdjustedP.BenjaminiHochberg(p));
            Check(rows, "by", AdjustedP.BenjaminiYekutieli(p));
            Check(rows, "q_l05", AdjustedP.StoreyQ(p));
            Check(rows, "q_l05_plus1", AdjustedP.StoreyQ(p, plusOne: true));
            rows[0].Absolute("pi0_l05", AdjustedP.NullShare(p), 1e-13);
            rows[0].Absolute("pi0_l05_plus1", AdjustedP.NullShare(p, plusOne: true), 1e-13);
        }
    }

    // Benjamini and Hochberg 1995, sec. 3.2: 15 p-values, 4 rejections at 5 %, 3 by Bonferroni.
    [Fact]
    public void BenjaminiHochberg_ExampleOfThePaper_RejectsFour()
    {
        double[] p = [0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719, 0.6528, 0.7590, 1.0];
        var adjusted = AdjustedP.BenjaminiHochberg(p);
        Assert.Equal(4, adjusted.Count(q => q <= 0.05));
        Assert.Equal(3, AdjustedP.Bonferroni(p).Count(q => q <= 0.05));
        var published = Grid.Read("published_benjamini_hochberg1995").Where(row => row["quantity"] == "bh_adjusted").ToList();
        Assert.Equal(15, published.Count);
        for (var i = 0; i < p.Length; i++)
        {
            published[i].Absolute("computed", adjusted[i], 1e-13);
        }
    }

    [Fact]
    public void BenjaminiHochberg_EmptyList_IsEmpty() => Assert.Empty(AdjustedP.BenjaminiHochberg([]));

    private static void Check(List<GridRow> rows, string column, double[] actual)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            rows[i].Absolute(column, actual[i], 1e-13);
        }
    }
}
