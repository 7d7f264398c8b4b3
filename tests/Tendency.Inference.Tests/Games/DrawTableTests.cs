using Tendency.Inference.Games;

namespace Tendency.Inference.Tests.Games;

public class DrawTableTests
{
    /// <summary>Mean a/(a + b) and variance ab/((a + b)²(a + b + 1)): the table may lose some of the latter in the tails.</summary>
    [Theory]
    [InlineData(3.04, 4.96)]
    [InlineData(0.5, 0.5)]
    [InlineData(40, 2)]
    [InlineData(400, 600)]
    [InlineData(1, 7)]
    [InlineData(0.2, 7.8)]
    public void Beta_AnyShape_HasTheBetasMeanAndVariance(double a, double b)
    {
        var mean = a / (a + b);
        Check(DrawTable.Beta(a, b), mean, mean * (1 - mean) / (a + b + 1));
        Assert.All(DrawTable.Beta(a, b), x => Assert.InRange(x, 0, 1));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(1.03)]
    [InlineData(8.5)]
    [InlineData(300)]
    public void Gamma_AnyShape_HasTheGammasMeanAndVariance(double shape) => Check(DrawTable.Gamma(shape), shape, shape);

    /// <summary>Means of a Dirichlet are its weights over their sum, variances m (1 - m) / (total + 1); five standard errors of 100,000 draws.</summary>
    [Fact]
    public void Mix_SmallAndLargeWeights_HasTheDirichletsMoments()
    {
        double[] weights = [0.05, 0.5, 3, 20];
        const int draws = 100_000;
        var random = new RandomBits(5);
        var mix = weights.Select(_ => new double[draws]).ToArray();
        new MixDraws(weights).Fill(mix, ref random);
        double[] sums = [.. mix.Select(row => row.Sum())], squares = [.. mix.Select(row => row.Sum(share => share * share))];

        for (var s = 0; s < 4; s++)
        {
            var mean = weights[s] / 23.55;
            var variance = mean * (1 - mean) / 24.55;
            Assert.Equal(mean, sums[s] / draws, 5 * Math.Sqrt(variance / draws));
            Assert.InRange(((squares[s] / draws) - Math.Pow(sums[s] / draws, 2)) / variance, 0.93, 1.07);
        }
    }

    private static void Check(double[] values, double mean, double variance)
    {
        Assert.Equal(mean, values.Average(), 1e-6 * Math.Max(1, mean));
        Assert.InRange(values.Average(x => (x - mean) * (x - mean)) / variance, 0.98, 1.002);
        Assert.Equal(values.Order(), values);
    }
}
