using System.Globalization;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Keeps a spreadsheet from running text as a formula.</summary>
public static class FormulaText
{
    /// <summary>The text as it is, or behind an apostrophe when a spreadsheet would take it for a formula; a signed number is none.</summary>
    public static string Safe(string text)
    {
        var start = text.AsSpan().TrimStart();
        var runs = (start.Length > 0 && start[0] is '=' or '+' or '-' or '@') || text.StartsWith('\t') || text.StartsWith('\r');
        return runs && !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? "'" + text : text;
    }
}
