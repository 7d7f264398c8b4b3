using Tendency.Inference.Multiplicity;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Multiplicity;

public sealed class SearchReferenceTests
{
    [Fact]
    public void MaxT_AllArrangements_Within1e9Relative()
    {
        foreach (var rows in Grid.ReadCases("grid_maxT_exact"))
        {
            var result = Run(rows, 1_000_000, 1);
            Assert.True(result.Exact);
            for (var i = 0; i < rows.Count; i++)
            {
                rows[i].Absolute("arrangements", result.Arrangements, 0);
                rows[i].Relative("T", result.Statistics[i], 1e-9, 1e-12);
                rows[i].Relative("p_raw", result.RawP[i], 1e-9);
                rows[i].Relative("p_maxT_single", result.SingleStep[i], 1e-9);
                rows[i].Relative("p_maxT_stepdown", result.StepDown[i], 1e-9);
            }
        }
    }

    // Monte Carlo error of a share of B draws is at most sqrt(p(1-p)/B); five of them leave a chance of about 1e-6 per value.
    [Fact]
    public void MaxT_Shuffles_ApproachAllArrangements()
    {
        foreach (var rows in Grid.ReadCases("grid_maxT_exact").Where(rows => rows[0].Number("arrangements") > 400))
        {
            var result = Run(rows, 399, 7);
            Assert.False(result.Exact);
            for (var i = 0; i < rows.Count; i++)
            {
                var p = rows[i].Number("p_maxT_single");
                rows[i].Absolute("p_maxT_single", result.SingleStep[i], (5 * Math.Sqrt(p * (1 - p) / 399)) + (1 / 399.0));
            }
        }
    }

    [Fact]
    public void ConditionalMean_ReferenceGrid_Within1e9()
    {
        foreach (var row in Grid.Read("grid_winners_curse"))
        {
            double z = row.Number("z"), mean = SelectionCorrection.ConditionalMean(z, row.Number("c"));
            row.Absolute("mu_cond", mean, 1e-9);
            row.Absolute("shrink", mean / z, 1e-9);
            Assert.Equal(-mean, SelectionCorrection.ConditionalMean(-z, row.Number("c")), 1e-12);
        }
    }

    private static MaxTResult Run(List<GridRow> rows, int draws, int seed)
    {
        var plays = rows[0].Integers("plays_per_game");
        int[] stratum = [.. plays.SelectMany((count, game) => Enumerable.Repeat(game, count))];
        bool[] hit = [.. rows[0].Integers("y").Select(y => y == 1)];
        int[][] cells = [.. rows.Select(row => row.Integers("member").Select((m, i) => (m, i)).Where(p => p.m == 1).Select(p => p.i).ToArray())];
        return MaxT.Run(hit, stratum, cells, draws, seed);
    }
}
