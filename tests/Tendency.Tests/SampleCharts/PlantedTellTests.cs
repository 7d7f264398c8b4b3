using Tendency.SampleCharts;
using Tendency.SampleCharts.Teams;

namespace Tendency.Tests.SampleCharts;

/// <summary>What sample-logs/README.md says is planted is in the charts, at the size it says.</summary>
public sealed class PlantedTellTests
{
    public static TheoryData<string, string> Tells()
    {
        var rows = new TheoryData<string, string>();
        foreach (var (set, tells, _) in Sets())
        {
            foreach (var tell in tells)
            {
                rows.Add(set, tell.Name);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Tells))]
    public void Observed_PlantedTell_LiesInItsBinomialRange(string set, string name)
    {
        var (_, tells, games) = Sets().Single(s => s.Set == set);
        var tell = tells.Single(t => t.Name == name);
        var (plays, count) = tell.Observed(games.SelectMany(game => game.Snaps));

        Assert.True(plays >= 2, $"{name}: only {plays} snaps");
        var (low, high) = CentralRange(plays, tell.Probability);
        Assert.True(count >= low && count <= high, $"{name}: {count} of {plays}, true {tell.Probability:0.00}, range {low}-{high}");
    }

    /// <summary>
    /// The counts between the 0.1 % and 99.9 % points of Binomial(n, p), summed term by term. With 33 tells at most one seed in
    /// fifteen has a tell outside (33 × 0.002), so the fixed seed need not be a lucky one.
    /// </summary>
    private static (int Low, int High) CentralRange(int n, double p)
    {
        var term = Math.Pow(1 - p, n);
        var sum = 0.0;
        var low = -1;
        for (var k = 0; k <= n; k++)
        {
            sum += term;
            if (low < 0 && sum > 0.001)
            {
                low = k;
            }

            if (sum >= 0.999)
            {
                return (low, k);
            }

            term *= (n - k) / (double)(k + 1) * p / (1 - p);
        }

        return (low, n);
    }

    private static IEnumerable<(string Set, IReadOnlyList<PlantedTell> Tells, IReadOnlyList<SampleGame> Games)> Sets() =>
    [
        ("port-halden", PortHalden.Planted, SampleSets.PortHalden),
        ("our-team/offense", MarrowPoint.Planted, SampleSets.OurOffense),
        ("our-team/defense", MarrowPointDefense.Planted, SampleSets.OurDefense),
    ];
}
