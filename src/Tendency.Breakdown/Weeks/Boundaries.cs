namespace Tendency.Breakdown.Weeks;

/// <summary>Every boundary of a derived dimension, in yards, percent, seconds or plays; a staff sets its own in the week file.</summary>
public sealed record Boundaries
{
    /// <summary>Greatest distance that is still short, medium, long (yards to gain); above is extra long. Source: trade usage, settings by design.</summary>
    public int ShortMost { get; init; } = 3;

    public int MediumMost { get; init; } = 6;

    public int LongMost { get; init; } = 10;

    /// <summary>Greatest yards to goal of each field zone, from the goal line outwards.</summary>
    public int GoalLineMost { get; init; } = 3;

    public int TightRedMost { get; init; } = 10;

    public int RedZoneMost { get; init; } = 20;

    public int FringeMost { get; init; } = 40;

    public int OpenFieldMost { get; init; } = 79;

    public int ComingOutMost { get; init; } = 89;

    /// <summary>A lead or deficit of this many points or more is two scores.</summary>
    public int TwoScores { get; init; } = 9;

    /// <summary>Percent of the distance that a first, second, third or fourth down must gain to be a success.</summary>
    public int SuccessFirst { get; init; } = 40;

    public int SuccessSecond { get; init; } = 60;

    public int SuccessLate { get; init; } = 100;

    /// <summary>Least gain of an explosive run and pass, in yards.</summary>
    public int ExplosiveRun { get; init; } = 12;

    public int ExplosivePass { get; init; } = 16;

    /// <summary>Seconds left in the half that begin the two-minute state, and in the game that begin the four-minute state.</summary>
    public int TwoMinuteSeconds { get; init; } = 120;

    public int FourMinuteSeconds { get; init; } = 240;

    /// <summary>Largest lead, in points, that a team still protects by the clock in the four-minute state.</summary>
    public int FourMinuteLead { get; init; } = 16;

    /// <summary>The first so many countable snaps of a game are openers.</summary>
    public int OpenerPlays { get; init; } = 15;
}
