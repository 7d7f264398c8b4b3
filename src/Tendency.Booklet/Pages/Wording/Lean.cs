using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>What a share's range says against its line. The same test draws the solid dot, sets the percent bold and lets a headline speak.</summary>
internal enum Lean
{
    /// <summary>No plays, too few, or nothing to compare with.</summary>
    Unknown,

    /// <summary>The range holds the line: could be the same.</summary>
    Even,

    Above,

    Below,
}

internal static class Leans
{
    /// <summary>A range wholly beyond this says "nearly always"; beyond a half it says so plainly; otherwise only "more than usual".</summary>
    public const double NearlyAlways = .8;

    public static Lean Lean(this Share share) =>
        share.Plays < Share.FewestPlays || share.Baseline is not { } line || share.Likely is not { } likely ? Wording.Lean.Unknown
        : !share.Differs ? Wording.Lean.Even
        : likely.Low > line ? Wording.Lean.Above : Wording.Lean.Below;

    /// <summary>"they run", hedged in proportion to the range: "nearly always run", "run", "run more than usual"; null when the range holds the line.</summary>
    /// <param name="share">Share of plays that did it.</param>
    /// <param name="verb">"run", "throw".</param>
    public static string? Doing(this Share share, string verb) => share.Lean() != Wording.Lean.Above || share.Likely is not { } likely ? null
        : likely.Low >= NearlyAlways ? $"nearly always {verb}"
        : likely.Low > .5 ? verb
        : $"{verb} more than usual";

    /// <summary>How far the range clears its line, as a share; 0 when it does not.</summary>
    public static double Clearance(this Share share) => share.Lean() switch
    {
        Wording.Lean.Above => share.Likely!.Value.Low - share.Baseline!.Value,
        Wording.Lean.Below => share.Baseline!.Value - share.Likely!.Value.High,
        _ => 0,
    };
}
