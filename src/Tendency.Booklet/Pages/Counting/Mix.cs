using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>One kind of a mix. The range holds for all kinds at once, so any two may be compared.</summary>
internal sealed record MixPart(string Value, Share Share)
{
    /// <summary>The same with some games counted more, its range for all kinds at once as well; null when all count alike.</summary>
    public WeightedShare? Weighted { get; init; }
}

/// <summary>How plays divide over the values of one column, most frequent first.</summary>
/// <param name="Plays">Plays in which the column is charted.</param>
/// <param name="Parts">The largest parts.</param>
/// <param name="OtherPlays">Plays of the parts that are not listed.</param>
/// <param name="OtherKinds">How many kinds are not listed.</param>
internal sealed record Mix(int Plays, IReadOnlyList<MixPart> Parts, int OtherPlays, int OtherKinds)
{
    /// <summary>Counts the values of a column. All kinds that occur count in the simultaneous ranges, listed or not (Goodman).</summary>
    public static Mix Of(Study study, PlayLog plays, string column, int most)
    {
        var values = CrossTab.Values(plays, column);
        var total = values.Sum(value => value.Count);
        var ranges = study.Ranges.OfMix([.. values.Select(value => value.Count)], plays, column);
        var weighted = study.Weights.IsOn ? study.Ranges.WeightedMix(plays, column, [.. values.Select(value => value.Value)], study.Weights) : [];
        var listed = values.Count == most + 1 ? values.Count : Math.Min(most, values.Count);
        var parts = values.Take(listed).Select((value, i) => new MixPart(value.Value, new Share(value.Count, total, ranges[i])) { Weighted = weighted.ElementAtOrDefault(i) }).ToArray();
        return new Mix(total, parts, values.Skip(listed).Sum(value => value.Count), values.Count - listed);
    }

    /// <summary>Right end of an axis that holds every bar, in steps of ten points.</summary>
    public double AxisEnd => Parts.Count == 0 ? 1 : Math.Clamp(Math.Ceiling(Parts.Max(part => part.Share.Likely?.High ?? 0) * 10 - 1e-9) / 10, .2, 1);
}
