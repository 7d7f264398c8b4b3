using System.Buffers;
using System.Globalization;
using System.Text.RegularExpressions;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The text of a cell, freed of what a person does not see and a spreadsheet adds.</summary>
internal static partial class CellText
{
    private const int MostShown = 80;

    // Zero-width characters, marks of writing direction, byte order marks, soft hyphens: seen by nobody, unequal to everything.
    private static readonly SearchValues<char> s_invisible =
        SearchValues.Create("\u00AD\u061C\u180E\u200B\u200C\u200D\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2060\u2066\u2067\u2068\u2069\uFEFF\0");

    private static readonly SearchValues<string> s_months =
        SearchValues.Create(["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"], StringComparison.OrdinalIgnoreCase);

    private static readonly string[] s_dates = ["d-MMM", "MMM-d", "d-MMM-yy", "d-MMM-yyyy", "MMM-d-yyyy", "yyyy-M-d"];

    /// <summary>Trimmed and without invisible characters.</summary>
    public static string Clean(string text, out bool hadMarks)
    {
        hadMarks = HasMarks(text);
        return hadMarks ? string.Concat(text.Where(c => !s_invisible.Contains(c))).Trim() : text.Trim();
    }

    public static bool IsInvisible(char c) => s_invisible.Contains(c);

    public static bool HasMarks(string text) => text.AsSpan().ContainsAny(s_invisible);

    /// <summary>Cleaned, and a whole number without its decimals: tables that pass through other programs turn 7 into 7.0.</summary>
    public static string Plain(ChartColumn column, string text)
    {
        var clean = Clean(text, out _);
        return column.Kind != CellKind.Text && clean.Length > 2 && clean[^1] == '0' && WholeNumber().Match(clean) is { Success: true } match ? match.Groups["whole"].Value : clean;
    }

    /// <summary>A value for a message: on one line, of bearable length.</summary>
    public static string Shown(string text)
    {
        var cut = text.Length > MostShown ? text[..(char.IsHighSurrogate(text[MostShown - 1]) ? MostShown - 1 : MostShown)] + "…" : text;
        return cut.Any(char.IsControl) ? string.Concat(cut.Select(c => char.IsControl(c) ? ' ' : c)) : cut;
    }

    /// <summary>Whether the text is a date as spreadsheets write one, such as 11-Dec, Dec-11 or 2026-12-11, or a spreadsheet's error.</summary>
    public static bool IsSpreadsheetDamage(string text) =>
        text.Length is >= 4 and <= 24 && (text[0] == '#' ? SheetError().IsMatch(text) : char.IsAsciiLetterOrDigit(text[0]) && (IsoDate().IsMatch(text) || (text.AsSpan().ContainsAny(s_months) && MonthDate().IsMatch(text))));

    /// <summary>The pair of numbers a date was before a spreadsheet took it for one: 11-Dec was 12-11 or 11-12.</summary>
    public static string PairBefore(string text)
    {
        var dashed = text.Split('T')[0].Replace(' ', '-').Replace('/', '-').Replace('.', '-');
        if (!DateTime.TryParseExact(dashed, s_dates, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return "";
        }

        return day.Day == day.Month ? $"{day.Month}-{day.Day}" : $"{day.Month}-{day.Day} or {day.Day}-{day.Month}";
    }

    [GeneratedRegex(@"^(?<whole>[+\-\u2212\u2013]?\d{1,9})[.,]0+$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex WholeNumber();

    [GeneratedRegex(@"^#(N/A|REF!|VALUE!|NAME\?|DIV/0!|NUM!|NULL!|SPILL!|CALC!)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase)]
    private static partial Regex SheetError();

    [GeneratedRegex(@"^\d{4}-\d\d?-\d\d?([ T]\d\d?:\d\d(:\d\d)?)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex IsoDate();

    [GeneratedRegex(@"^(\d{1,2}[- /.](jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)|(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)[- /.]\d{1,2})([- /.]\d{2,4})?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase)]
    private static partial Regex MonthDate();
}
