using System.Globalization;
using Tendency.Breakdown.Counts;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Blocks;

/// <summary>How numbers are written, everywhere: ordinary rounding (halves up), a true minus sign, an en dash between limits, never 0% or 100% unless exactly so.</summary>
internal static class Figures
{
    public const string Minus = "−";

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>"1,114".</summary>
    public static string Count(int count) => count < 0 ? Minus + (-(long)count).ToString("N0", Invariant) : count.ToString("N0", Invariant);

    /// <summary>"44 of 62".</summary>
    public static string CountOf(int count, int plays) => $"{Count(count)} of {Count(plays)}";

    /// <summary>"44 of 62".</summary>
    public static string CountOf(Share share) => CountOf(share.Count, share.Plays);

    /// <summary>"71%"; "under 1%" and "over 99%" where rounding would claim none or all.</summary>
    public static string Percent(double share) => Breakdown.Counts.Percent.Of(share);

    /// <summary>The percent of a count, rounded exactly; "no plays" for none counted, the count alone under five.</summary>
    public static string Percent(Share share) =>
        share.None ? "no plays"
        : share.TooFew ? CountOf(share)
        : Breakdown.Counts.Percent.Of(new Tally(share.Count, share.Plays));

    /// <summary>"59–81%"; "&lt;1–12%", "70–&gt;99%" where a limit would round to none or all.</summary>
    public static string Range(Interval likely) => Breakdown.Counts.Percent.Range(likely);

    /// <summary>The likely range of a share; empty without one or under five plays.</summary>
    public static string Range(Share share) => share.Plays >= Share.FewestPlays && share.Likely is { } likely ? Range(likely) : "";

    /// <summary>"71% (44 of 62 plays; likely 59–81%)"; under five plays "3 of 4 plays, too few for a percentage"; none: "no plays".</summary>
    public static string Evidence(Share share, string unit = "plays") =>
        share.None ? $"no {unit}"
        : share.TooFew ? $"{CountOf(share)} {unit}, too few for a percentage"
        : Range(share) is { Length: > 0 } range ? $"{Percent(share)} ({CountOf(share)} {unit}; likely {range})"
        : $"{Percent(share)} ({CountOf(share)} {unit})";

    /// <summary>A signed number with its sign always printed, zero without one: "+0.3", "−1.3", "0.0".</summary>
    public static string Signed(double value, int decimals = 1)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        var digits = Math.Abs(rounded).ToString("F" + decimals.ToString(Invariant), Invariant);
        return rounded > 0 ? "+" + digits : rounded < 0 ? Minus + digits : digits;
    }

    /// <summary>A number with a true minus sign: "4.4", "−0.5".</summary>
    public static string Number(double value, int decimals = 1)
    {
        var signed = Signed(value, decimals);
        return signed.StartsWith('+') ? signed[1..] : signed;
    }

    /// <summary>"± 1.4": half the width of a symmetric range.</summary>
    public static string PlusMinus(double half, int decimals = 1) => $"± {Number(half, decimals)}";
}
