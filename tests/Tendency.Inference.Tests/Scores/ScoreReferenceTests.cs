using Tendency.Inference.Scores;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Scores;

public sealed class ScoreReferenceTests
{
    [Fact]
    public void Binary_ReferenceGrid_Within1e11()
    {
        foreach (var row in Grid.Read("grid_scores"))
        {
            bool[] hit = [.. row.Integers("y").Select(y => y == 1)];
            var forecast = row.Numbers("p");
            var scores = BinaryScores.Of(hit, forecast);
            row.Absolute("n", scores.Count, 0);
            row.Absolute("logloss_nats", scores.LogLoss, 1e-11);
            row.Absolute("logloss_bits", scores.LogLossBits, 1e-11);
            row.Absolute("brier", scores.Brier, 1e-11);
            row.Absolute("base_rate", scores.BaseRate, 1e-11);
            row.Absolute("entropy_bits", scores.EntropyBits, 1e-11);
            row.Absolute("skill_log", scores.LogSkill ?? double.NaN, 1e-11);
            row.Absolute("skill_brier", scores.BrierSkill ?? double.NaN, 1e-11);
            row.Absolute("reliability", scores.Reliability, 1e-11);
            row.Absolute("resolution", scores.Resolution, 1e-11);
            row.Absolute("uncertainty", scores.Uncertainty, 1e-11);
            row.Absolute("accuracy", scores.Accuracy, 1e-11);
            var line = CalibrationLine.Of(hit, forecast);
            row.Absolute("cal_intercept", line.Intercept ?? double.NaN, 1e-8);
            row.Absolute("cal_slope", line.Slope ?? double.NaN, 1e-8);
            row.Absolute("cal_in_large", line.InTheLarge ?? double.NaN, 1e-8);
            Assert.Equal(scores.Brier, scores.Reliability - scores.Resolution + scores.Uncertainty, 1e-12);
        }
    }

    [Fact]
    public void Category_ReferenceGrid_Within1e11()
    {
        foreach (var row in Grid.Read("grid_scores_multi"))
        {
            int[] happened = [.. row.Integers("y").Select(y => y - 1)];
            var forecast = row.Numbers("p").Chunk(row.Integer("J")).Cast<IReadOnlyList<double>>().ToList();
            var scores = CategoryScores.Of(happened, forecast);
            row.Absolute("logloss_bits", scores.LogLossBits, 1e-11);
            row.Absolute("brier_multi", scores.Brier, 1e-11);
            row.Absolute("top1", scores.Top1, 1e-11);
            row.Absolute("perplexity", scores.Perplexity, 1e-11);
        }
    }

    [Fact]
    public void Binary_CertainAndWrong_CostsInfinity()
    {
        Assert.Equal(double.PositiveInfinity, BinaryScores.Of([true, false], [0, 0.5]).LogLoss);
        Assert.Equal(0, BinaryScores.Of([true, false], [1, 0]).LogLoss);
        Assert.Null(BinaryScores.Of([true], [0.7]).LogSkill);
    }

    [Fact]
    public void CalibrationTable_EdgesOfBins_GoUpwards()
    {
        var bins = CalibrationTable.Of([true, false, true, true], [0.1, 0.2, 1, 0.9], 5, 0.95);
        Assert.Equal([1, 1, 0, 0, 2], bins.Select(bin => bin.Count));
        Assert.Equal([1, 0, 0, 0, 2], bins.Select(bin => bin.Hits));
        Assert.Null(bins[2].MeanForecast);
        Assert.Equal(0.95, bins[4].MeanForecast!.Value, 1e-12);
    }

    // Student's own sleep differences (Biometrika 1908; R's data "sleep", paired): mean 1.58, 95 % 0.7001142 to 2.4598858.
    [Fact]
    public void StudentInterval_SleepDifferences_GivesPrintedLimits()
    {
        var interval = MeanOfGroups.StudentInterval([1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4], 0.95)!.Value;
        Assert.Equal(0.7001142, interval.Low, 1e-7);
        Assert.Equal(2.4598858, interval.High, 1e-7);
        Assert.Null(MeanOfGroups.StudentInterval([0.3], 0.95));
    }
}
