using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits;

/// <summary>A rule of the audit and the columns it can not do without.</summary>
internal sealed record CheckedRule(Rule Rule, params IReadOnlyList<string> Needs);
