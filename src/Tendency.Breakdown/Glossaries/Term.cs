namespace Tendency.Breakdown.Glossaries;

/// <summary>A word of the trade.</summary>
/// <param name="Canonical">The one spelling it is counted under, with spaces.</param>
/// <param name="Kind">What it is a word for: run_scheme, coverage, front.</param>
/// <param name="Aliases">Other spellings and names.</param>
/// <param name="About">One line; may be empty.</param>
public sealed record Term(string Canonical, string Kind, IReadOnlyList<string> Aliases, string About)
{
    /// <summary>The family a staff files its own word under; empty = by rule.</summary>
    public string Family { get; init; } = "";

    /// <summary>Whether the staff's own glossary says so.</summary>
    public bool FromStaff { get; init; }
}
