using Tendency.SampleCharts.Teams;
using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts;

/// <summary>One charted game of a sample set: the fixture and its snaps, one offense's, in film order.</summary>
public sealed record SampleGame(Fixture Fixture, IReadOnlyList<Snap> Snaps);

/// <summary>The games behind the folders of sample-logs, from fixed seeds.</summary>
public static class SampleSets
{
    public const string Opponent = "Port Halden";
    public const string Us = "Marrow Point";

    private const ulong HaldenSeed = 20261120;
    private const ulong MarrowSeed = 20261126;

    /// <summary>Port Halden's offense in its last five games.</summary>
    public static IReadOnlyList<SampleGame> PortHalden { get; } = PortHaldenSeason(HaldenSeed);

    /// <summary>Our offense in our last five games.</summary>
    public static IReadOnlyList<SampleGame> OurOffense => [.. Ours.Select(game => Of(game, Us, offense: true))];

    /// <summary>The snaps our defense faced in the same five games.</summary>
    public static IReadOnlyList<SampleGame> OurDefense => [.. Ours.Select(game => Of(game, Us, offense: false))];

    private static IReadOnlyList<SampleGame> Ours { get; } = [.. Walk(
        new Team(Us, new MarrowPoint(), new MarrowPointDefense()), Opponents.OfMarrowPoint, MarrowSeed, only: null)];

    /// <summary>The same offense, habits and opponents from another seed: for measuring an audit or a search on charts not shipped.</summary>
    public static IReadOnlyList<SampleGame> PortHaldenSeason(ulong seed) => [.. Walk(
        new Team(Opponent, new PortHalden(), new FrontMix([("over", 0.7), ("under", 0.3)], "bear", [("cover 3", 0.5), ("quarters", 0.5)], 0.18, 0.35)),
        Opponents.OfPortHalden, seed, Opponent)];

    private static SampleGame Of(SampleGame game, string team, bool offense) =>
        game with { Snaps = [.. game.Snaps.Where(snap => snap.Offense == team == offense)] };

    private static IEnumerable<SampleGame> Walk(Team team, IReadOnlyList<Fixture> fixtures, ulong seed, string? only)
    {
        for (var i = 0; i < fixtures.Count; i++)
        {
            var snaps = Scenario.WalkGame(team, fixtures[i].Opponent, i + 1, new Chance(seed).Fork((ulong)i));
            yield return new SampleGame(fixtures[i], [.. snaps.Where(snap => only is null || snap.Offense == only)]);
        }
    }
}
