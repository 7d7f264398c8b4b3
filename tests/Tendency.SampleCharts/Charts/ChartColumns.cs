using System.Globalization;
using Tendency.SampleCharts.Walks;

namespace Tendency.SampleCharts.Charts;

/// <summary>A column of the chart: its header and how a snap is written in it.</summary>
public sealed record ChartColumn(string Header, Func<ChartedSnap, string> Write);

/// <summary>A snap as one chart holds it: whose chart, which game, which number on film.</summary>
public sealed record ChartedSnap(string Game, int Play, string ClipPrefix, Snap Snap);

/// <summary>Every column of the play chart, in its order, and how each is written by a charter who makes no mistakes.</summary>
public static class ChartColumns
{
    public static IReadOnlyList<ChartColumn> All { get; } =
    [
        new("game", c => c.Game),
        new("play", c => Number(c.Play)),
        new("offense", c => c.Snap.Offense),
        new("defense", c => c.Snap.Defense),
        new("series", c => Number(c.Snap.At.Series)),
        new("quarter", c => Number(c.Snap.At.Quarter)),
        new("clock", c => $"{c.Snap.At.Clock / 60}:{c.Snap.At.Clock % 60:00}"),
        new("margin", c => Number(c.Snap.At.Margin)),
        new("down", c => c.Snap.At.IsTry ? "try" : Number(c.Snap.At.Down)),
        new("distance", c => c.Snap.At.GoalToGo ? "goal" : Number(c.Snap.At.ToGo)),
        new("ball_on", c => BallOn(c.Snap.At.ToGoal)),
        new("hash", c => c.Snap.At.Hash.ToString()),
        new("personnel", c => c.Snap.Look.Personnel),
        new("formation", c => c.Snap.Look.Formation),
        new("strength", c => c.Snap.Look.Strength.ToString()),
        new("back_set", c => c.Snap.Look.BackSet),
        new("back_side", c => c.Snap.Look.BackSide),
        new("attached", c => c.Snap.Look.Attached),
        new("wing", c => c.Snap.Look.Wing),
        new("motion", c => c.Snap.Look.Motion),
        new("tempo", c => c.Snap.Look.Tempo),
        new("call", c => c.Snap.Call.Kind),
        new("run_scheme", c => c.Snap.Call.RunScheme),
        new("run_side", c => Sides.Text(c.Snap.Call.RunSide)),
        new("gap", c => c.Snap.Call.Gap),
        new("read", c => c.Snap.Call.Read),
        new("pass_concept", c => c.Snap.Call.PassConcept),
        new("drop", c => c.Snap.Call.Drop),
        new("protection", c => c.Snap.Call.Protection),
        new("slide_side", c => Sides.Text(c.Snap.Call.SlideSide)),
        new("front", c => c.Snap.Faced.Front),
        new("coverage", c => c.Snap.Faced.Coverage),
        new("shell", c => Number(c.Snap.Faced.Shell)),
        new("rushers", c => Number(c.Snap.Faced.Rushers)),
        new("box", c => Number(c.Snap.Faced.Box)),
        new("pressure_side", c => c.Snap.Faced.PressureSide),
        new("gain", c => c.Snap.Outcome.Gain is { } gain ? Number(gain) : ""),
        new("result", c => c.Snap.Outcome.Result),
        new("touchdown", c => c.Snap.Outcome.Touchdown ? "yes" : ""),
        new("target", c => c.Snap.Outcome.Target),
        new("penalty_on", c => c.Snap.Outcome.Flag?.On ?? ""),
        new("penalty_yards", c => c.Snap.Outcome.Flag is { } flag ? Number(flag.Yards) : ""),
        new("penalty_effect", c => c.Snap.Outcome.Flag?.Effect ?? ""),
        new("clip", c => $"{c.ClipPrefix}-{c.Play:000}"),
        new("note", c => c.Snap.Outcome.Note),
    ];

    /// <summary>`own 25` is 75 yards from the goal line attacked, `opp 8` is 8, midfield is `50`.</summary>
    public static string BallOn(int toGoal) => toGoal switch
    {
        50 => "50",
        > 50 => $"own {100 - toGoal}",
        _ => $"opp {toGoal}",
    };

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
