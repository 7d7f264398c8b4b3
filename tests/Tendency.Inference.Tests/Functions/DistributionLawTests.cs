using CsCheck;
using Tendency.Inference.Functions;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Functions;

public sealed class DistributionLawTests
{
    private static readonly Gen<double> Probability = Gen.Double[-300, -0.001].Select(exponent => Math.Pow(10, exponent));

    // Closed forms: chi-square with 2 degrees of freedom is exponential, with 1 a squared normal; Beta(a, 1) is a power.
    [Fact]
    public void Tails_ClosedForms_AreMetFarOut()
    {
        foreach (var x in new[] { 0.001, 0.5, 3.84, 20, 100, 700, 1300 })
        {
            AssertRelative(Math.Exp(-x / 2), ChiSquared.Upper(2, x), 1e-12);
            AssertRelative(2 * NormalDistribution.Upper(Math.Sqrt(x)), ChiSquared.Upper(1, x), 1e-12);
        }

        AssertRelative(Math.Pow(0.01, 40), BetaDistribution.Lower(40, 1, 0.01), 1e-12);
        AssertRelative(Math.Pow(0.01, 40), BetaDistribution.Upper(1, 40, 0.99), 1e-12);
        AssertRelative(0.25 - (Math.Atan(0.5) / Math.PI) + 0.25, StudentT.Upper(1, 0.5), 1e-12);
    }

    [Fact]
    public void Quantiles_AnyProbability_GiveTheTailBack() => Law.Holds(
        Gen.Select(Probability, Gen.Double[0.5, 200], Gen.Double[0.5, 200]),
        200,
        (p, a, b) =>
        {
            AssertRelative(p, ChiSquared.Upper(a, ChiSquared.UpperQuantile(a, p)), 1e-9);
            AssertRelative(p, NormalDistribution.Lower(NormalDistribution.Quantile(p)), 1e-9);

            // Of few degrees of freedom t grows like p^(-1/df) and its square leaves the doubles: not below 1e-60.
            var near = Math.Pow(p, 0.2);
            AssertRelative(near, StudentT.Upper(a, -StudentT.Quantile(a, near)), 1e-9);
            AssertRelative(p, BetaDistribution.Lower(a, b, BetaDistribution.Quantile(a, b, p)), 1e-9);
            Assert.Equal(1, BetaDistribution.Quantile(a, b, p) + BetaDistribution.QuantileComplement(a, b, p), 1e-12);
        });

    [Fact]
    public void Gamma_AnyArgument_KeepsItsRecurrences() => Law.Holds(
        Gen.Select(Gen.Double[0.01, 80], Gen.Double[0.01, 120]),
        300,
        (a, x) =>
        {
            Assert.Equal(GammaFunction.Log(a) + Math.Log(a), GammaFunction.Log(a + 1), 1e-11);
            Assert.Equal(GammaFunction.Digamma(a) + (1 / a), GammaFunction.Digamma(a + 1), 1e-11);
            Assert.Equal(GammaFunction.Trigamma(a) - (1 / (a * a)), GammaFunction.Trigamma(a + 1), 1e-10);
            var step = Math.Exp((a * Math.Log(x)) - x - GammaFunction.Log(a + 1));
            Assert.Equal(IncompleteGamma.Upper(a, x) + step, IncompleteGamma.Upper(a + 1, x), 1e-11);
            Assert.Equal(1, IncompleteGamma.Lower(a, x) + IncompleteGamma.Upper(a, x), 1e-12);
            int n = (int)x, k = (int)Math.Min(a, n);
            Assert.Equal(Math.Exp(GammaFunction.LogChoose(n, k)) * (n + 1) / (n + 1 - k), Math.Exp(GammaFunction.LogChoose(n + 1, k)), 1e-9 * Math.Exp(GammaFunction.LogChoose(n + 1, k)));
        });

    // A density is the slope of its distribution function; the two differ by the step squared.
    [Fact]
    public void Densities_AnyPoint_AreTheSlopesOfTheTails() => Law.Holds(
        Gen.Select(Gen.Double[1, 20], Gen.Double[1, 20], Gen.Double[0.05, 0.95]),
        200,
        (a, b, x) =>
        {
            const double Step = 1e-5;
            Assert.Equal((BetaDistribution.Lower(a, b, x + Step) - BetaDistribution.Lower(a, b, x - Step)) / (2 * Step), BetaDistribution.Density(a, b, x), 1e-5);
            Assert.Equal((NormalDistribution.Lower(x + Step) - NormalDistribution.Lower(x - Step)) / (2 * Step), NormalDistribution.Density(x), 1e-8);
            Assert.Equal(BetaDistribution.Lower(a, b, x), BetaDistribution.Upper(b, a, 1 - x), 1e-12);
            Assert.Equal(NormalDistribution.CriticalValue(x), NormalDistribution.Quantile((1 + x) / 2), 1e-9);
        });

    [Fact]
    public void Quantiles_EndsOfTheRange_AreExact()
    {
        Assert.Equal((0, 1), (BetaDistribution.Quantile(2, 3, 0), BetaDistribution.Quantile(2, 3, 1)));
        Assert.Equal(0, StudentT.Quantile(4, 0.5));
        Assert.Equal(double.NegativeInfinity, NormalDistribution.Quantile(0));
        Assert.Equal((0, 1), (BetaDistribution.Lower(2, 3, -1), BetaDistribution.Lower(2, 3, 2)));
        Assert.Equal((0, 0), (GammaFunction.Log(1), GammaFunction.Log(2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BetaDistribution.Quantile(2, 3, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => GammaFunction.Log(0));
    }

    private static void AssertRelative(double expected, double actual, double tolerance) =>
        Assert.True(Math.Abs(actual - expected) <= tolerance * expected, $"expected {expected:R}, got {actual:R}");
}
