using CsCheck;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Information;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Information;

public sealed class InformationLawTests
{
    private static readonly Gen<int[]> Counts = Gen.Int[0, 30].Array[1, 8].Where(counts => counts.Sum() > 0);

    [Fact]
    public void Entropy_AnyMix_LiesBelowThatOfAnEvenOneAndFallsWhenCategoriesJoin() => Law.Holds(
        Counts,
        300,
        counts =>
        {
            var bits = Entropy.Bits(counts)!.Value;
            var filled = counts.Count(count => count > 0);
            Assert.InRange(bits, 0, Math.Log2(filled) + 1e-12);
            Assert.Equal(bits, Entropy.Bits([.. counts.Reverse(), 0])!.Value, 1e-12);
            Assert.Equal(bits, Entropy.Bits(counts.Select(count => 7 * count))!.Value, 1e-12);
            Assert.True(Entropy.MillerMadow(counts) >= bits);
            if (counts.Length > 1)
            {
                Assert.True(Entropy.Bits([counts[0] + counts[1], .. counts[2..]]) <= bits + 1e-12);
            }
        });

    // Chain rule, symmetry, and the identity with the G statistic.
    [Fact]
    public void MutualInformation_AnyTable_KeepsItsIdentities() => Law.Holds(
        Gen.Int[0, 15].Array[12].Where(counts => counts.Sum() > 0),
        300,
        counts =>
        {
            var table = new CountTable(3, 4, counts);
            var found = MutualInformation.OfTable(table)!;
            var turned = MutualInformation.OfTable(table.Transposed())!;
            Assert.Equal(found.RowBits + found.ColumnBits - found.JointBits, found.PlugIn, 1e-12);
            Assert.Equal(found.JointBits - found.RowBits, found.ColumnGivenRow, 1e-12);
            Assert.Equal(found.RowCorrected + found.ColumnCorrected - found.JointCorrected, found.Corrected, 1e-12);
            Assert.Equal(found.PlugIn, turned.PlugIn, 1e-12);
            Assert.Equal(HomogeneityTest.Run(table).G, found.G, 1e-9);
            Assert.InRange(found.PlugIn, 0, Math.Min(found.RowBits, found.ColumnBits) + 1e-12);
        });
}
