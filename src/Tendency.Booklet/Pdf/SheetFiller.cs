using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pdf;

/// <summary>How sheets are filled.</summary>
/// <param name="Openness">A page may begin on a sheet used up to this part.</param>
internal sealed record Filling(double Openness)
{
    /// <summary>Anchors of the pages that may begin on a used sheet and run on to the next although a sheet of their own would hold them whole; null = all.</summary>
    public IReadOnlySet<string>? Parted { get; init; }

    /// <summary>Sheets (0 = first) that end early, as a part of the live height.</summary>
    public IReadOnlyDictionary<int, double> Ends { get; init; } = new Dictionary<int, double>();
}

/// <summary>Fills sheets with pages in order, from top to bottom.</summary>
internal sealed class SheetFiller
{
    private const double Apart = 34; // between a page's end and the next page's heavy rule
    private readonly Filling filling;
    private readonly List<Sheet> sheets = [];

    private SheetFiller(Filling filling) => this.filling = filling;

    /// <param name="pages">In order.</param>
    /// <param name="filling">By which rules.</param>
    public static List<Sheet> Fill(IReadOnlyList<SetPage> pages, Filling filling)
    {
        var filler = new SheetFiller(filling);
        foreach (var page in pages)
        {
            filler.Place(page, filler.Begin(page));
        }

        return filler.sheets;
    }

    private Sheet Begin(SetPage page)
    {
        if (sheets.Count > 0 && page.Content.Kind == PageKind.Inside && sheets[^1] is { } open && open.IsOpen && open.Used < filling.Openness)
        {
            var room = Bottom(open) - open.Cursor - Apart - page.Under.Height;
            if (filling.Parted?.Contains(page.Content.Anchor) == false && FitsASheet(page) ? HeightOf(page) <= room : TakesSome(page, room))
            {
                open.Cursor += Apart;
                open.Targets.Add((page.Content.Anchor, open.Cursor - 8));
                open.Names.Add(page.Content.Name);
                open.Put(page.Under, open.Grid.Left);
                return open;
            }
        }

        var sheet = NewSheet(page, page.Content.Kind, page.Headline);
        sheet.Targets.Add((page.Content.Anchor, 0));
        return sheet;
    }

    private static bool FitsASheet(SetPage page) => page.Headline.Height + HeightOf(page) <= page.Grid.LastBlockBottom - page.Grid.Top;

    private static double HeightOf(SetPage page) => page.Items.Skip(1).Sum(item => item.Gap + item.Block.Height) + (page.Items.Count > 0 ? page.Items[0].Block.Height : 0);

    /// <summary>Whether the page's first block that is no heading goes into the room, whole or parted: a headline never stands alone.</summary>
    private static bool TakesSome(SetPage page, double room)
    {
        foreach (var item in page.Items)
        {
            if (item.Block.Height > room)
            {
                return item.Block.Split(room) is not null;
            }

            if (!item.Block.KeepsNext)
            {
                return true;
            }

            room -= item.Gap + item.Block.Height;
        }

        return room >= 0;
    }

    private Sheet NewSheet(SetPage page, PageKind kind, SetBlock opening)
    {
        var sheet = new Sheet(page.Grid, kind) { IsOpen = kind != PageKind.Sheet };
        sheet.Names.Add(page.Content.Name);
        sheet.Put(opening, page.Grid.Left);
        sheets.Add(sheet);
        return sheet;
    }

    private double Bottom(Sheet sheet) =>
        filling.Ends.TryGetValue(sheets.IndexOf(sheet), out var part) ? sheet.Grid.Top + (part * (sheet.Grid.LastBlockBottom - sheet.Grid.Top)) : sheet.Grid.LastBlockBottom;

    private void Place(SetPage page, Sheet sheet)
    {
        var left = new LinkedList<Placed>(page.Items);
        var atTop = true;
        while (left.First is { } node)
        {
            var item = node.Value;
            left.RemoveFirst();
            var gap = atTop ? 0 : item.Gap;
            var room = Bottom(sheet) - sheet.Cursor - gap;
            if (item.Block.Height <= room + 0.01)
            {
                sheet.Cursor += gap;
                sheet.Put(item.Block, sheet.Grid.Left);
                atTop = false;
                continue;
            }

            if ((atTop && sheet.Names.Count == 1 ? item.Block.SplitOnOwnPage(room) : item.Block.Split(room)) is { } parts)
            {
                sheet.Cursor += gap;
                sheet.Put(parts.First, sheet.Grid.Left);
                left.AddFirst(new Placed(0, parts.Rest));
            }
            else if (atTop && sheet.Names.Count == 1)
            {
                // Taller than a whole page and nowhere to be parted: printed as it is; PdfCheck reports it.
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

            sheet = NewSheet(page, page.Content.Kind == PageKind.Brief ? PageKind.Inside : page.Content.Kind, page.Continued);
            sheet.IsContinued = true;
            atTop = true;
        }
    }
}
