using Tendency.Inference.Forecasts;

namespace Tendency.Inference.Tests.Forecasts;

public sealed class PenalizedLogisticTests
{
    // Two groups, 6 of 20 and 15 of 25 hits: without a penalty the model is the two shares.
    private static readonly double[][] s_rows = [.. Enumerable.Range(0, 45).Select(i => new double[] { 1, i < 20 ? 0 : 1 })];
    private static readonly bool[] s_hit = [.. Enumerable.Range(0, 45).Select(i => i < 20 ? i < 6 : i < 35)];

    [Fact]
    public void Fit_HardlyAnyPenalty_GivesTheSharesOfTheGroups()
    {
        var model = PenalizedLogistic.Fit(s_rows, s_hit, [0, 0], [1e-9, 1e-9]);

        Assert.Equal(0.3, model.Probability([1, 0]), 7);
        Assert.Equal(0.6, model.Probability([1, 1]), 7);
    }

    [Fact]
    public void Fit_AnyPenalty_SlopeIsZeroAtTheMode()
    {
        double[] expected = [0.4, -0.7], precision = [3, 8];

        var model = PenalizedLogistic.Fit(s_rows, s_hit, expected, precision);

        for (var j = 0; j < 2; j++)
        {
            var pull = precision[j] * (model.Coefficients[j] - expected[j]);
            var data = s_rows.Select((row, i) => row[j] * ((s_hit[i] ? 1 : 0) - model.Probability(row))).Sum();
            Assert.Equal(pull, data, 6);
        }
    }

    [Fact]
    public void Fit_NoObservation_ReturnsWhatWasExpected() =>
        Assert.Equal([0.4, -0.7], PenalizedLogistic.Fit([], [], [0.4, -0.7], [3, 8]).Coefficients);

    [Fact]
    public void Fit_SeparableData_StaysFinite()
    {
        var model = PenalizedLogistic.Fit([[1, -1], [1, -1], [1, 1], [1, 1]], [false, false, true, true], [0, 0], [0.01, 0.01]);

        Assert.InRange(model.Probability([1, 1]), 0.9, 1 - 1e-9);
    }

    [Fact]
    public void Fit_PrecisionOfZero_Refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PenalizedLogistic.Fit(s_rows, s_hit, [0, 0], [1, 0]));
}
