using Tendency.Inference.Clusters;
using Tendency.Inference.Intervals;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Clusters;

public sealed class ClusterReferenceTests
{
    [Fact]
    public void Correlation_ReferenceGrid_Within1e11()
    {
        foreach (var row in Grid.Read("grid_clusters"))
        {
            var m = row.Numbers("m");
            var groups = row.Numbers("x").Zip(m, (hits, trials) => new GroupCount(hits, trials)).ToList();
            var correlation = WithinGroupCorrelation.OfOneCell(groups);
            row.Absolute("ssb", correlation.BetweenSquares, 1e-11);
            row.Absolute("ssw", correlation.WithinSquares, 1e-11);
            row.Absolute("n0", correlation.TypicalSize, 1e-11);
            row.Absolute("icc_anova", correlation.Estimate ?? double.NaN, 1e-11);
            var n = EffectiveSize.OfGroups(m, correlation.Estimate ?? 0);
            row.Absolute("n_eff_icc", n, 1e-11);
            var effect = 1 + ((row.Number("m_weighted") - 1) * Math.Max(0, correlation.Estimate ?? 0));
            Assert.Equal(effect, new GroupedShare(groups).DesignEffect(correlation.Estimate ?? 0)!.Value, 1e-11);
            var interval = OneProportion.Wilson(row.Number("p") * n, n, 0.95);
            row.Absolute("wilson_icc_lo", interval.Low, 1e-11);
            row.Absolute("wilson_icc_hi", interval.High, 1e-11);
        }
    }

    [Fact]
    public void EffectiveSize_RecencyWeights_Within1e11()
    {
        foreach (var row in Grid.Read("grid_weights_kish"))
        {
            double[] m = row.Numbers("m"), x = row.Numbers("x"), w = row.Numbers("w");
            var total = w.Zip(m, (weight, size) => weight * size).Sum();
            var p = w.Zip(x, (weight, hits) => weight * hits).Sum() / total;
            row.Absolute("p_w", p, 1e-11);
            var kish = EffectiveSize.Kish(w.Zip(m, (weight, size) => Enumerable.Repeat(weight, (int)size)).SelectMany(weights => weights));
            row.Absolute("n_kish", kish, 1e-11 * kish);
            var n = EffectiveSize.OfWeightedGroups(m.Zip(w), row.Number("rho"));
            row.Absolute("n_eff", n, 1e-11 * n);
            row.Relative("deff", m.Sum() / n, 1e-11);
            var plain = OneProportion.Wilson(p * kish, kish, 0.95);
            row.Absolute("wilson_kish_lo", plain.Low, 1e-11);
            row.Absolute("wilson_kish_hi", plain.High, 1e-11);
            var clustered = OneProportion.Wilson(p * n, n, 0.95);
            row.Absolute("wilson_neff_lo", clustered.Low, 1e-11);
            row.Absolute("wilson_neff_hi", clustered.High, 1e-11);
        }
    }
}
