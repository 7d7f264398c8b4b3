using System.Globalization;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Understands one cell. Every method returns false for a filled cell it can not read, and is never called with a blank one.</summary>
internal static class CellReader
{
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

    /// <summary>A whole number within the column's range; "7.0", "+7" and a true minus sign are read.</summary>
    public static bool TryNumber(ChartColumn column, string text, out int value)
    {
        value = 0;
        var plain = text.Replace('\u2212', '-').Replace('\u2013', '-');
        if (!double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            || number != Math.Floor(number) || number < column.Least || number > column.Most)
        {
            return false;
        }

        value = (int)number;
        return true;
    }

    /// <summary>Minutes and seconds to seconds.</summary>
    public static bool TryClock(ChartColumn column, string text, out int seconds)
    {
        seconds = 0;
        var parts = text.Split(':');
        if (parts.Length is not (2 or 3)
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var rest)
            || minutes > 60 || rest > 59)
        {
            return false;
        }

        // A spreadsheet turns 7:42 into 7:42:00.
        if (parts.Length == 3 && parts[2] is not ("00" or "0"))
        {
            return false;
        }

        seconds = (minutes * 60) + rest;
        return seconds >= column.Least && seconds <= column.Most;
    }

    /// <summary>Yards to gain. <paramref name="yards"/> is null for the word goal.</summary>
    public static bool TryDistance(ChartColumn column, string text, out int? yards)
    {
        yards = null;
        if (text.Equals("goal", StringComparison.OrdinalIgnoreCase) || text.Equals("g", StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        var read = TryNumber(column, text, out var number);
        yards = number;
        return read;
    }

    /// <summary>Yards to the goal line being attacked: own 25 is 75, opp 8 is 8; -35 is own 35, +35 is opp 35.</summary>
    public static bool TryYardLine(string text, out int yardsToGoal)
    {
        yardsToGoal = 0;
        var plain = text.Trim().Replace('\u2212', '-').Replace('\u2013', '-').ToLowerInvariant();
        var own = false;
        var signed = false;
        foreach (var (prefix, isOwn) in ((string, bool)[])[("own", true), ("opponent", false), ("opp", false), ("-", true), ("+", false)])
        {
            if (plain.StartsWith(prefix, StringComparison.Ordinal))
            {
                (own, signed) = (isOwn, true);
                plain = plain[prefix.Length..].TrimStart(' ', '.');
                break;
            }
        }

        if (!int.TryParse(plain, NumberStyles.None, CultureInfo.InvariantCulture, out var line) || line is < 1 or > 50 || (!signed && line != 50))
        {
            return false;
        }

        yardsToGoal = own ? 100 - line : line;
        return true;
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
