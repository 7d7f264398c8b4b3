namespace Tendency.SampleCharts.Walks;

/// <summary>
/// What everybody in the stadium knows before the snap.
/// Down 0 is a two-point try; ToGoal 1–99 yards to the goal line attacked; Clock seconds left in the quarter.
/// Always 1 ≤ ToGo ≤ ToGoal; ToGo = ToGoal exactly when the offense has goal to go.
/// </summary>
public readonly record struct Situation(
    int Game, int Series, int Quarter, int Clock, int Margin, int Down, int ToGo, int ToGoal, char Hash, string PreviousCall)
{
    public bool IsTry => Down == 0;

    public bool GoalToGo => ToGo == ToGoal;

    public bool FirstOfSeries => PreviousCall.Length == 0;

    public bool TwoMinute => Clock <= 120 && (Quarter == 2 || (Quarter >= 4 && Margin <= 0));

    public bool FourMinute => Quarter == 4 && Clock <= 240 && Margin is >= 1 and <= 16;

    public bool RedZone => ToGoal <= 20;

    public string DistanceBand => ToGo switch { <= 3 => "short", <= 6 => "medium", <= 10 => "long", _ => "extra long" };

    /// <summary>Third or fourth down, the snaps that keep or end a series.</summary>
    public bool MoneyDown => Down >= 3;
}
