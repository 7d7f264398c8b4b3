using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>What punishes whoever sits on a tell: the call that starts like the one they expect. Common practice; the staff's own book comes first.</summary>
internal static class Counters
{
    /// <param name="column">Outcome's column.</param>
    /// <param name="value">What they expect.</param>
    /// <param name="other">What we call instead most often; empty when nothing else is charted.</param>
    public static string Of(string column, string value, string other) => (column, value) switch
    {
        (Call, "run") => "play action off that run's first steps",
        (Call, "pass") => "a draw, or a screen behind their rush",
        (RunTo or RunToStrength, _) => $"the same first steps, the ball {other}",
        (RunScheme, "split zone") => "the same block kept outside: throw to that man in the flat",
        (RunScheme, "inside zone" or "outside zone" or "mid zone" or "zone read") => "a boot away from the same first steps",
        (RunScheme, "toss sweep" or "pin pull" or "jet sweep") => "fake it wide and run inside behind it",
        (RunScheme, "power" or "counter gt" or "trap" or "duo" or "iso") => "the same pullers with play action behind them",
        (RunScheme, _) => "play action off that run's first steps",
        (Drop, "screen") => "fake the screen and throw over it",
        (Drop, "quick") => "the same release, then go: a double move",
        (Drop, "boot" or "play action") => "hand the ball off from the same look",
        (Drop, "deep") => "check it down to the back by plan",
        (Drop, _) => "a quick throw from the same look",
        (SlideTo, _) => "slide the other way, or both ways from the center",
        (Front, _) => other.Length > 0 ? $"line up in {Fronts.FrontWord.Of(value)}, move to {Fronts.FrontWord.Of(other)} at the snap" : "line up in it and move at the snap",
        (Coverage, _) => other.Length > 0 ? $"show {value}, turn it into {other} at the snap" : "show it and turn it at the snap",
        (ScoutColumns.Pressure, ScoutColumns.Pressured) => "show the pressure and drop out of it",
        (ScoutColumns.Pressure, _) => "bring one more from the look that never brought one",
        (PressureTo or PressureSide, _) => "show it from there and bring it from the other side",
        (Rushers, _) => "show the same men and change who drops",
        _ => "the other call from the same look",
    };
}
