using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Situations;

namespace Tendency.Input;

/// <summary>What standard error says after a command: the problems in short, why plays were left out, and the row accounting, always last.</summary>
internal static class ProblemReport
{
    private const int ShownOfEachRule = 5;

    /// <returns>The exit code the problems ask for.</returns>
    public static int Write(ChartedWeek week, StudiedPlays? studied, bool quiet)
    {
        var code = Write(quiet ? [] : week.Problems);
        if (!quiet)
        {
            foreach (var (why, plays) in studied?.LeftOut ?? [])
            {
                Console.Error.WriteLine($"left out {plays}: {why}");
            }
        }

        Console.Error.WriteLine(week.Rows(studied));
        return quiet ? Code(week.Problems) : code;
    }

    /// <summary>Problems alone, where no rows were read.</summary>
    public static int Write(IReadOnlyList<Problem> problems)
    {
        var groups = problems.Where(p => p.Rule.Severity != Severity.Note).GroupBy(p => p.Rule);
        foreach (var group in groups.OrderBy(g => g.Key.Severity).ThenBy(g => g.Key.Code, StringComparer.Ordinal))
        {
            WriteGroup(group.Key, [.. group]);
        }

        return Code(problems);
    }

    private static int Code(IEnumerable<Problem> problems) =>
        problems.Any(p => p.Rule.Severity != Severity.Note) ? ExitCode.DoneWithProblems : ExitCode.Done;

    private static void WriteGroup(Rule rule, Problem[] problems)
    {
        Console.Error.WriteLine($"{rule.Code} {rule.Severity.ToString().ToLowerInvariant()}: {rule.Title} ({problems.Length}). {rule.Advice}");
        foreach (var problem in problems.Take(ShownOfEachRule))
        {
            Console.Error.WriteLine($"  {problem.Place}: {problem.Message}");
        }

        if (problems.Length > ShownOfEachRule)
        {
            Console.Error.WriteLine($"  and {problems.Length - ShownOfEachRule} more; see them all with: tendency audit");
        }
    }
}
