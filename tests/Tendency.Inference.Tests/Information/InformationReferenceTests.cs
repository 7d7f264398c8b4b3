using Tendency.Inference.Comparisons;
using Tendency.Inference.Information;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Information;

public sealed class InformationReferenceTests
{
    // 1e-12 relative; values that are differences of entropies carry their rounding, a few 1e-16, as absolute error.
    [Fact]
    public void MutualInformation_ReferenceGrid_Within1e12()
    {
        foreach (var row in Grid.Read("grid_information"))
        {
            var found = MutualInformation.OfTable(new CountTable(row.Integer("nrow"), row.Integer("ncol"), row.Integers("counts")))!;
            row.Absolute("n", found.Observations, 0);
            row.Relative("H_row", found.RowBits, 1e-12, 1e-15);
            row.Relative("H_col", found.ColumnBits, 1e-12, 1e-15);
            row.Relative("H_joint", found.JointBits, 1e-12, 1e-15);
            row.Relative("H_col_given_row", found.ColumnGivenRow, 1e-12, 2e-15);
            row.Relative("MI", found.PlugIn, 1e-12, 2e-15);
            row.Relative("H_row_mm", found.RowCorrected, 1e-12, 1e-15);
            row.Relative("H_col_mm", found.ColumnCorrected, 1e-12, 1e-15);
            row.Relative("H_joint_mm", found.JointCorrected, 1e-12, 1e-15);
            row.Relative("MI_mm", found.Corrected, 1e-12, 2e-15);
            row.Relative("MI_indep", found.BeyondIndependence, 1e-12, 2e-15);
            row.Relative("G", found.G, 1e-12, 1e-11);
        }
    }

    [Fact]
    public void Entropy_NothingSeen_IsUndefined()
    {
        Assert.Null(Entropy.Bits([]));
        Assert.Null(Entropy.MillerMadow([0, 0]));
        Assert.Equal(0, Entropy.Bits([7]));
        Assert.Null(MutualInformation.OfTable(new CountTable(2, 2, [0, 0, 0, 0])));
    }
}
