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
            foreach (var sheets in Ways(pages, openness))
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

    private static IEnumerable<List<Sheet>> Ways(List<SetPage> pages, double openness)
    {
        yield return PartingFew(pages, openness);
        var plain = SheetFiller.Fill(pages, new Filling(openness));
        yield return plain;
        foreach (var sheets in EarlyEndsOf(pages, openness, plain))
        {
            yield return sheets;
        }
    }

    /// <summary>Pages begin on a used sheet only where they go onto it whole; of the others a few are parted where that fills a half-empty sheet.</summary>
    private static List<Sheet> PartingFew(List<SetPage> pages, double openness)
    {
        var best = SheetFiller.Fill(pages, new Filling(openness) { Parted = new HashSet<string>() });
        var parted = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < best.Count - 1; i++)
        {
            if (best[i].HalfEmpty && Chain(pages, openness, best, i, parted) is { } better)
            {
                (best, parted) = better;
            }
        }

        return best;
    }

    /// <summary>The page after a half-empty sheet parted; what is left of it may leave the next sheet half empty, and so on for a few pages. Null when no such chain is better.</summary>
    private static (List<Sheet> Sheets, HashSet<string> Parted)? Chain(List<SetPage> pages, double openness, List<Sheet> best, int at, HashSet<string> parted)
    {
        const int MostParted = 4;
        var (tried, more) = (best, new HashSet<string>(parted, StringComparer.Ordinal));
        for (var i = at; i < at + MostParted && i < tried.Count - 1 && tried[i].HalfEmpty && tried[i + 1].Targets is [var next, ..] && more.Add(next.Anchor); i++)
        {
            tried = SheetFiller.Fill(pages, new Filling(openness) { Parted = more });
            if (Faults(tried) < Faults(best))
            {
                return (tried, more);
            }
        }

        return null;
    }

    /// <summary>The same with the sheet before the last half-empty one ended early.</summary>
    private static IEnumerable<List<Sheet>> EarlyEndsOf(List<SetPage> pages, double openness, List<Sheet> plain)
    {
        var at = plain.FindLastIndex(sheet => sheet.HalfEmpty && sheet.IsContinued);
        return at <= 0 ? [] : EarlyEnds.Select(end => SheetFiller.Fill(pages, new Filling(openness) { Ends = new Dictionary<int, double> { [at - 1] = end } }));
    }

    /// <summary>A half-empty sheet is worth five pages parted: filling one must not part every page after it.</summary>
    private static int Faults(List<Sheet> sheets) => sheets.Sum(sheet => (sheet.HalfEmpty ? 5 : 0) + (sheet.IsContinued ? 1 : 0));

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
