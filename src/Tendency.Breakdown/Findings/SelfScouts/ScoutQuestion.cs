using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Situations;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>One thing the other staff wants to know before our snap.</summary>
/// <param name="Name">"Run or pass", "Front".</param>
/// <param name="Outcome">Column whose values they want to guess.</param>
/// <param name="Among">Plays that can answer it, in words: "runs".</param>
/// <param name="Dimensions">What they can see or know.</param>
public sealed record ScoutQuestion(string Name, string Outcome, string Among, IReadOnlyList<string> Dimensions)
{
    /// <summary>The plays that can answer it.</summary>
    public Func<PlayLog, PlayLog> Within { get; init; } = plays => plays;

    /// <summary>From this share on they may sit on it: seven of ten for one of two (the trade's line for watching a tendency), else more often than not.</summary>
    public double LeastShare { get; init; } = MoreOftenThanNot;

    /// <summary>Most conditions crossed.</summary>
    public int Depth { get; init; } = 2;

    private const double Watched = 0.7;
    private const double MoreOftenThanNot = 0.5;

    /// <summary>A way out of two that stands against an even split, so that a habit in all plays shows too.</summary>
    public bool IsSide { get; init; }

    public static IReadOnlyList<ScoutQuestion> For(Unit unit) => unit == Unit.Offense ? s_offense : s_defense;

    // What we choose and they see. Few, so that each look is found by its own name: the middle of the field says nothing of formation, and
    // personnel says what formation says. Long yardage and the clock stand here to take out what they dictate.
    private static readonly IReadOnlyList<string> s_looks =
        [Formation, BackSet, ScoutColumns.BackOffset, Motion, ScoutColumns.WingSide, FirstOfSeries, ScoutColumns.LongYardage, ClockState];

    private static readonly IReadOnlyList<string> s_situations =
        [Down, DownDistance, FieldZone, ScoreState, Hash, PreviousCall, Quarter, Opener, SuddenChange, Personnel, Tempo];

    private static readonly IReadOnlyList<ScoutQuestion> s_offense =
    [
        new("Run or pass, by look", Call, "plays", s_looks) { LeastShare = Watched },
        new("Run or pass, by situation", Call, "plays", s_situations) { LeastShare = Watched },
        new("Run to the back or away", RunTo, "runs, back offset", s_looks) { IsSide = true, LeastShare = Watched },
        new("Run to the strength or away", RunToStrength, "runs", s_looks) { IsSide = true, LeastShare = Watched },
        new("Run scheme", RunScheme, "runs", s_looks) { Within = Runs },
        new("Kind of pass", Drop, "passes", s_looks) { Within = Passes },
        new("Slide", SlideTo, "passes, back offset", s_looks) { IsSide = true, LeastShare = Watched },
    ];

    // What an offense knows when it breaks the huddle, and what we show it.
    private static readonly IReadOnlyList<string> s_knows =
    [
        Down, DownDistance, Hash, FieldZone, Personnel, Formation, FormationFamily, BackSet, BackSide, Attached, Wing, Motion, ScoreState, FirstOfSeries, PreviousCall,
        ScoutColumns.LongYardage, ScoutColumns.NearGoal,
    ];

    private static readonly IReadOnlyList<string> s_shown = [.. s_knows, Shell, Front];

    // Pressures are few: asked of what is most said to give their side away.
    private static readonly IReadOnlyList<string> s_pressured = [ScoutColumns.LongYardage, Hash, Personnel, BackSet, Shell, Front];

    private static readonly IReadOnlyList<ScoutQuestion> s_defense =
    [
        new("Front", Front, "snaps", s_knows),
        new("Coverage", Coverage, "snaps", s_shown),
        new("Pressure", ScoutColumns.Pressure, "snaps", s_shown),
        new("How many rush", Rushers, "snaps", s_shown),
        new("Where pressure comes from", PressureTo, "pressures, back offset", s_pressured) { IsSide = true, LeastShare = Watched, Depth = 1 },
        new("Side of the pressure", PressureSide, "pressures from one side", s_pressured) { IsSide = true, LeastShare = Watched, Depth = 1, Within = OneSided },
    ];

    private static PlayLog Runs(PlayLog plays) => plays.Where(Call, "run");

    private static PlayLog Passes(PlayLog plays) => plays.Where(Call, "pass");

    private static PlayLog OneSided(PlayLog plays) => plays.Where(PressureSide, "L", "R");
}
