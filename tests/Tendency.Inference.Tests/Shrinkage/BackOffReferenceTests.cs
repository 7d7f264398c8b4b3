using Tendency.Inference.Shrinkage;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Shrinkage;

public sealed class BackOffReferenceTests
{
    [Fact]
    public void Share_ReferenceGrid_Within1e11()
    {
        foreach (var row in Grid.Read("grid_backoff"))
        {
            var share = BackOff.Share(row.Numbers("x"), row.Numbers("n"), row.Numbers("M"));
            var means = row.Numbers("path_means");
            Assert.Equal(means.Length, share.PathMeans.Count);
            for (var d = 0; d < means.Length; d++)
            {
                Assert.Equal(means[d], share.PathMeans[d], 1e-11);
            }

            row.Absolute("post_a", share.A, 1e-11);
            row.Absolute("post_b", share.B, 1e-11);
            row.Absolute("shrunk", share.Mean, 1e-11);
            var interval = share.Interval(0.95);
            row.Absolute("lo95", interval.Low, 1e-9);
            row.Absolute("hi95", interval.High, 1e-9);
        }
    }

    [Fact]
    public void Mix_TwoCategories_AgreesWithShare()
    {
        double[][] counts = [[136, 160], [62, 68], [13, 5], [2, 1]];
        double[] strength = [12, 4, 20];
        var mix = BackOff.Mix(counts, strength);
        var share = BackOff.Share([136, 62, 13, 2], [296, 130, 18, 3], strength);
        for (var d = 0; d < counts.Length; d++)
        {
            Assert.Equal(share.PathMeans[d], mix[d][0], 1e-12);
            Assert.Equal(1, mix[d].Sum(), 1e-12);
        }
    }
}
