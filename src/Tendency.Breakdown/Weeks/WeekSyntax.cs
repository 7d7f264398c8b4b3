using Tendency.Breakdown.Problems;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Tendency.Breakdown.Weeks;

/// <summary>Text of a week file to its syntax tree, one bad line at a time: a line that can not be read is reported and skipped.</summary>
internal static class WeekSyntax
{
    // Each bad line costs a parse of the whole text, so that a file of garbage must not cost more than a moment.
    private const int MostBadLines = 50;
    private const int MostLetters = 256 * 1024;

    public static DocumentSyntax Parse(string file, string text, List<Problem> problems)
    {
        if (text.Length > MostLetters || text.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add(new Problem(WeekRules.NotToml, new Place(file, 0, ""), "", "This is not a week file: it is far too long or not text. Nothing of it is used."));
            return SyntaxParser.Parse("", file, true);
        }

        var lines = text.ReplaceLineEndings("\n").TrimStart('\uFEFF').Split('\n');
        for (var bad = 0; ; bad++)
        {
            var document = Parse(file, lines);
            if (document is { HasErrors: false })
            {
                return document;
            }

            var first = document?.Diagnostics.Where(message => message.Kind == DiagnosticMessageKind.Error).MinBy(message => message.Span.Start.Line);
            if (bad == MostBadLines || first is null)
            {
                problems.Add(new Problem(WeekRules.NotToml, new Place(file, 0, ""), "", $"{(first is null ? "It holds a \\ that begins no letter" : $"More than {MostBadLines} lines can not be read")}; nothing of the file is used."));
                return SyntaxParser.Parse("", file, true);
            }

            // A string left open is noticed at the line's end, a bracket left open anywhere below: the last filled line up to there is to blame.
            var at = Math.Clamp(first.Span.Start.Line, 0, lines.Length - 1);
            while (at > 0 && string.IsNullOrWhiteSpace(lines[at]))
            {
                at--;
            }

            if (lines[at].Length == 0)
            {
                at = Array.FindIndex(lines, line => line.Length > 0);
            }

            Report(file, lines[at], at, first, problems);
            Skip(lines, at);
        }
    }

    // Tomlyn 2.10.2 throws where a \ escapes what is no letter of Unicode, such as the end of the text.
    private static DocumentSyntax? Parse(string file, string[] lines)
    {
        try
        {
            return SyntaxParser.Parse(string.Join('\n', lines) + "\n", file, true);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static void Report(string file, string line, int at, DiagnosticMessage message, List<Problem> problems)
    {
        var column = Math.Clamp(message.Span.Start.Column, 0, line.Length) + 1;
        var place = new Place(file, at + 1, "") { Character = column };
        var twice = message.Message.Contains("already", StringComparison.OrdinalIgnoreCase);
        var what = twice ? "this is already said further up; the line is not used"
            : line.TrimStart().StartsWith('[') ? "this is not a table's name in [ ] or [[ ]]; the lines down to the next one are not used"
            : Unquoted(line) is not null ? "text must stand in quotes; the line is not used"
            : "this is not key = value; the line is not used";
        problems.Add(new Problem(twice ? WeekRules.NamedTwice : WeekRules.NotToml, place, line.Trim(), $"Line {at + 1}, column {column}: {what}.", Unquoted(line) ?? ""));
    }

    // subject = Port Halden  ->  subject = "Port Halden"
    private static string? Unquoted(string line)
    {
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        if (equals < 1)
        {
            return null;
        }

        var value = line[(equals + 1)..].Split('#')[0].Trim().Trim('"', '\'').Trim();
        return value.Length == 0 || value[0] is '[' or '{' || value.Contains('"', StringComparison.Ordinal) || value.Contains('\\', StringComparison.Ordinal)
            ? null
            : $"{line[..equals].Trim()} = \"{value}\"";
    }

    // Keys below a broken table name would fall to the table before it, so they go with the name.
    private static void Skip(string[] lines, int at)
    {
        var isTable = lines[at].TrimStart().StartsWith('[');
        lines[at] = "";
        for (var next = at + 1; isTable && next < lines.Length && !lines[next].TrimStart().StartsWith('['); next++)
        {
            lines[next] = "";
        }
    }
}
