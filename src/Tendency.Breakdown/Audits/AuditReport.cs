using Tendency.Breakdown.Charts.Corrections;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits;

/// <summary>What is wrong with the charts.</summary>
/// <param name="Problems">The reader's and the audit's, worst first, then by file and line.</param>
/// <param name="NotRun">Rules that could not be run, each with the columns they lack.</param>
/// <param name="Summary">One line fit for the booklet.</param>
/// <param name="ProposedCorrections">One for each cell whose right value is known.</param>
public sealed record AuditReport(
    IReadOnlyList<Problem> Problems, IReadOnlyList<RuleNotRun> NotRun, string Summary, IReadOnlyList<Correction> ProposedCorrections);

/// <summary>A rule that needs columns nobody charted.</summary>
public sealed record RuleNotRun(Rule Rule, IReadOnlyList<string> Columns);
