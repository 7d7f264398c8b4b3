using System.Globalization;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Understands one cell. Every method returns false for a filled cell it can not read, and is never called with a blank one.</summary>
internal static class CellReader
{
    private static readonly (string Prefix, bool IsOwn)[] s_sides =
        [("own", true), ("our", true), ("opponents", false), ("opponent", false), ("opp", false), ("their", false), ("-", true), ("+", false)];

    private static readonly string[] s_yardWords = ["yards", "yard", "yds", "yd", "y"];

    // Less than a yard is charted as one (common practice).
    private static readonly HashSet<string> s_inches = new(StringComparer.OrdinalIgnoreCase) { "inches", "inch", "in", "½", "1/2", "0.5", ".5", "<1", "foot", "feet" };

    /// <summary>Value of a choice, in its canonical spelling; empty when the cell says "not".</summary>
    public static bool TryChoice(ChartColumn column, string text, out string value)
    {
        foreach (var choice in column.Choices)
        {
            if (string.Equals(choice, text, StringComparison.OrdinalIgnoreCase))
            {
                value = choice;
                return true;
            }
        }

        var key = ColumnCatalogue.Key(text);
        var found = column.AlsoWritten.GetValueOrDefault(key) ?? column.Choices.FirstOrDefault(c => ColumnCatalogue.Key(c) == key);
        value = found ?? "";
        return found is not null;
    }

    /// <summary>A whole number within the column's range; "7.0", "+7", "7 yds", "1st" and a true minus sign are read, and "no gain" is a gain of 0.</summary>
    public static bool TryNumber(ChartColumn column, string text, out int value)
    {
        value = 0;
        var plain = WithoutYards(text.Replace('\u2212', '-').Replace('\u2013', '-'));
        if (column.Name == ColumnNames.Gain && (plain.Equals("no gain", StringComparison.OrdinalIgnoreCase) || plain.Equals("ng", StringComparison.OrdinalIgnoreCase)))
        {
            return true;
        }

        if (column.Name == ColumnNames.Quarter)
        {
            plain = Quarter(plain);
        }

        if (!double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            || number != Math.Floor(number) || number < column.Least || number > column.Most)
        {
            return false;
        }

        value = (int)number;
        return true;
    }

    // Q1, 1st, 4Q, OT.
    private static string Quarter(string text) => ColumnCatalogue.Key(text) switch
    {
        "q1" or "1q" or "1st" or "first" => "1",
        "q2" or "2q" or "2nd" or "second" => "2",
        "q3" or "3q" or "3rd" or "third" => "3",
        "q4" or "4q" or "4th" or "fourth" => "4",
        "ot" or "overtime" => "5",
        _ => text,
    };

    /// <summary>Minutes and seconds to seconds; ":42" is 42 seconds.</summary>
    public static bool TryClock(ChartColumn column, string text, out int seconds)
    {
        seconds = 0;

        // A spreadsheet turns 7:42 into 7:42:00, 7:42:00 AM or, typed as 0:07:42, into 0:07:42.
        var plain = text.ToUpperInvariant();
        var half = plain.EndsWith("AM", StringComparison.Ordinal) ? 0 : plain.EndsWith("PM", StringComparison.Ordinal) ? 12 : -1;
        var parts = (half < 0 ? plain : plain[..^2].TrimEnd()).Split(':');
        var hour = parts.Length is not (2 or 3) ? -1 : parts[0].Length == 0 ? 0 : Digits(parts[0]);
        if (half >= 0)
        {
            hour = hour is >= 1 and <= 12 ? (hour % 12) + half : -1;
        }

        var next = hour < 0 ? -1 : Digits(parts[1]);
        var last = parts.Length == 3 ? Digits(parts[2]) : 0;
        if (hour is < 0 or > 60 || next is < 0 or > 59 || last is < 0 or > 59 || (last > 0 && hour > 0))
        {
            return false;
        }

        seconds = last > 0 ? (next * 60) + last : (hour * 60) + next;
        return seconds >= column.Least && seconds <= column.Most;
    }

    private static int Digits(string text) =>
        text.Length is 1 or 2 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;

    /// <summary>Yards to gain: 7, 7 yds, inches (counts as 1). <paramref name="yards"/> is null for the word goal.</summary>
    public static bool TryDistance(ChartColumn column, string text, out int? yards)
    {
        yards = null;
        if (text.Equals("goal", StringComparison.OrdinalIgnoreCase) || text.Equals("g", StringComparison.OrdinalIgnoreCase) || text.Equals("gl", StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        if (s_inches.Contains(text))
        {
            yards = 1;
            return true;
        }

        var read = TryNumber(column, WithoutYards(text), out var number);
        yards = number;
        return read;
    }

    /// <summary>Yards to the goal line being attacked: own 25 is 75, opp 8 is 8; -35 is own 35, +35 is opp 35; a bare 35 is neither unless said so.</summary>
    public static bool TryYardLine(string text, out int yardsToGoal) => TryYardLine(text, false, out yardsToGoal);

    /// <param name="bareIsOpponents">Whether a line without a sign is the opponent's.</param>
    public static bool TryYardLine(string text, bool bareIsOpponents, out int yardsToGoal)
    {
        yardsToGoal = 0;
        var plain = text.Trim().Replace('\u2212', '-').Replace('\u2013', '-').ToLowerInvariant();
        var own = false;
        var signed = bareIsOpponents;
        if (plain is "midfield")
        {
            yardsToGoal = 50;
            return true;
        }

        foreach (var (prefix, isOwn) in s_sides)
        {
            if (plain.StartsWith(prefix, StringComparison.Ordinal))
            {
                (own, signed) = (isOwn, true);
                plain = plain[prefix.Length..].TrimStart(' ', '.', '-', '_');
                break;
            }
        }

        if (!int.TryParse(WithoutYards(plain), NumberStyles.None, CultureInfo.InvariantCulture, out var line) || line is < 1 or > 50 || (!signed && line != 50))
        {
            return false;
        }

        yardsToGoal = own ? 100 - line : line;
        return true;
    }

    // 7 yds is 7; a lone word is left as it is.
    private static string WithoutYards(string text)
    {
        foreach (var word in s_yardWords)
        {
            if (text.Length > word.Length && text.EndsWith(word, StringComparison.OrdinalIgnoreCase) && !char.IsAsciiLetter(text[^(word.Length + 1)]))
            {
                return text[..^word.Length].TrimEnd();
            }
        }

        return text;
    }

    /// <summary>A yard line as the chart writes it: own 25, 50, opp 8.</summary>
    public static string YardLine(int yardsToGoal) => yardsToGoal switch
    {
        > 50 => $"own {100 - yardsToGoal}",
        50 => "50",
        _ => $"opp {yardsToGoal}",
    };

    /// <summary>Two digits, backs and tight ends, together at most five; "11 personnel", "1-1" and "11p" are read, and a lone digit has lost its zero.</summary>
    public static bool TryPersonnel(string text, out string value)
    {
        var digits = string.Concat(text.Where(char.IsAsciiDigit));
        if (digits.Length == 1)
        {
            digits = "0" + digits;
        }

        var letters = ColumnCatalogue.Key(string.Concat(text.Where(c => !char.IsAsciiDigit(c) && c is not ('.' or '\''))));
        value = digits;
        return digits.Length == 2 && letters is "" or "p" or "pers" or "personnel" && digits.Length == 2 && digits[0] - '0' + digits[1] - '0' <= 5;
    }
}
