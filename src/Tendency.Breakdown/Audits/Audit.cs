using Tendency.Breakdown.Audits.Drives;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Corrections;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Audits;

/// <summary>Checks charts against the rules of the game, the trade and themselves.</summary>
public static class Audit
{
    private static readonly string[] s_wholeRows = ["delete", "chart the", "exchange"];

    /// <param name="read">What reading gave, with the cells as written.</param>
    /// <param name="derived">The same plays with derived columns; the plays themselves will do.</param>
    /// <param name="week">Headers, and who is studied.</param>
    /// <param name="glossary">The words that are known.</param>
    public static AuditReport Run(ReadLog read, PlayLog derived, WeekPlan week, Glossary glossary)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(derived);
        var charts = new AuditedCharts(read, derived, week, glossary);
        var walk = new DriveAudit(charts);
        Problem[] found = [.. walk.Problems, .. BallChecks.Run(charts, walk), .. CallChecks.Run(charts), .. OrderChecks.Run(charts, walk), .. SeriesChecks.Run(charts, walk),
            .. WordChecks.Run(charts), .. CoverageChecks.Run(charts), .. WholeGameChecks.Run(charts), .. SideChecks.Run(charts)];
        var notRun = RuleCatalogue.Checked.Select(rule => new RuleNotRun(rule.Rule, [.. rule.Needs.Where(column => !IsCharted(derived, column))])).Where(rule => rule.Columns.Count > 0).ToArray();
        var silent = notRun.Select(rule => rule.Rule).ToHashSet();
        Problem[] all = [.. Suppressed.Without(read.Problems.Concat(found).Where(p => !silent.Contains(p.Rule)).Select(p => UnreadableCells.WithSuggestion(charts, walk, p)))
            .OrderBy(p => p.Rule.Severity).ThenBy(p => p.Place.File, StringComparer.Ordinal).ThenBy(p => p.Place.Line).ThenBy(p => p.Rule.Code, StringComparer.Ordinal)];
        return new AuditReport(all, notRun, Summary(derived.Rows, all, notRun.Length), [.. all.Select(Proposed).OfType<Correction>()]);
    }

    private static Correction? Proposed(Problem problem) =>
        problem.Suggestion.Length > 0 && problem.Place.Column.Length > 0 && problem.Place.Line > 0 && ColumnCatalogue.Find(problem.Place.Column)?.Name != "" && !s_wholeRows.Any(problem.Suggestion.StartsWith) && IsCell(problem)
            ? new Correction(problem.Place.File, problem.Place.Line, problem.Place.Column, problem.Value, problem.Suggestion)
            : null;

    private static bool IsCell(Problem problem) => problem.Rule.Code[0] is 'D' or 'R' or 'P' or 'W' or 'G' || problem.Rule.Code is "T101" or "T102" or "T105";

    // A chart without a touchdown leaves the column blank; the header says that it is charted.
    private static bool IsCharted(PlayLog log, string column) => column == ColumnNames.Touchdown ? log.Has(column) : log.IsCharted(column);

    private static string Summary(int plays, IReadOnlyList<Problem> problems, int notRun)
    {
        string Count(Severity severity, string one, string many)
        {
            var n = problems.Count(p => p.Rule.Severity == severity);
            return $"{n} {(n == 1 ? one : many)}";
        }

        var rest = notRun == 0 ? "" : $"; {notRun} {(notRun == 1 ? "rule" : "rules")} not run for columns not charted";
        return $"{plays} plays audited: {Count(Severity.Error, "error", "errors")}, {Count(Severity.Warning, "warning", "warnings")}, {Count(Severity.Note, "note", "notes")}{rest}.";
    }
}
