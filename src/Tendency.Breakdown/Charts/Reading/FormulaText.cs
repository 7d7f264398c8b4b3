using System.Buffers;
using System.Globalization;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Keeps a spreadsheet from running text as a formula.</summary>
public static class FormulaText
{
    // The wide forms count as the plain ones where a spreadsheet is set to Japanese or Chinese.
    private static readonly SearchValues<char> s_starts = SearchValues.Create("=+-@\uFF1D\uFF0B\uFF0D\uFF20");
    private static readonly SearchValues<char> s_numberLetters = SearchValues.Create("0123456789.eE+- ");

    /// <summary>The text as it is, or behind an apostrophe when a spreadsheet would take it for a formula; a signed number is none.</summary>
    public static string Safe(string text)
    {
        // A space, a tab or a line break before it does not keep a spreadsheet from running it.
        var start = 0;
        while (start < text.Length && (char.IsWhiteSpace(text[start]) || char.IsControl(text[start]) || CellText.IsInvisible(text[start])))
        {
            start++;
        }

        var runs = start < text.Length && (s_starts.Contains(text[start]) || text[0] is '\t' or '\r' or '\n');
        return runs && !IsNumber(text) ? "'" + text : text;
    }

    // Without letters but the exponent's: -Infinity is a number to a program and a name to a spreadsheet.
    private static bool IsNumber(string text) =>
        !text.AsSpan().ContainsAnyExcept(s_numberLetters) && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
