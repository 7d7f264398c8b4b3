using Tendency.SampleCharts.Teams;

namespace Tendency.SampleCharts;

/// <summary>What a simulated chart has in it. The default has nothing: run or pass is one coin, whatever the look and situation.</summary>
public sealed record ScenarioOptions
{
    /// <summary>The coin's chance of a run, in (0, 1), before swing and tells.</summary>
    public double RunShare { get; init; } = 0.5;

    /// <summary>Standard deviation, in log odds, of a game's own lean to the run.</summary>
    public double GameSwing { get; init; }

    /// <summary>Tells on top of the coin.</summary>
    public IReadOnlyList<LogOddsTell> Tells { get; init; } = [];

    /// <summary>Charted snaps a game at most: the film is cut there. A whole game has about 68.</summary>
    public int SnapsPerGame { get; init; } = 58;
}
