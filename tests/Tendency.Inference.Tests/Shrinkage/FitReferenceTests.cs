using Tendency.Inference.Shrinkage;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Shrinkage;

public sealed class FitReferenceTests
{
    [Fact]
    public void BetaBinomial_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_betabinomial_mle"))
        {
            var fit = DirichletMultinomial.FitShares(row.Integers("x"), row.Integers("n"));
            Check(row, fit, "mu", 0);
            row.Relative("alpha", fit.Alpha(0) ?? double.NaN, Tolerance(row));
            row.Relative("beta", fit.Alpha(1) ?? double.NaN, Tolerance(row));
            row.Relative("rho", fit.Rho, Tolerance(row));
        }
    }

    [Fact]
    public void DirichletMultinomial_ReferenceGrid_WithinTolerance()
    {
        foreach (var rows in Grid.ReadCases("grid_dirichletmultinomial_mle"))
        {
            var counts = rows[0].Integers("counts").Chunk(rows[0].Integer("J")).Cast<IReadOnlyList<int>>().ToList();
            var fit = DirichletMultinomial.Fit(counts);
            for (var k = 0; k < rows.Count; k++)
            {
                Check(rows[k], fit, "mean", k);
                rows[k].Relative("alpha", fit.Alpha(k) ?? double.NaN, Tolerance(rows[k]));
            }
        }
    }

    // Geissler's families of 12 (Lindsey and Altham 1998): boys among 12 children in 6,115 families.
    [Fact]
    public void BetaBinomial_GeisslerFamilies_GivesPublishedLikelihood()
    {
        int[] families = [3, 24, 104, 286, 670, 1033, 1343, 1112, 829, 478, 181, 45, 7];
        int[] boys = [.. families.SelectMany((count, b) => Enumerable.Repeat(b, count))];
        var fit = DirichletMultinomial.FitShares(boys, [.. boys.Select(_ => 12)]);
        Assert.Equal(-12492.871358551209, fit.LogLikelihood, 1e-6);
        Assert.Equal(34.102857615801582, fit.Alpha(0)!.Value, 1e-3);
        Assert.Equal(31.578234155042065, fit.Alpha(1)!.Value, 1e-3);
    }

    [Fact]
    public void Strength_FewSiblings_IsTheUsualOne()
    {
        int[][] siblings = [.. Enumerable.Range(0, 14).Select(i => new[] { i % 3, 4 })];
        Assert.Equal(12, PriorStrength.OfSiblings(siblings));
        int[][] alike = [.. Enumerable.Range(0, 20).Select(_ => new[] { 4, 4 })];
        Assert.Equal(50, PriorStrength.OfSiblings(alike));
        int[][] opposed = [.. Enumerable.Range(0, 20).Select(i => i % 2 == 0 ? new[] { 9, 0 } : [0, 9])];
        Assert.Equal(4, PriorStrength.OfSiblings(opposed));
    }

    private static void Check(GridRow row, DirichletMultinomialFit fit, string mean, int k)
    {
        row.Absolute("boundary", (int)fit.Boundary, 0);
        row.Absolute(mean, fit.Mean[k], 1e-6);
        row.Relative("M", fit.Strength, Tolerance(row));
        row.Absolute("loglik", fit.LogLikelihood, 1e-8);
        row.Relative("score_at_zero", fit.ScoreAtZero, 1e-9, 1e-9);
    }

    private static double Tolerance(GridRow row) => row.Number("M") > 50 ? 1e-3 : 1e-5;
}
