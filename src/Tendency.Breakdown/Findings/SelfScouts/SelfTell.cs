using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>What to do about a tell of ours.</summary>
public enum Advice
{
    /// <summary>Call the other one as often as <see cref="BreakCount"/> says.</summary>
    Break,

    /// <summary>It wins as it is: keep it and carry the counter.</summary>
    Keep,
}

/// <summary>A tell of our own: what it costs, since when, and how to be rid of it.</summary>
/// <param name="Rank">1 for the dearest.</param>
/// <param name="Question">What it answers for them.</param>
/// <param name="Tell">The situation and its figures; empty conditions for a habit in all plays.</param>
/// <param name="SnapsAGame">Snaps of the look in a game, mean.</param>
/// <param name="MoneyShare">Part of them on third or fourth down or in the red zone.</param>
/// <param name="Other">The call to break it with: the other one called most often from the look, else from all plays; empty when there is none.</param>
/// <param name="Counter">What punishes whoever sits on it.</param>
public sealed record SelfTell(
    int Rank,
    ScoutQuestion Question,
    Tell Tell,
    double SnapsAGame,
    double MoneyShare,
    TellHistory History,
    string Other,
    BreakCount Break,
    CallFilm Film,
    string Counter,
    Advice Advice)
{
    /// <summary>The plays of the look.</summary>
    public required PlayLog Plays { get; init; }

    /// <summary>A side we go to, held against an even split.</summary>
    public bool IsHabit { get; init; }

    /// <summary>Snaps a game × how far the share expected next time lies from our usual rate × (1 + part on money downs): snaps they guess better.</summary>
    public double Cost => SnapsAGame * Math.Max(0, Tell.ShrunkShare - Tell.BaseShare) * (1 + MoneyShare);

    /// <summary>Calls of the other kind in the next game beyond those that come anyway.</summary>
    public double ExtraCalls => Math.Max(0, Break.NextGame - (Break.SnapsAGame * (1 - Tell.Share)));
}
