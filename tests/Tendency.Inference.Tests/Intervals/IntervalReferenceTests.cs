using Tendency.Inference.Intervals;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Intervals;

public sealed class IntervalReferenceTests
{
    [Fact]
    public void OneProportion_ReferenceGrid_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_one_proportion"))
        {
            int x = row.Integer("x"), n = row.Integer("n");
            var level = row.Number("level");
            var closed = n >= 1_000_000 ? 1e-10 : 1e-12;
            Check(row, "wilson", OneProportion.Wilson(x, n, level), closed);
            Check(row, "wilsoncc", OneProportion.WilsonContinuity(x, n, level), closed);
            Check(row, "ac", OneProportion.AgrestiCoull(x, n, level), closed);
            Check(row, "jeffreys", OneProportion.Jeffreys(x, n, level), 1e-10);
            Check(row, "jeffreysraw", OneProportion.JeffreysRaw(x, n, level), 1e-10);
            Check(row, "cp", OneProportion.ClopperPearson(x, n, level), 1e-10);
            Check(row, "midp", OneProportion.MidP(x, n, level), 1e-10);
        }
    }

    [Fact]
    public void OneProportion_EffectiveCounts_WithinTolerance()
    {
        foreach (var row in Grid.Read("grid_one_proportion_fractional"))
        {
            double n = row.Number("neff"), x = row.Number("phat") * n, level = row.Number("level");
            Check(row, "wilson", OneProportion.Wilson(x, n, level), 1e-12);
            Check(row, "jeffreys", OneProportion.Jeffreys(x, n, level), 1e-10);
            Check(row, "cp", OneProportion.ClopperPearson(x, n, level), 1e-10);
        }
    }

    [Fact]
    public void Mix_ReferenceGrid_WithinTolerance()
    {
        foreach (var rows in Grid.ReadCases("grid_multinomial"))
        {
            int[] counts = [.. rows.Select(row => row.Integer("x"))];
            double[] real = [.. counts.Select(x => (double)x)];
            var level = rows[0].Number("level");
            var goodman = Simultaneous.Goodman(real, level);
            var hurst = Simultaneous.QuesenberryHurst(real, level);
            var glaz = Simultaneous.SisonGlaz(counts, level);
            var posterior = new DirichletPosterior(real);
            for (var j = 0; j < rows.Count; j++)
            {
                var row = rows[j];
                Check(row, "goodman", goodman[j], 1e-12);
                Check(row, "qh", hurst[j], 1e-12);
                Check(row, "wilson1", OneProportion.Wilson(counts[j], counts.Sum(), level), 1e-12);
                row.Absolute("sg_c", glaz?.C ?? double.NaN, 0);
                row.Absolute("sg_delta", glaz?.Delta ?? double.NaN, 1e-8);
                row.Absolute("sg_lo", glaz?.Intervals[j].Low ?? double.NaN, 1e-8);
                row.Absolute("sg_hi", glaz?.Intervals[j].High ?? double.NaN, 1e-8);
                row.Absolute("dir_half_mean", posterior.Mean(j), 1e-10);
                Check(row, "dir_half", posterior.Marginal(j, level), 1e-10);
            }
        }
    }

    private static void Check(GridRow row, string method, Interval actual, double tolerance)
    {
        row.Absolute(method + "_lo", actual.Low, tolerance);
        row.Absolute(method + "_hi", actual.High, tolerance);
    }
}
