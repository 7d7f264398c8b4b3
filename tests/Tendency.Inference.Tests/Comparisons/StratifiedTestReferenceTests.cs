using Tendency.Inference.Comparisons;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Comparisons;

public sealed class StratifiedTestReferenceTests
{
    [Fact]
    public void Run_ReferenceGrid_Within1e9Relative()
    {
        foreach (var row in Grid.Read("grid_tell_stratified"))
        {
            var result = StratifiedTest.Run(row.Integers("a"), row.Integers("nS"), row.Integers("X"), row.Integers("N"));
            row.Absolute("A", result.Observed, 0);
            row.Relative("E", result.Expected, 1e-12);
            row.Relative("V", result.Variance, 1e-12);
            row.Relative("Z", result.Z, 1e-9, 1e-12);
            row.Relative("p_less", result.Less, 1e-9, 1e-15);
            row.Relative("p_greater", result.Greater, 1e-9, 1e-15);
            row.Relative("p_two", result.TwoSided, 1e-9, 1e-15);
            row.Relative("midp_two", result.MidTwoSided, 1e-9, 1e-15);
            row.Relative("p_absdev", result.AtLeastAsFar, 1e-9, 1e-15);
        }
    }

    // R's help page of mantelhaen.test ("Rabbits", Agresti 1990): injections with immediate or delayed treatment at five doses.
    [Fact]
    public void Run_RabbitsOfAgresti_GivesPrintedExactP()
    {
        var result = StratifiedTest.Run([0, 3, 6, 5, 2], [6, 6, 6, 6, 2], [0, 3, 8, 11, 7], [11, 12, 12, 12, 7]);
        Assert.Equal(0.03994, result.TwoSided, 0.00001);
    }

    [Fact]
    public void Run_NothingCouldVary_GivesP1AndZ0()
    {
        var result = StratifiedTest.Run([3, 0], [3, 0], [5, 2], [5, 9]);
        Assert.Equal(1, result.TwoSided);
        Assert.Equal(0, result.Z);
        Assert.Equal(0.5, result.MidTwoSided);
    }

    [Fact]
    public void Run_ImpossibleCounts_Throws() =>
        Assert.Throws<ArgumentException>(() => StratifiedTest.Run([4], [3], [5], [9]));
}
