using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts;

/// <summary>Games walked to order.</summary>
public static class Scenario
{
    /// <summary>Snaps a side between which a game is believable; outside it the game is walked again.</summary>
    private const int Fewest = 62;
    private const int Most = 76;

    /// <summary>One game of both sides' snaps, walked until each offense has a believable number of them and nobody has tied.</summary>
    public static IReadOnlyList<Snap> WalkGame(Team first, Team second, int game, Chance chance)
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
