using MathNet.Numerics.Distributions;
using Tendency.Inference.Clusters;

namespace Tendency.Simulations.Studies;

/// <summary>
/// How often do 95 % intervals hold the true share, over all cells with 5 plays and more? Opponents of 20 cells with shares from 0.1 to 0.9,
/// whose games differ by a given correlation; one correlation pooled over an opponent's cells, as the tables do.
/// </summary>
internal static class CoverageStudy
{
    private const int Cells = 20;

    public static void Run(int opponents, int seed, TextWriter to)
    {
        to.WriteLine("games  correlation  plays a game  pooled with floor  pooled  plays taken as independent");
        foreach (var games in new[] { 3, 4, 6 })
        {
            foreach (var rho in new[] { 0.0, 0.03, 0.08 })
            {
                foreach (var plays in new[] { 2, 4, 8 })
                {
                    var (floored, pooled, independent) = Covered(opponents, games, rho, plays, new Random(seed));
                    to.WriteLine($"{games,5}  {rho,11:F2}  {plays,12}  {floored,16:F1}%  {pooled,5:F1}%  {independent,25:F1}%");
                }
            }
        }
    }

    private static (double Floored, double Pooled, double Independent) Covered(int opponents, int games, double rho, int plays, Random random)
    {
        int all = 0, floored = 0, pooled = 0, independent = 0;
        for (var opponent = 0; opponent < opponents; opponent++)
        {
            double[] shares = [.. Enumerable.Range(0, Cells).Select(_ => 0.1 + (0.8 * random.NextDouble()))];
            GroupCount[][] cells = [.. shares.Select(share => Draw(share, games, rho, plays, random))];
            var correlation = WithinGroupCorrelation.Pooled(cells);
            for (var c = 0; c < Cells; c++)
            {
                var estimate = new GroupedShare(cells[c]);
                if (estimate.Trials < 5)
                {
                    continue;
                }

                all++;
                floored += estimate.Interval(correlation.Usable, 0.95).Contains(shares[c]) ? 1 : 0;
                pooled += estimate.Interval(correlation.AtLeastZero, 0.95).Contains(shares[c]) ? 1 : 0;
                independent += estimate.Interval(0, 0.95).Contains(shares[c]) ? 1 : 0;
            }
        }

        return (100.0 * floored / all, 100.0 * pooled / all, 100.0 * independent / all);
    }

    private static GroupCount[] Draw(double share, int games, double rho, int plays, Random random)
    {
        var counts = new GroupCount[games];
        for (var g = 0; g < games; g++)
        {
            var strength = (1 / rho) - 1;
            var p = rho == 0 ? share : Beta.Sample(random, strength * share, strength * (1 - share));
            var trials = random.Next(0, (2 * plays) + 1);
            counts[g] = new GroupCount(Enumerable.Range(0, trials).Count(_ => random.NextDouble() < p), trials);
        }

        return counts;
    }
}
