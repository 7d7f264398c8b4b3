using CsCheck;
using Tendency.Inference.Multiplicity;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Multiplicity;

public sealed class AdjustedPLawTests
{
    [Fact]
    public void Adjusted_AnyList_KeepsOrderAndNeverShrinksP() => Law.Holds(
        Gen.Double[0, 1].Array[1, 40],
        200,
        p =>
        {
            var bh = AdjustedP.BenjaminiHochberg(p);
            var by = AdjustedP.BenjaminiYekutieli(p);
            var holm = AdjustedP.Holm(p);
            var bonferroni = AdjustedP.Bonferroni(p);
            var reversed = AdjustedP.BenjaminiHochberg([.. p.Reverse()]);
            for (var i = 0; i < p.Length; i++)
            {
                Assert.True(p[i] <= bh[i] + 1e-12 && bh[i] <= by[i] + 1e-12 && by[i] <= 1);
                Assert.True(bh[i] <= holm[i] + 1e-12 && holm[i] <= bonferroni[i] + 1e-12);
                Assert.Equal(bh[i], reversed[p.Length - 1 - i]);
                for (var j = 0; j < p.Length; j++)
                {
                    Assert.True(p[i] > p[j] || bh[i] <= bh[j]);
                }
            }
        });

    // The step-up rule itself: reject the k smallest for the largest k with p_(k) <= k q / m. Same set as adjusted p <= q.
    [Fact]
    public void BenjaminiHochberg_AnyList_RejectsWhatTheStepUpRuleDoes() => Law.Holds(
        Gen.Select(Gen.Double[0, 0.3].Array[1, 30], Gen.Double[0.01, 0.2]),
        300,
        (p, q) =>
        {
            double[] sorted = [.. p.Order()];
            var rejected = 0;
            for (var k = 1; k <= p.Length; k++)
            {
                rejected = sorted[k - 1] * p.Length / k <= q ? k : rejected;
            }

            Assert.Equal(rejected, AdjustedP.BenjaminiHochberg(p).Count(value => value <= q));
        });

    [Fact]
    public void Adjusted_NotAProbability_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AdjustedP.BenjaminiHochberg([0.2, double.NaN]));
}
