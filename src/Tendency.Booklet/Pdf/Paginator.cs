using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>A page set in type, not yet placed.</summary>
/// <param name="Content">What it shows.</param>
/// <param name="Items">Its blocks.</param>
/// <param name="Headline">Opens it on a new sheet.</param>
/// <param name="Under">Opens it in the middle of a sheet.</param>
/// <param name="Continued">Opens every further sheet.</param>
internal sealed record SetPage(Page Content, IReadOnlyList<Placed> Items, SetBlock Headline, SetBlock Under, SetBlock Continued)
{
    public Grid Grid => Content.Kind == PageKind.Sheet ? Grid.Sheet : Grid.Portrait;
}

/// <summary>
/// Places all content on sheets before anything is drawn, so that contents and "page x of y" know their numbers.
/// Of a few ways to fill the sheets it takes the one that leaves the fewest less than half used and parts the fewest pages.
/// </summary>
internal static class Paginator
{
    public const string ContentsAnchor = "contents";

    /// <summary>A page may begin on a sheet used up to this part; the first way that leaves no half-empty sheet is taken.</summary>
    private static readonly double[] Openness = [0.5, 0.62, 0.75];

    /// <summary>Where a sheet may end early, to leave its successor more.</summary>
    private static readonly double[] EarlyEnds = [0.78, 0.68, 0.58];

    /// <summary>Places until the page numbers printed in links no longer move anything.</summary>
    public static IReadOnlyList<Sheet> Place(ScoutingBooklet booklet, Letters letters)
    {
        const int MostRounds = 4;
        var known = new SetPages(booklet, letters);
        for (var round = 1; ; round++)
        {
            var placed = Best(known.Now());
            var numbers = Numbers(placed);
            if (round == MostRounds || numbers.All(pair => letters.PageNumbers.TryGetValue(pair.Key, out var known) && known == pair.Value))
            {
                return placed;
            }

            foreach (var (anchor, number) in numbers)
            {
                letters.PageNumbers[anchor] = number;
            }
        }
    }

    private static List<Sheet> Best(List<SetPage> pages)
    {
        List<Sheet>? best = null;
        foreach (var openness in Openness)
        {
            var plain = SheetFiller.Fill(pages, new Filling(openness));
            var whole = SheetFiller.Fill(pages, new Filling(openness) { PartsOnlyTallPages = true });
            foreach (var sheets in EarlyEndsOf(pages, openness, plain).Prepend(whole).Prepend(plain))
            {
                if (best is null || Faults(sheets) < Faults(best))
                {
                    best = sheets;
                }

                if (Faults(best) == 0)
                {
                    return best;
                }
            }
        }

        return best!;
    }

    /// <summary>The same with the sheet before the last half-empty one ended early.</summary>
    private static IEnumerable<List<Sheet>> EarlyEndsOf(List<SetPage> pages, double openness, List<Sheet> plain)
    {
        var at = plain.FindLastIndex(sheet => sheet.HalfEmpty && sheet.IsContinued);
        return at <= 0 ? [] : EarlyEnds.Select(end => SheetFiller.Fill(pages, new Filling(openness) { Ends = new Dictionary<int, double> { [at - 1] = end } }));
    }

    /// <summary>A half-empty sheet is worth three pages parted: filling one must not part every page after it.</summary>
    private static int Faults(List<Sheet> sheets) => sheets.Sum(sheet => (sheet.HalfEmpty ? 3 : 0) + (sheet.IsContinued ? 1 : 0));

    private static Dictionary<string, int> Numbers(List<Sheet> placed)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < placed.Count; i++)
        {
            foreach (var (anchor, _) in placed[i].Targets)
            {
                numbers.TryAdd(anchor, i + 1);
            }
        }

        return numbers;
    }
}
