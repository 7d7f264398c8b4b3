using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits;

/// <summary>Writes an audit for a person: grouped by rule, worst first, the first five of each with the count.</summary>
public static class AuditText
{
    private const int Shown = 5;

    /// <param name="report">What was found.</param>
    /// <param name="output">Takes the text.</param>
    /// <param name="wholeList">Where the whole list is; empty = not written anywhere.</param>
    public static void Write(AuditReport report, TextWriter output, string wholeList = "")
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        output.WriteLine(report.Summary);
        foreach (var group in report.Problems.GroupBy(problem => problem.Rule).OrderBy(group => group.Key.Severity).ThenByDescending(group => group.Count()).ThenBy(group => group.Key.Code, StringComparer.Ordinal))
        {
            WriteGroup(group.Key, [.. group], output, wholeList);
        }

        if (report.NotRun.Count > 0)
        {
            output.WriteLine();
            output.WriteLine("Not run, for want of columns:");
            foreach (var missing in report.NotRun.GroupBy(rule => string.Join(", ", rule.Columns)))
            {
                output.WriteLine($"  {missing.Key}: {string.Join(", ", missing.Select(rule => rule.Rule.Code))}");
            }
        }
    }

    private static void WriteGroup(Rule rule, IReadOnlyList<Problem> problems, TextWriter output, string wholeList)
    {
        output.WriteLine();
        output.WriteLine($"{Word(rule.Severity)} {rule.Code}  {rule.Title}  ({problems.Count}x)");
        foreach (var problem in problems.Take(Shown))
        {
            var suggestion = problem.Suggestion.Length > 0 ? $"  -> {problem.Suggestion}" : "";
            output.WriteLine($"  {problem.Place}: {problem.Message}{suggestion}");
        }

        if (problems.Count > Shown)
        {
            output.WriteLine($"  … and {problems.Count - Shown} more{(wholeList.Length > 0 ? $", all in {wholeList}" : "")}");
        }

        output.WriteLine($"  {rule.Advice}");
    }

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "ERROR  ",
        Severity.Warning => "WARNING",
        _ => "NOTE   ",
    };
}
