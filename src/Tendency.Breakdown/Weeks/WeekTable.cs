using System.Globalization;
using Tendency.Breakdown.Problems;
using Tomlyn;
using Tomlyn.Syntax;

namespace Tendency.Breakdown.Weeks;

/// <summary>The keys of one table of a week file. Each typed question reports a value it can not take and then answers as if the key were not there.</summary>
internal sealed class WeekTable(string file, string name, TextPosition start, List<Problem> problems)
{
    private readonly List<(string Key, TextPosition At, SyntaxNode Value)> _entries = [];
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    public IEnumerable<string> Keys => _entries.Select(entry => entry.Key);

    public void Add(string key, TextPosition at, SyntaxNode value) => _entries.Add((key, at, value));

    public string? Text(string key) => Find(key) is not { } value ? null
        : value is StringValueSyntax { Value: { } text } && !text.Any(char.IsControl) ? text.Trim()
        : Refuse<string>(key, value, "text in quotes");

    /// <summary>A list of texts, numbers written out; one text alone is a list of one.</summary>
    public IReadOnlyList<string>? Texts(string key)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        var items = value is ArraySyntax list ? list.Items.Select(item => item.Value) : [value as ValueSyntax];
        var texts = items.Select(Scalar).ToArray();
        return texts.Contains(null) ? Refuse<IReadOnlyList<string>>(key, value, "text in quotes, or a list of such texts in [ ]") : [.. texts.OfType<string>()];
    }

    public double? Number(string key, double least, double most, bool openEnds = false)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        var number = value switch { FloatValueSyntax f => f.Value, IntegerValueSyntax i => i.Value, _ => double.NaN };
        var holds = openEnds ? number > least && number < most : number >= least && number <= most;
        if (!holds)
        {
            _ = Refuse<string>(key, value, openEnds ? string.Create(CultureInfo.InvariantCulture, $"a number between {least} and {most}, such as 0.95") : string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most}"));
        }

        return holds ? number : null;
    }

    public bool? Flag(string key)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        if (value is BooleanValueSyntax flag)
        {
            return flag.Value;
        }

        _ = Refuse<string>(key, value, "true or false, without quotes");
        return null;
    }

    public int? Whole(string key, int least, int most)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        if (value is IntegerValueSyntax number && number.Value >= least && number.Value <= most)
        {
            return (int)number.Value;
        }

        _ = Refuse<string>(key, value, $"a whole number from {least} to {most}");
        return null;
    }

    /// <summary>A day, as a TOML date or as the same in quotes.</summary>
    public DateOnly? Date(string key)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        var text = value is DateTimeValueSyntax { Value: { Kind: TomlDateTimeKind.LocalDate } day } ? day.ToString() : (value as StringValueSyntax)?.Value;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return date;
        }

        _ = Refuse<string>(key, value, "a day as year-month-day, such as 2026-10-24");
        return null;
    }

    public string? Choice(string key, params IReadOnlyList<string> choices)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        var text = (value as StringValueSyntax)?.Value ?? "";
        return choices.FirstOrDefault(choice => string.Equals(choice, text.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? Refuse<string>(key, value, "one of " + string.Join(", ", choices.Select(choice => $"\"{choice}\"")), NearestWord.In(choices, text));
    }

    /// <summary>The name of a file in the week's folder.</summary>
    public string? FileName(string key)
    {
        var text = Text(key);
        if (text is null || FolderFile.Refusal(text) is not { } why)
        {
            return text;
        }

        Report(WeekRules.OutsideFolder, Position(key), key, text, $"{Path(key)} names '{text}', which {why}; it is not read.");
        return null;
    }

    /// <summary>The tables under a key: one table, or several.</summary>
    public IReadOnlyList<SyntaxNode> Nodes(string key)
    {
        _ = _asked.Add(key);
        return [.. _entries.Where(entry => entry.Key == key).Select(entry => entry.Value)];
    }

    /// <summary>Reports every key that nobody asked for, with the nearest of those that were.</summary>
    /// <param name="alsoKnown">Keys that may be asked for in other tables of this kind.</param>
    public void ReportUnknown(params IEnumerable<string> alsoKnown)
    {
        var known = _asked.Concat(alsoKnown).ToArray();
        foreach (var (key, at, value) in _entries.Where(entry => !_asked.Contains(entry.Key)))
        {
            var nearest = NearestWord.In(known, key) ?? "";
            var hint = nearest.Length > 0 ? $"Did you mean '{nearest}'?" : known.Length > 24 ? "" : $"Keys here: {string.Join(", ", known.Order(StringComparer.Ordinal))}.";
            Report(WeekRules.UnknownKey, at, key, Written(value), $"'{Path(key)}' is not a key of the week file; it has no effect. {hint}".TrimEnd(), nearest);
        }
    }

    public void Report(Rule rule, string key, string value, string message, string suggestion = "") => Report(rule, Position(key), key, value, message, suggestion);

    private SyntaxNode? Find(string key)
    {
        _ = _asked.Add(key);
        return _entries.Find(entry => entry.Key == key).Value;
    }

    private T? Refuse<T>(string key, SyntaxNode value, string takes, string? nearest = null)
        where T : class
    {
        var hint = nearest is null ? "" : $" Did you mean '{nearest}'?";
        Report(WeekRules.WrongValue, value.Span.Start, key, Written(value), $"{Path(key)} is {Written(value)}; it takes {takes}.{hint} Until then it counts as not set.", nearest is null ? "" : $"\"{nearest}\"");
        return null;
    }

    private void Report(Rule rule, TextPosition at, string key, string value, string message, string suggestion = "") =>
        problems.Add(new Problem(rule, new Place(file, at.Line + 1, Path(key)) { Character = at.Column + 1 }, value, $"Line {at.Line + 1}, column {at.Column + 1}: {message}", suggestion));

    /// <summary>Line a key is written in, from 1; the table's own when it is not.</summary>
    public int Line(string key) => Position(key).Line + 1;

    private TextPosition Position(string key) => _entries.Exists(entry => entry.Key == key) ? _entries.Find(entry => entry.Key == key).At : start;

    private string Path(string key) => name.Length == 0 ? key : key.Length == 0 ? name : $"{name}.{key}";

    private static string? Scalar(ValueSyntax? value) => value switch
    {
        StringValueSyntax text => text.Value?.Trim(),
        IntegerValueSyntax number => number.Value.ToString(CultureInfo.InvariantCulture),
        _ => null,
    };

    private static string Written(SyntaxNode value)
    {
        var text = value.ToString()?.Trim().ReplaceLineEndings(" ") ?? "";
        return text.Length > 60 ? text[..57] + "..." : text;
    }
}
