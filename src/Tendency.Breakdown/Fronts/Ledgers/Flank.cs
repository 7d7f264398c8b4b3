namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>A half of the formation seen from the run: the side it is designed to, or the other.</summary>
public enum Flank
{
    Play,
    Back,
}

internal static class Flanks
{
    public static Flank Other(this Flank flank) => flank == Flank.Play ? Flank.Back : Flank.Play;
}
