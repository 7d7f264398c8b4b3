using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Fronts.Options;

/// <summary>What the shell behind a front with three high safeties changes against one run.</summary>
public sealed record ShellSupport(string Front, string Run, Shell Shell, GapLedger Ledger)
{
    public static IReadOnlyList<ShellSupport> Of(Front front, RunScheme scheme, Surface surface, Tag tag) =>
        front.HasThreeSafeties
            ? [.. Enum.GetValues<Shell>().Select(s => new ShellSupport(front.Name, scheme.Name, s, GapLedger.Of(front, scheme, surface, tag, s)))]
            : [];
}
