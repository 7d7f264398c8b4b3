using Tendency.Inference.Games;

namespace Tendency.Inference.Tests.Games;

public class BetaDrawsTests
{
    /// <summary>Mean a/(a + b) and variance ab/((a + b)²(a + b + 1)): the table may lose some of the latter in the tails.</summary>
    [Theory]
    [InlineData(3.04, 4.96)]
    [InlineData(0.5, 0.5)]
    [InlineData(40, 2)]
    [InlineData(400, 600)]
    [InlineData(1, 7)]
    [InlineData(0.2, 7.8)]
    public void Values_AnyShape_HaveTheBetasMeanAndVariance(double a, double b)
    {
        var values = new BetaDraws(a, b).Values;
        var mean = a / (a + b);
        var variance = values.Average(x => (x - mean) * (x - mean));
        Assert.Equal(mean, values.Average(), 1e-6);
        Assert.InRange(variance / (mean * (1 - mean) / (a + b + 1)), 0.99, 1.002);
        Assert.Equal(values.Order(), values);
        Assert.All(values, x => Assert.InRange(x, 0, 1));
    }
}
