using Tendency.Inference.Functions;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Functions;

public sealed class DistributionReferenceTests
{
    [Fact]
    public void BetaTails_FiftyDigitGrid_Within1e12Relative()
    {
        foreach (var row in Grid.Read("grid_beta_cdf"))
        {
            double a = row.Number("a"), b = row.Number("b"), x = row.Number("x");
            row.Relative("lower", BetaDistribution.Lower(a, b, x), 1e-12);
            row.Relative("upper", BetaDistribution.Upper(a, b, x), 1e-12);
        }
    }

    [Fact]
    public void BetaQuantile_FiftyDigitGrid_Within1e10Relative()
    {
        foreach (var row in Grid.Read("grid_beta_quantile"))
        {
            double a = row.Number("a"), b = row.Number("b"), p = row.Number("p");
            row.Relative("x", BetaDistribution.Quantile(a, b, p), 1e-10);
            row.Relative("one_minus_x", BetaDistribution.QuantileComplement(a, b, p), 1e-10);
        }
    }

    [Fact]
    public void NormalQuantile_FiftyDigitGrid_Within1e14Relative()
    {
        foreach (var row in Grid.Read("grid_normal_quantile"))
        {
            row.Relative("z", NormalDistribution.Quantile(row.Number("p")), 1e-14);
        }
    }

    [Fact]
    public void StudentQuantile_FiftyDigitGrid_Within1e11Relative()
    {
        foreach (var row in Grid.Read("grid_t_quantile"))
        {
            row.Relative("t", StudentT.Quantile(row.Number("df"), row.Number("p")), 1e-11);
        }
    }

    [Fact]
    public void ChiSquaredTails_FiftyDigitGrid_Within1e12Relative()
    {
        foreach (var row in Grid.Read("grid_chisq_cdf"))
        {
            row.Relative("lower", ChiSquared.Lower(row.Number("df"), row.Number("x")), 1e-12);
            row.Relative("upper", ChiSquared.Upper(row.Number("df"), row.Number("x")), 1e-12);
        }
    }

    [Fact]
    public void Gamma_FiftyDigitGrid_Within1e13RelativeOr1e15Absolute()
    {
        foreach (var row in Grid.Read("grid_gamma_functions"))
        {
            var x = row.Number("x");
            row.Relative("lgamma", GammaFunction.Log(x), 1e-13, 1e-15);
            row.Relative("digamma", GammaFunction.Digamma(x), 1e-13, 1e-15);
            row.Relative("trigamma", GammaFunction.Trigamma(x), 1e-13);
        }
    }
}
