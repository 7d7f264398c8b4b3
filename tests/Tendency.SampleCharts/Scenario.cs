using Tendency.SampleCharts.Charts;
using Tendency.SampleCharts.Teams;
using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts;

/// <summary>Games walked to order: for the sample sets and, as whole charts with a known truth, for simulations.</summary>
public static class Scenario
{
    /// <summary>Snaps a side between which a sample game is believable; outside it the game is walked again.</summary>
    private const int Fewest = 62;
    private const int Most = 76;

    private const string Subject = "Simulated";

    private static readonly Team Opposition = new(
        "Opposition", new PlainOffense(0.7, 0.5), new FrontMix([("over", 0.4), ("tight", 0.3), ("okie", 0.3)], "bear", [("cover 3", 0.5), ("quarters", 0.5)], 0.2, 0.2));

    /// <summary>
    /// One chart of a simulated offense's games, in the columns of <see cref="ChartColumns.All"/>: game labels G1, G2, …
    /// The same seed, number of games and options give the same rows.
    /// </summary>
    public static ChartSheet Generate(ulong seed, int games, ScenarioOptions options) =>
        ChartSheet.Of("simulated.csv", Walk(seed, games, options).SelectMany(
            snaps => snaps.Select((snap, i) => new ChartedSnap($"G{snap.At.Game}", i + 1, $"G{snap.At.Game}", snap))));

    /// <summary>The snaps behind <see cref="Generate"/>, game by game.</summary>
    public static IReadOnlyList<IReadOnlyList<Snap>> Walk(ulong seed, int games, ScenarioOptions options)
    {
        var walked = new List<IReadOnlyList<Snap>>(games);
        for (var game = 1; game <= games; game++)
        {
            var chance = new Chance(seed).Fork((ulong)game);
            var swing = options.GameSwing * chance.Normal();
            var team = new Team(Subject, new CoinFlipOffense(options.RunShare, swing, options.Tells), Opposition.Defense);
            var snaps = new GameWalk(team, Opposition, game, chance).Play();
            walked.Add([.. snaps.Where(snap => snap.Offense == Subject).Take(options.SnapsPerGame)]);
        }

        return walked;
    }

    /// <summary>
    /// Draws tells for a simulation of so many games: one or two conditions each, on dimensions no other tell uses, whose cell
    /// holds between fewest and most countable snaps of the chart this seed gives with nothing planted. Half of them point to
    /// the pass. Fewer come back where no such cell is left.
    /// </summary>
    public static IReadOnlyList<LogOddsTell> DrawTells(
        ulong seed, int games, int count, double lowLogOdds = 1.3, double highLogOdds = 1.6, int fewest = 25, int most = 60)
    {
        var snaps = Walk(seed, games, new ScenarioOptions()).SelectMany(game => game).Where(snap => snap.Call.Kind != "none" && !snap.At.IsTry).ToList();
        var chance = new Chance(seed).Fork(ulong.MaxValue);
        var free = LogOddsTell.Dimensions.Where(name => name is not ("attached" or "personnel")).ToList();
        var tells = new List<LogOddsTell>();
        for (var attempt = 0; attempt < 1000 && tells.Count < count; attempt++)
        {
            var wanted = chance.Between(1, 2);
            var seen = snaps[chance.Between(0, snaps.Count - 1)];
            var names = Enumerable.Range(0, wanted).Select(_ => free[chance.Between(0, free.Count - 1)]).Distinct().ToList();
            var size = chance.Unit();
            var sign = chance.Roll(0.5) ? 1 : -1;
            var tell = new LogOddsTell(
                [.. names.Select(name => (name, LogOddsTell.ValueOf(name, seen.At, seen.Look)))],
                sign * (lowLogOdds + (size * (highLogOdds - lowLogOdds))));
            var cell = snaps.Count(snap => tell.Holds(snap.At, snap.Look));
            if (names.Count == wanted && cell >= fewest && cell <= most)
            {
                tells.Add(tell);
                free.RemoveAll(names.Contains);
            }
        }

        return tells;
    }

    /// <summary>One game of both sides' snaps, walked until each offense has a believable number of them and nobody has tied.</summary>
    internal static IReadOnlyList<Snap> WalkGame(Team first, Team second, int game, Chance chance)
    {
        for (ulong attempt = 0; ; attempt++)
        {
            var walk = new GameWalk(first, second, game, chance.Fork(attempt));
            var snaps = walk.Play();
            var own = snaps.Count(snap => snap.Offense == first.Name);
            if (own is >= Fewest and <= Most && snaps.Count - own is >= Fewest and <= Most && walk.Score.First != walk.Score.Second)
            {
                return snaps;
            }
        }
    }
}
