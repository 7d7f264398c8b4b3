namespace Tendency.Breakdown.Charts.Columns;

/// <summary>The names of the chart's columns and of the dimensions derived from them, as they stand in headers, options and output.</summary>
public static class ColumnNames
{
    public const string Game = "game";
    public const string Play = "play";
    public const string Offense = "offense";
    public const string Defense = "defense";
    public const string Series = "series";
    public const string Quarter = "quarter";
    public const string Clock = "clock";
    public const string Margin = "margin";
    public const string Down = "down";
    public const string Distance = "distance";
    public const string BallOn = "ball_on";
    public const string Hash = "hash";
    public const string Personnel = "personnel";
    public const string Formation = "formation";
    public const string Strength = "strength";
    public const string BackSet = "back_set";
    public const string BackSide = "back_side";
    public const string Attached = "attached";
    public const string Wing = "wing";
    public const string Motion = "motion";
    public const string Tempo = "tempo";
    public const string Call = "call";
    public const string RunScheme = "run_scheme";
    public const string RunSide = "run_side";
    public const string Gap = "gap";
    public const string Read = "read";
    public const string PassConcept = "pass_concept";
    public const string Drop = "drop";
    public const string Protection = "protection";
    public const string SlideSide = "slide_side";
    public const string Front = "front";
    public const string Coverage = "coverage";
    public const string Shell = "shell";
    public const string Rushers = "rushers";
    public const string Box = "box";
    public const string PressureSide = "pressure_side";
    public const string Gain = "gain";
    public const string Result = "result";
    public const string Touchdown = "touchdown";
    public const string Target = "target";
    public const string PenaltyOn = "penalty_on";
    public const string PenaltyYards = "penalty_yards";
    public const string PenaltyEffect = "penalty_effect";
    public const string Clip = "clip";
    public const string Note = "note";

    /// <summary>Yards to the goal line being attacked, 1 to 99, from <c>ball_on</c>.</summary>
    public const string YardsToGoal = "yards_to_goal";

    /// <summary>The call as charted, before a run-pass option was counted by its result.</summary>
    public const string Called = "called";

    /// <summary>Left, right, middle or none: the side the back stands on, seen from behind the offense.</summary>
    public const string BackAt = "back_at";

    public const string DistanceBand = "distance_band";
    public const string DownDistance = "down_distance";
    public const string FieldSide = "field_side";
    public const string FieldZone = "field_zone";
    public const string ScoreState = "score_state";
    public const string FirstOfSeries = "first_of_series";
    public const string PreviousCall = "previous_call";
    public const string ClockState = "clock_state";
    public const string Opener = "opener";
    public const string SuddenChange = "sudden_change";
    public const string FormationFamily = "formation_family";
    public const string RunFamily = "run_family";
    public const string RunTo = "run_to";
    public const string RunToStrength = "run_to_strength";
    public const string SlideTo = "slide_to";
    public const string PressureTo = "pressure_to";
    public const string Success = "success";
    public const string Explosive = "explosive";

    /// <summary>The dimensions derived from the charted cells, in the contract's order.</summary>
    public static IReadOnlyList<string> DerivedDimensions { get; } =
    [
        DistanceBand, DownDistance, FieldSide, FieldZone, ScoreState, FirstOfSeries, PreviousCall, ClockState, Opener, SuddenChange,
        FormationFamily, RunFamily, RunTo, RunToStrength, SlideTo, PressureTo, BackAt, Success, Explosive,
    ];

    /// <summary>Where a row came from: the file's name and the physical line in it.</summary>
    public const string SourceFile = "source_file";
    public const string SourceLine = "source_line";
}
