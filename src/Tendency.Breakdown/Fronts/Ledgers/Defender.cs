namespace Tendency.Breakdown.Fronts.Ledgers;

internal enum Role
{
    Line,
    Overhang,
    Linebacker,
    Safety,
}

/// <summary>One man who fits the run, on one side (rule F1: each counts once).</summary>
/// <param name="Technique">Where he stands on the line; empty behind it.</param>
internal sealed record Defender(string Name, Flank Flank, Role Role, string Technique = "");
