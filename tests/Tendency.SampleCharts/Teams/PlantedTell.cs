using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Teams;

/// <summary>
/// A habit written into an offense or defense: in the snaps of <paramref name="When"/>, <paramref name="Then"/> holds with
/// the true probability. Games outside first..last are not of it. Name is the coach's sentence in sample-logs/README.md.
/// </summary>
public sealed record PlantedTell(
    string Name, Func<Snap, bool> When, Func<Snap, bool> Then, double Probability, int FirstGame = 1, int LastGame = int.MaxValue)
{
    /// <summary>Snaps of the cell, and those among them where the habit held.</summary>
    public (int Plays, int Count) Observed(IEnumerable<Snap> snaps)
    {
        var plays = 0;
        var count = 0;
        foreach (var snap in snaps)
        {
            if (snap.At.IsTry || snap.Call.Kind == "none" || snap.At.Game < FirstGame || snap.At.Game > LastGame || !When(snap))
            {
                continue;
            }

            plays++;
            count += Then(snap) ? 1 : 0;
        }

        return (plays, count);
    }
}
