using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>How a weighted share is said: always beside its plain count, with the plays it is worth.</summary>
internal static class Weighing
{
    /// <summary>The page that says which games count more.</summary>
    public const string Anchor = "weights";

    public const string Head = "Weighted, likely";

    // They say it in their own words, speak of the charts or of two prints, or of fronts chosen by the weighted mix.
    private static readonly string[] s_silent = [Anchor, "brief", "defense-brief", "reading", "audit", "since", "front-cards", "front-cards-next", "extra-fitter"];

    /// <summary>With games weighted, a page says in its deck whether its shares are: one with a weighted column which games count more, any other that all count alike.</summary>
    public static Page Said(Study study, Page page) =>
        !study.Weights.IsOn || s_silent.Contains(page.Anchor) || page.Deck.Contains(study.Weights.Which, StringComparison.Ordinal) ? page
        : page with { Deck = Words.Sentences(page.Deck, HasColumn(page.Blocks) ? $"{study.Weights.Which} “Like 22”: plays the weighted share is worth." : "Here all games count alike.") };

    private static bool HasColumn(IEnumerable<Block> blocks) => blocks.Any(block => block switch
    {
        Table table => table.Columns.Any(column => column.Head == Head),
        SideBySide beside => beside.Sides.Any(side => HasColumn(side.Blocks)),
        SmallMultiples multiples => multiples.Panels.Any(panel => HasColumn(panel.Body)),
        Together together => HasColumn(together.Blocks),
        _ => false,
    });

    /// <summary>"64%", "43–81%", "like 22": bold when the range leaves out the line. Too few where it is worth under five plays.</summary>
    /// <param name="line">The rate it is read against, weighted as well; null = none.</param>
    public static Cell Cell(WeightedShare share, double? line = null)
    {
        if (share.Tally.Plays == 0)
        {
            return Cells.Blank;
        }

        if (!share.IsEnough)
        {
            return Cells.Text("too few", $"like {Like(share.EffectivePlays)}");
        }

        var percent = Figures.Percent(share.Share);
        return Cells.Text(line is { } rate && share.Differs(rate) ? RichText.Strong(percent) : percent, Figures.Range(share.Likely), $"like {Like(share.EffectivePlays)}");
    }

    /// <summary>"Weighted 64% (43–81%, like 22)."</summary>
    public static string Said(WeightedShare share) => !share.IsEnough
        ? $"Weighted: like {Like(share.EffectivePlays)}, too few."
        : $"Weighted {Figures.Percent(share.Share)} ({Figures.Range(share.Likely)}, like {Like(share.EffectivePlays)}).";

    /// <summary>The same in one line of a table whose head says what the plays are worth: "64% 43–81%".</summary>
    public static Cell Line(WeightedShare share) => share.Tally.Plays == 0 ? Cells.Blank
        : share.IsEnough ? Cells.Text($"{Figures.Percent(share.Share)}  {Figures.Range(share.Likely)}")
        : Cells.Text("too few");

    /// <summary>"Weighted 64%, like 22": one short line.</summary>
    public static string Short(WeightedShare share) => share.IsEnough ? $"Weighted {Figures.Percent(share.Share)}, like {Like(share.EffectivePlays)}" : share.Tally.Plays == 0 ? "" : "Weighted: too few";

    /// <summary>Effective plays as printed: whole.</summary>
    public static string Like(double plays) => Figures.Number(plays, 0);

    /// <summary>A game's weight: "1", "0.62".</summary>
    public static string Weight(double weight) => weight is > 0 and < .005 ? "under 0.01" : Math.Abs(weight - 1) < .005 ? "1" : Figures.Number(weight, 2);
}
