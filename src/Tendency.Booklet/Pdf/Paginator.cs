using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>Places all content on sheets before anything is drawn, so that contents and "page x of y" know their numbers.</summary>
internal sealed class Paginator(ScoutingBooklet booklet, Letters letters)
{
    public const string ContentsAnchor = "contents";
    private readonly BlockSetter setter = new(letters);
    private readonly List<Sheet> sheets = [];

    /// <summary>Places until the page numbers printed in links no longer move anything.</summary>
    public static IReadOnlyList<Sheet> Place(ScoutingBooklet booklet, Letters letters)
    {
        const int MostRounds = 4;
        for (var round = 1; ; round++)
        {
            var placed = new Paginator(booklet, letters).PlaceOnce();
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

    private List<Sheet> PlaceOnce()
    {
        var pages = booklet.Pages.ToList();
        for (var i = 0; i < pages.Count; i++)
        {
            if (booklet.Contents && i == (pages[0].Kind == PageKind.Brief ? 1 : 0))
            {
                PlaceContents();
            }

            PlacePage(pages[i]);
        }

        return sheets;
    }

    private void PlaceContents()
    {
        var page = new Page(ContentsAnchor, "Contents", "Contents");
        var sheet = Start(page);
        Continue(sheet, page, [new Placed(0, ContentsSetter.Set(booklet, Grid.Portrait.Width, letters))]);
        sheets[^1].Closed = true;
    }

    private void PlacePage(Page page)
    {
        var grid = page.Kind == PageKind.Sheet ? Grid.Sheet : Grid.Portrait;
        var items = setter.Flow(page.Blocks, grid.Width).Items;
        Continue(Start(page), page, items);
    }

    /// <summary>A page begins a new sheet, unless the sheet before is less than half used and takes the headline and the first block whole.</summary>
    private Sheet Start(Page page)
    {
        var headline = HeadlineSetter.Set(page, booklet, letters);
        if (sheets.Count > 0 && sheets[^1] is { } open && page.Kind == PageKind.Inside && open.TakesAnother)
        {
            const double Apart = 34;
            var first = setter.Flow([.. page.Blocks.Take(2)], open.Grid.Width);
            var under = HeadlineSetter.Under(page, letters);
            if (open.Cursor + Apart + under.Height + Math.Min(first.Height, 200) <= open.Grid.LastBlockBottom)
            {
                open.Cursor += Apart;
                open.Targets.Add((page.Anchor, open.Cursor - 8));
                open.Names.Add(page.Name);
                open.Put(under, open.Grid.Left);
                return open;
            }
        }

        var sheet = new Sheet(page.Kind == PageKind.Sheet ? Grid.Sheet : Grid.Portrait, page.Kind);
        sheet.Targets.Add((page.Anchor, 0));
        sheet.Names.Add(page.Name);
        sheet.Put(headline, sheet.Grid.Left);
        sheets.Add(sheet);
        return sheet;
    }

    private void Continue(Sheet sheet, Page page, IEnumerable<Placed> items)
    {
        var left = new LinkedList<Placed>(items);
        var atTop = true;
        while (left.First is { } node)
        {
            var item = node.Value;
            left.RemoveFirst();
            var gap = atTop ? 0 : item.Gap;
            var room = sheet.Grid.LastBlockBottom - sheet.Cursor - gap;
            if (item.Block.Height <= room + 0.01)
            {
                sheet.Cursor += gap;
                sheet.Put(item.Block, sheet.Grid.Left);
                atTop = false;
                continue;
            }

            if (item.Block.Split(room) is { } parts)
            {
                sheet.Cursor += gap;
                sheet.Put(parts.First, sheet.Grid.Left);
                left.AddFirst(new Placed(0, parts.Rest));
            }
            else if (atTop)
            {
                // Taller than a whole page and not to be parted: printed as it is; PdfCheck reports it.
                sheet.Put(item.Block, sheet.Grid.Left);
                atTop = false;
                continue;
            }
            else
            {
                left.AddFirst(item);
                foreach (var block in sheet.TakeBackHeadings())
                {
                    left.AddFirst(new Placed(0, block));
                }
            }

            sheet = NextSheet(page);
            atTop = true;
        }
    }

    private Sheet NextSheet(Page page)
    {
        var sheet = new Sheet(page.Kind == PageKind.Sheet ? Grid.Sheet : Grid.Portrait, page.Kind == PageKind.Brief ? PageKind.Inside : page.Kind);
        sheet.Names.Add(page.Name);
        sheet.Put(HeadlineSetter.Continued(page, booklet, letters), sheet.Grid.Left);
        sheets.Add(sheet);
        return sheet;
    }
}
