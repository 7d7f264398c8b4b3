using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Audits;

/// <summary>Every rule that reading and auditing charts can break, in one list. To add one: a line in its family, its check, a chart in sample-logs/problems.</summary>
internal static class RuleCatalogue
{
    internal static IReadOnlyList<CheckedRule> Checked { get; } =
        [.. DriveRules.All, .. RowRules.All, .. PairRules.All, .. GameRules.All, .. WordRules.All];

    /// <summary>Rules of the audit itself, in the order they are printed.</summary>
    public static IReadOnlyList<Rule> Audit { get; } = [.. Checked.Select(c => c.Rule)];

    /// <summary>The reader's, the glossary's and the audit's.</summary>
    public static IReadOnlyList<Rule> All { get; } = [.. ReadingRules.All, .. GlossaryRules.All, .. Audit];

    /// <summary>The rule of a code, or null.</summary>
    public static Rule? Find(string code) => All.FirstOrDefault(rule => rule.Code == code);
}
