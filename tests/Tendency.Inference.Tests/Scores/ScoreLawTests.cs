using CsCheck;
using Tendency.Inference.Scores;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Scores;

public sealed class ScoreLawTests
{
    private static readonly Gen<(bool Hit, double P)[]> Forecasts = Gen.Select(Gen.Bool, Gen.Double[0.02, 0.98]).Array[1, 40];

    [Fact]
    public void Binary_HitsAndMissesExchanged_ChangesNothing() => Law.Holds(
        Forecasts,
        200,
        forecasts =>
        {
            var scores = Score(forecasts);
            var turned = Score([.. forecasts.Select(f => (!f.Hit, 1 - f.P))]);
            Assert.Equal(scores.LogLoss, turned.LogLoss, 1e-11);
            Assert.Equal(scores.Brier, turned.Brier, 1e-11);
            Assert.Equal(scores.Resolution, turned.Resolution, 1e-11);
            Assert.Equal(scores.Brier, scores.Reliability - scores.Resolution + scores.Uncertainty, 1e-11);
            Assert.Equal(scores.LogLossBits * Math.Log(2), scores.LogLoss, 1e-11);
        });

    // Proper: no constant forecast does better than the hit rate itself, which has no skill.
    [Fact]
    public void Binary_ConstantForecast_IsBestAtTheHitRate() => Law.Holds(
        Gen.Select(Gen.Int[1, 30], Gen.Int[1, 30], Gen.Double[0.01, 0.99]),
        200,
        (hits, misses, p) =>
        {
            bool[] hit = [.. Enumerable.Range(0, hits + misses).Select(i => i < hits)];
            var honest = BinaryScores.Of(hit, [.. hit.Select(_ => (double)hits / hit.Length)]);
            var other = BinaryScores.Of(hit, [.. hit.Select(_ => p)]);
            Assert.True(honest.LogLoss <= other.LogLoss + 1e-12 && honest.Brier <= other.Brier + 1e-12);
            Assert.Equal(0, honest.LogSkill!.Value, 1e-11);
            Assert.Equal(0, honest.BrierSkill!.Value, 1e-11);
        });

    [Fact]
    public void Category_TwoCalls_AreTheBinaryScores() => Law.Holds(
        Forecasts,
        200,
        forecasts =>
        {
            var binary = Score(forecasts);
            var category = CategoryScores.Of([.. forecasts.Select(f => f.Hit ? 0 : 1)], [.. forecasts.Select(f => new[] { f.P, 1 - f.P })]);
            Assert.Equal(binary.LogLossBits, category.LogLossBits, 1e-11);
            Assert.Equal(2 * binary.Brier, category.Brier, 1e-11);
            Assert.Equal(Math.Pow(2, binary.LogLossBits), category.Perplexity, 1e-9);
        });

    // Logits stretched by c: the slope shrinks by c, the intercept stays; hits and misses exchanged: the intercept turns its sign.
    [Fact]
    public void CalibrationLine_LogitsStretched_ShrinksTheSlope() => Law.Holds(
        Gen.Select(Forecasts.Where(f => CalibrationLine.Of(Hits(f), Ps(f)).Slope is not null), Gen.Double[0.5, 3]),
        100,
        (forecasts, stretch) =>
        {
            var line = CalibrationLine.Of(Hits(forecasts), Ps(forecasts));
            var stretched = CalibrationLine.Of(Hits(forecasts), [.. Ps(forecasts).Select(p => 1 / (1 + Math.Pow((1 - p) / p, stretch)))]);
            var turned = CalibrationLine.Of([.. forecasts.Select(f => !f.Hit)], [.. forecasts.Select(f => 1 - f.P)]);
            Assert.Equal(line.Slope!.Value, stretched.Slope!.Value * stretch, 1e-6 * Math.Max(1, Math.Abs(line.Slope.Value)));
            Assert.Equal(line.Intercept!.Value, stretched.Intercept!.Value, 1e-6 * Math.Max(1, Math.Abs(line.Intercept.Value)));
            Assert.Equal(-line.Intercept.Value, turned.Intercept!.Value, 1e-6 * Math.Max(1, Math.Abs(line.Intercept.Value)));
            Assert.Equal(-line.InTheLarge!.Value, turned.InTheLarge!.Value, 1e-8);
        });

    [Fact]
    public void CalibrationTable_AnyForecasts_CountsEachOnce() => Law.Holds(
        Gen.Select(Forecasts, Gen.Int[1, 12]),
        100,
        (forecasts, bins) =>
        {
            var table = CalibrationTable.Of(Hits(forecasts), Ps(forecasts), bins, 0.9);
            Assert.Equal(forecasts.Length, table.Sum(bin => bin.Count));
            Assert.Equal(forecasts.Count(f => f.Hit), table.Sum(bin => bin.Hits));
            Assert.All(table.Where(bin => bin.Count > 0), bin => Assert.InRange(bin.MeanForecast!.Value, bin.From - 1e-12, bin.To + 1e-12));
        });

    // Moved and scaled with its values.
    [Fact]
    public void MeanOfGroups_ValuesMovedAndScaled_FollowsThem() => Law.Holds(
        Gen.Select(Gen.Double[-5, 5].Array[2, 12], Gen.Double[-3, 3], Gen.Double[0.1, 4]),
        100,
        (values, move, scale) =>
        {
            var interval = MeanOfGroups.StudentInterval(values, 0.9)!.Value;
            var moved = MeanOfGroups.StudentInterval([.. values.Select(value => (scale * value) + move)], 0.9)!.Value;
            Assert.Equal((scale * interval.Low) + move, moved.Low, 1e-9);
            Assert.Equal((scale * interval.High) + move, moved.High, 1e-9);
            Assert.True(interval.Contains(values.Average()));
        });

    private static BinaryScores Score((bool Hit, double P)[] forecasts) => BinaryScores.Of(Hits(forecasts), Ps(forecasts));

    private static bool[] Hits((bool Hit, double P)[] forecasts) => [.. forecasts.Select(f => f.Hit)];

    private static double[] Ps((bool Hit, double P)[] forecasts) => [.. forecasts.Select(f => f.P)];
}
