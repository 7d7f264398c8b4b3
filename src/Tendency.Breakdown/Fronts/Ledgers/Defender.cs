namespace Tendency.Breakdown.Fronts.Ledgers;

public enum Role
{
    Line,
    Overhang,
    Linebacker,
    Safety,
}

/// <summary>Where a man stands before the snap, seen from the run.</summary>
public enum Stand
{
    Back,
    Middle,
    Play,
}

internal static class Stands
{
    public static Stand Of(Flank flank) => flank == Flank.Play ? Stand.Play : Stand.Back;
}

/// <summary>One man who fits the run, on one side (rule F1: each counts once).</summary>
/// <param name="Flank">The side he fits; a linebacker may come to it from the other.</param>
/// <param name="Technique">Where he stands on the line; empty behind it.</param>
public sealed record Defender(string Name, Flank Flank, Role Role, string Technique, Stand Stand)
{
    internal Defender(string name, Flank flank, Role role, string technique = "")
        : this(name, flank, role, technique, Stands.Of(flank))
    {
    }
}
