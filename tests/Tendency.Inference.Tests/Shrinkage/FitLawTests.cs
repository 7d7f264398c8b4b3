using CsCheck;
using Tendency.Inference.Shrinkage;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Shrinkage;

public sealed class FitLawTests
{
    private static readonly Gen<int[][]> Rows = Gen.Int[0, 9].Array[3].Array[2, 8].Where(rows => rows.Sum(row => row.Sum()) > 0);

    [Fact]
    public void Fit_RowsAndCategoriesMoved_StaysTheSame() => Law.Holds(
        Rows,
        100,
        rows =>
        {
            var fit = DirichletMultinomial.Fit(rows);
            var moved = DirichletMultinomial.Fit([.. rows.Reverse().Select(row => row.Reverse().ToArray()), [0, 0, 0]]);
            Assert.Equal(fit.Boundary, moved.Boundary);
            Assert.Equal(fit.LogLikelihood, moved.LogLikelihood, 1e-8);
            Assert.Equal(1, fit.Mean.Sum(), 1e-9);
            Assert.All(fit.Mean.Zip(moved.Mean.Reverse()), pair => Assert.Equal(pair.First, pair.Second, 1e-6));
            Assert.InRange(fit.Rho, 0, 1);
        });

    // At the maximum no neighbor is likelier; likelihoods written out as products, not with the library's sums.
    [Fact]
    public void Fit_InsideTheBounds_IsTheLikeliest() => Law.Holds(
        Rows.Where(rows => DirichletMultinomial.Fit(rows).Boundary == FitBoundary.Interior),
        60,
        rows =>
        {
            var fit = DirichletMultinomial.Fit(rows);
            double[] alpha = [.. Enumerable.Range(0, 3).Select(k => fit.Alpha(k)!.Value)];
            Assert.Equal(Likelihood(rows, alpha), fit.LogLikelihood, 1e-8 * Math.Max(1, Math.Abs(fit.LogLikelihood)));
            for (var k = 0; k < 3; k++)
            {
                foreach (var factor in new[] { 0.98, 1.02 })
                {
                    double[] near = [.. alpha];
                    near[k] *= factor;
                    Assert.True(Likelihood(rows, near) <= fit.LogLikelihood + 1e-8);
                }
            }
        });

    [Fact]
    public void Mix_AnyPath_SumsToOneAndEachCategoryIsAShare() => Law.Holds(
        Gen.Select(Gen.Int[0, 20].Array[3], Gen.Int[0, 20].Array[3], Gen.Double[0.5, 60]),
        200,
        (cell, more, strength) =>
        {
            double[] all = [.. cell.Zip(more, (a, b) => (double)(a + b))];
            var mix = BackOff.Mix([all, [.. cell.Select(x => (double)x)]], [strength]);
            Assert.All(mix, level => Assert.Equal(1, level.Sum(), 1e-12));
            Assert.All(mix[1].Zip(mix[0], cell).Select(t => (Shrunk: t.First, Parent: t.Second, Raw: t.Third)), t =>
            {
                var raw = cell.Sum() == 0 ? t.Parent : (double)t.Raw / cell.Sum();
                Assert.InRange(t.Shrunk, Math.Min(raw, t.Parent) - 1e-12, Math.Max(raw, t.Parent) + 1e-12);
            });
        });

    // P(row) = n! / prod x! * prod over k of a_k (a_k + 1) ... / (A (A + 1) ...), by multiplication.
    private static double Likelihood(int[][] rows, double[] alpha)
    {
        var log = 0.0;
        foreach (var row in rows)
        {
            var placed = 0;
            for (var k = 0; k < row.Length; k++)
            {
                for (var j = 0; j < row[k]; j++)
                {
                    log += Math.Log((alpha[k] + j) / (alpha.Sum() + placed) * (placed + 1) / (j + 1));
                    placed++;
                }
            }
        }

        return log;
    }
}
