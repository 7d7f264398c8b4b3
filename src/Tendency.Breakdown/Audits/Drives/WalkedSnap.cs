namespace Tendency.Breakdown.Audits.Drives;

/// <summary>The cells of one snap that the drive walk reads. Yards; null or empty = not charted.</summary>
/// <param name="Row">Row of the play log.</param>
/// <param name="ToGoal">Yards to the goal line being attacked, 1 to 99.</param>
/// <param name="IsGoal">Whether the distance is written as goal, so that it follows the ball.</param>
internal sealed record WalkedSnap(int Row, int Play, int? Down, int? Distance, bool IsGoal, int? ToGoal, int? Gain)
{
    public string Offense { get; init; } = "";

    public int? Series { get; init; }

    public int? Quarter { get; init; }

    /// <summary>Seconds left in the quarter.</summary>
    public int? Clock { get; init; }

    public string Call { get; init; } = "";

    public string Result { get; init; } = "";

    public bool Touchdown { get; init; }

    public string PenaltyOn { get; init; } = "";

    public int? PenaltyYards { get; init; }

    public string Effect { get; init; } = "";

    public int? ToGo => IsGoal ? ToGoal : Distance;

    /// <summary>Yards the flag gives the offense: positive against the defense; null when the chart does not say.</summary>
    public int? Flagged => (PenaltyOn, PenaltyYards) switch
    {
        (_, null) => null,
        ("defense", int yards) => Math.Abs(yards),
        ("offense", int yards) => -Math.Abs(yards),
        _ => null,
    };

    /// <summary>Gain as the walk counts it: an incomplete pass whose gain is blank gained nothing.</summary>
    public int? Gained => Gain ?? (Result == "incomplete" ? 0 : null);
}
