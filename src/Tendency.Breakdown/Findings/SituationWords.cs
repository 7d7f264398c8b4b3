using Tendency.Breakdown.Findings.SelfScouts;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings;

/// <summary>Says a situation and an outcome as a coach would.</summary>
public static class SituationWords
{
    private static readonly string[] s_paceWords = ["huddle", "tempo", "pace"];

    /// <summary>"Wing left, back strong, 3rd &amp; long".</summary>
    public static string Of(IEnumerable<TellCondition> conditions)
    {
        var words = string.Join(", ", conditions.Select(c => Of(c.Name, c.Value)));
        return words.Length == 0 ? "All plays" : char.ToUpperInvariant(words[0]) + words[1..];
    }

    /// <summary>One condition in words, in the middle of a sentence.</summary>
    public static string Of(string name, string value) => name switch
    {
        Down => $"{Ordinal(value)} down",
        DownDistance when value.Length > 1 => Ordinal(value[..1]) + value[1..],
        Personnel => $"{value} personnel",
        BackSide => value == "none" ? "no back" : $"back {value}",
        BackAt => value == "none" ? "no back" : $"back {Side(value)}",
        BackSet => value switch { "gun" => "gun", "under" => "under center", "empty" => "empty", _ => value },
        Attached => value == "none" ? "no attached tight end" : $"tight end {Side(value)}",
        Wing => value == "none" ? "no wing" : $"wing {Side(value)}",
        Strength => $"strength {Side(value)}",
        Motion => value == "none" ? "no motion" : $"{value} motion",
        Hash => value == "M" ? "middle of the field" : $"{Side(value)} hash",
        FieldSide => value == "middle" ? "middle of the field" : $"wide side {value}",
        FirstOfSeries => value == "yes" ? "first play of a series" : "not the first play of a series",
        PreviousCall => $"after a {value}",
        Opener => value == "yes" ? "openers" : "after the openers",
        SuddenChange => value == "yes" ? "sudden change" : "no sudden change",
        DistanceBand => $"{value} distance",
        ClockState => value == "normal" ? "no clock pressure" : value,
        Quarter => value == "5" ? "overtime" : $"{Ordinal(value)} quarter",
        ScoutColumns.WingSide => value switch { "none" => "no wing", "both" => "wing both sides", _ => $"wing {value}" },
        ScoutColumns.LongYardage => value == "yes" ? "3rd or 4th and long" : "not 3rd and long",
        ScoutColumns.BackOffset => $"back {value}",
        ScoutColumns.NearGoal => value == "yes" ? "inside the 10" : "outside the 10",
        Shell => value switch { "0" => "no high safety shown", "1" => "one high safety shown", "2" => "two high safeties shown", "3" => "three high safeties shown", _ => $"{value} high safeties shown" },
        Tempo => Pace(value),
        Formation or FormationFamily or FieldZone or ScoreState or Coverage => value,
        Front => Fronts.FrontWord.Of(value),
        _ => $"{name.Replace('_', ' ')} {value}",
    };

    /// <summary>What they do: "run", "run to back", "slide away".</summary>
    public static string Outcome(string column, string value) => column switch
    {
        RunTo or RunToStrength => $"run {value}",
        SlideTo => $"slide {value}",
        Rushers => $"{value} rush",
        PressureSide => value switch { "none" => "no extra rusher", "both" => "pressure from both sides", _ => $"pressure from the {Side(value)}" },
        PressureTo => $"pressure {value}",
        RunSide => $"run {Side(value)}",
        SlideSide => $"slide {Side(value)}",
        Front => Fronts.FrontWord.Of(value),
        Success => value == "yes" ? "success" : "no success",
        Explosive => value == "yes" ? "explosive" : "not explosive",
        Down or Personnel or BackSide or BackAt or BackSet or Attached or Wing or Strength or Motion or Hash or FieldSide or Shell or Tempo => Of(column, value),
        _ => value,
    };

    // "Fast" alone could be anything; "no huddle" is said as it is.
    private static string Pace(string value) => Array.Exists(s_paceWords, word => value.Contains(word, StringComparison.OrdinalIgnoreCase)) ? value : $"{value} tempo";

    private static string Side(string value) => value switch { "L" => "left", "R" => "right", "both" => "both sides", _ => value };

    private static string Ordinal(string number) => number switch { "1" => "1st", "2" => "2nd", "3" => "3rd", "4" => "4th", _ => number };
}
