using Tendency.Breakdown.Counts;

namespace Tendency.Breakdown.Findings;

/// <summary>Whether a habit stayed the same from game to game.</summary>
/// <param name="Games">Plain counts of every game with plays of it, in order.</param>
/// <param name="SpreadP">How often a steady habit spreads this far from game to game.</param>
/// <param name="ChangeAfter">How many of <paramref name="Games"/> lie before the likeliest change; null with fewer than four games, which can show none.</param>
/// <param name="ChangeP">How often a steady habit shows a change this clear somewhere; null as above.</param>
public sealed record Steadiness(Habit Habit, IReadOnlyList<GameTally> Games, double SpreadP, int? ChangeAfter, double? ChangeP)
{
    /// <summary>Luck alone moves a steady habit this far less than one time in twenty.</summary>
    private const double Unlikely = 0.05;

    public Tally Total => Sum(Games);

    /// <summary>The last game before that change by its number among all games studied, from 1: what a page calls "game 3". Games with too few plays of the habit have a number too.</summary>
    public int? ChangeAfterGame { get; init; } = ChangeAfter;

    public bool Changed => ChangeP <= Unlikely;

    public bool Moved => SpreadP <= Unlikely || Changed;

    /// <summary>"changed after game 3: 57% before, 33% since", "moved", or "steady"; with how often luck alone does it.</summary>
    public string Verdict => Changed && ChangeAfter is int after
        ? $"changed after game {ChangeAfterGame}: {Percent.Of(Sum(Games.Take(after)))} before, {Percent.Of(Sum(Games.Skip(after)))} since ({Luck(ChangeP!.Value)} by luck alone)"
        : Moved ? $"moved ({Luck(SpreadP)} by luck alone)" : $"steady ({Luck(SpreadP)} by luck alone)";

    private static Tally Sum(IEnumerable<GameTally> games) => games.Aggregate(default(Tally), (sum, game) => sum.Plus(game.Tally));

    private static string Luck(double p) => p < 0.01 ? "under 1%" : Percent.Of(p);
}

/// <summary>A habit's count in one game.</summary>
public sealed record GameTally(string Game, Tally Tally);
