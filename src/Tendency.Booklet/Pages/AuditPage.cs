using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Problems;

namespace Tendency.Booklet.Pages;

/// <summary>What is wrong with the charts, and what could not be checked?</summary>
internal static class AuditPage
{
    private const int MostMessageLines = 6;
    private const int MostFiles = 12;
    private const int MostRules = 14;

    public static Page? Compose(Study study)
    {
        if (study.Audit is not { Problems.Count: > 0 } audit)
        {
            return null;
        }

        var byRule = audit.Problems.GroupBy(problem => problem.Rule).OrderBy(group => group.Key.Severity).ThenByDescending(group => group.Count()).ToArray();
        return new Page("audit", "Chart audit", Finding(audit.Problems))
        {
            Blocks =
            [
                new Heading("What was found", audit.Summary),
                Rules(byRule),
                .. Rest(byRule.Skip(MostRules).ToArray()),
                .. NotRun(audit),
                .. ByFile(study, audit.Problems),
            ],
        };
    }

    private static string Finding(IReadOnlyList<Problem> problems)
    {
        var errors = problems.Count(problem => problem.Rule.Severity == Severity.Error);
        var warnings = problems.Count(problem => problem.Rule.Severity == Severity.Warning);
        return (errors, warnings) switch
        {
            (0, 0) => "The charts are in order: no error, no warning.",
            (0, _) => $"No error in the charts; {Words.Counted(warnings, "cell")} to look at again.",
            _ => $"{Words.Capital(Words.Counted(errors, "error"))} and {Words.Counted(warnings, "warning")} in the charts: mend them before the numbers are used.",
        };
    }

    private static Table Rules(IGrouping<Rule, Problem>[] byRule) => new(
        [
            new Column("Rule", 0, 134),
            new Column("Weight", 140, 40),
            new Column("Times", 180, 28, Align.Right),
            new Column("First seen", 218, 96),
            new Column("What it says", 322, 194),
        ],
        [.. byRule.Take(MostRules).Select(group => new TableRow(
            Cells.Text(RichText.Strong(Words.Capital(group.Key.Title))),
            Cells.Text(group.Key.Severity.ToString().ToLowerInvariant()),
            Cells.Count(group.Count()),
            Cells.Text(Place(group.First())),
            new TextCell([group.First().Message]) { MostLines = MostMessageLines }))])
    { Caption = "Findings of the audit" };

    private static string Place(Problem problem) => problem.Place.Line > 0 ? $"{problem.Place.File}, line {problem.Place.Line}" : problem.Place.File;

    private static IEnumerable<Block> Rest(IGrouping<Rule, Problem>[] rest)
    {
        if (rest.Length > 0)
        {
            yield return Paragraph.Note($"And {Words.Figured(rest.Sum(group => group.Count()), "more finding")} of {Words.Counted(rest.Length, "rule")}: the audit command lists them all.");
        }
    }

    private static IEnumerable<Block> NotRun(Breakdown.Audits.AuditReport audit)
    {
        if (audit.NotRun.Count > 0)
        {
            yield return new Heading("Not checked", "for want of a column");
            yield return new Paragraph(string.Join("; ", audit.NotRun.GroupBy(rule => string.Join(", ", rule.Columns)).Select(group => $"{Words.Figured(group.Count(), "rule")} ({group.Key})")) + ".", TextStyle.Deck);
        }
    }

    private static IEnumerable<Block> ByFile(Study study, IReadOnlyList<Problem> problems)
    {
        var files = study.All.Category(Breakdown.Charts.Columns.ColumnNames.SourceFile);
        var names = files.Levels.Skip(1).ToArray();
        if (names.Length == 0)
        {
            yield break;
        }

        yield return new Heading("By chart");
        yield return new Table(
            [
                new Column("File", 0, 200),
                new Column("Rows", 204, 40, Align.Right),
                new Column("Errors", 260, 50, Align.Right),
                new Column("Warnings", 326, 60, Align.Right),
                new Column("Notes", 402, 50, Align.Right),
            ],
            [.. names.Take(MostFiles).Select(name => new TableRow(
                Cells.Name(name),
                Cells.Count(files.Codes.Count((ushort)files.CodeOf(name))),
                Cells.Count(Count(problems, name, Severity.Error)),
                Cells.Count(Count(problems, name, Severity.Warning)),
                Cells.Count(Count(problems, name, Severity.Note))))])
        { Caption = "Findings by chart" };
        if (names.Length > MostFiles)
        {
            yield return Paragraph.Note($"And {Words.Counted(names.Length - MostFiles, "more chart")}: the audit command lists them all.");
        }
    }

    private static int Count(IReadOnlyList<Problem> problems, string file, Severity severity) =>
        problems.Count(problem => problem.Place.File == file && problem.Rule.Severity == severity);
}
