namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>What the count alone does not say about a fit.</summary>
public enum LeverageKind
{
    /// <summary>A gap stays without a man even when the safeties arrive.</summary>
    Unsound,

    /// <summary>A gap waits for a safety.</summary>
    LivingOnTheSafety,

    /// <summary>The edge man takes the kick and nobody stands or comes outside him.</summary>
    NoOverlap,

    /// <summary>Nobody at the snap sets the edge to the play: a safety must.</summary>
    EdgeIsASafety,

    /// <summary>No lineman stands in the gap the run aims at.</summary>
    Bubble,

    /// <summary>A 4i to the play can be blocked down from outside.</summary>
    DownBlock,

    /// <summary>A floating nose counts in one A gap; a two-gap nose may make it two.</summary>
    ConditionalTwo,

    /// <summary>A post safety is counted on the cutback.</summary>
    PostSafety,

    /// <summary>The back gave no side, so a front set by the back was turned by strength.</summary>
    SetByStrength,

    /// <summary>The scheme's blocking was not charted and counter was assumed.</summary>
    ParentAssumed,
}

/// <summary>A caution printed beside a ledger.</summary>
public sealed record LeverageFlag(LeverageKind Kind, string Text);

internal static class LeverageFlags
{
    public static IReadOnlyList<LeverageFlag> Of(Front front, RunScheme scheme, Surface surface, FlankCount play, FlankCount back, Lineup lineup)
    {
        var flags = new List<LeverageFlag>();
        void Flag(bool holds, LeverageKind kind, string text)
        {
            if (holds)
            {
                flags.Add(new LeverageFlag(kind, text));
            }
        }

        var shortLate = play.SpareLate < 0 || back.SpareLate < 0;
        var shortNow = play.SpareNow < 0 || back.SpareNow < 0;
        Flag(shortLate, LeverageKind.Unsound, "a gap stays without a man");
        Flag(shortNow && !shortLate, LeverageKind.LivingOnTheSafety, "living on the safety");

        var men = lineup.Now.Where(d => d.Flank == Flank.Play).ToArray();
        var line = men.Where(d => d.Role == Role.Line).ToArray();
        var edgeMen = line.Count(d => Technique.SetsEdge(d.Technique)) + men.Count(d => d.Role == Role.Overhang);
        var lateMen = lineup.Late.Count(d => d.Flank == Flank.Play);
        Flag(edgeMen == 0, LeverageKind.EdgeIsASafety, lateMen > 0 ? "no end or overhang sets the edge to the play, a safety must" : "nobody sets the edge to the play");
        Flag(KicksOut(scheme) && edgeMen == 1 && lateMen == 0, LeverageKind.NoOverlap, "no overlap: nobody outside the man who takes the kick");

        var aim = scheme.Aim switch { "A" => 0, "B" => 1, _ => -1 };
        var baseGaps = surface.BaseGaps(Flank.Play);
        Flag(aim >= 0 && line.All(d => Technique.Gap(d.Technique, baseGaps) != aim), LeverageKind.Bubble, $"{scheme.Aim} is a bubble: a linebacker's, not a lineman's");
        Flag(scheme.FromBack + scheme.Pullers > 0 && line.Any(d => d.Technique == "4i"), LeverageKind.DownBlock, "the 4i can be blocked down");
        Flag(front.Nose == NoseKind.Floats, LeverageKind.ConditionalTwo, "the nose counts once; playing both A gaps would make two");
        Flag(lineup.Late.Any(d => d.Name == "post safety"), LeverageKind.PostSafety, "the post safety is counted on the cutback");
        Flag(front.SetBy == SetBy.Back && surface.RunTo is null, LeverageKind.SetByStrength, "no back side: front turned by strength");
        Flag(scheme.Name == "bash", LeverageKind.ParentAssumed, "blocking taken as counter");
        return flags;
    }

    private static bool KicksOut(RunScheme scheme) => scheme.Pullers > 0 && scheme.Aim is "C" or "D" || scheme.InsertWord == "kick-out";
}
