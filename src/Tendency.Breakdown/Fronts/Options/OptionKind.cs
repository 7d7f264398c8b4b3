using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Fronts.Options;

/// <summary>How a run makes the defense account for one man more.</summary>
public enum OptionKind
{
    None,
    Read,
    Bash,

    /// <summary>With a pitch or a second key: speed option, veer, triple.</summary>
    Option,
    Rpo,
}

public static class OptionKinds
{
    public static IReadOnlyList<OptionKind> All { get; } = [OptionKind.Read, OptionKind.Bash, OptionKind.Option, OptionKind.Rpo];

    public static string Word(this OptionKind kind) => kind == OptionKind.Rpo ? "rpo" : kind.ToString().ToLowerInvariant();

    public static OptionKind Of(ChartedRun run) =>
        run.Tag == Tag.Rpo ? OptionKind.Rpo
        : run.Tag == Tag.Bash || run.Scheme.Name == "bash" ? OptionKind.Bash
        : run.Scheme.Name is "speed option" or "inside veer" or "outside veer" or "triple option" ? OptionKind.Option
        : run.Tag == Tag.Read || run.Scheme.IsOption ? OptionKind.Read
        : OptionKind.None;
}
