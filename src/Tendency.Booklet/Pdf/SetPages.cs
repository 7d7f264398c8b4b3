using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>The pages of a booklet set in type. Those that print page numbers are set anew once the numbers are known, the others once.</summary>
internal sealed class SetPages(ScoutingBooklet booklet, Letters document)
{
    private readonly Page[] _pages = [.. booklet.Pages];
    private readonly SetPage?[] _lasting = new SetPage?[booklet.Pages.Count()];

    /// <summary>All pages, with the page numbers known now.</summary>
    public List<SetPage> Now()
    {
        var set = new SetPage[_pages.Length];
        Parallel.For(0, set.Length, i => set[i] = _lasting[i] ?? Set(i));
        var pages = set.ToList();
        if (booklet.Contents && pages.Count > 0)
        {
            var contents = new Page(Paginator.ContentsAnchor, "Contents", "Contents");
            var at = pages[0].Content.Kind == PageKind.Brief ? 1 : 0;
            pages.Insert(at, Headed(contents, [new Placed(0, ContentsSetter.Set(booklet, Grid.Portrait.Width, document))], document));
        }

        return pages;
    }

    private SetPage Set(int i)
    {
        var letters = document.Sharing();
        var set = Set(_pages[i], letters);
        _lasting[i] = letters.AskedForNumbers ? null : set;
        return set;
    }

    /// <summary>A brief that runs over would part every page after it: then its claims stand closer.</summary>
    private SetPage Set(Page page, Letters letters)
    {
        var grid = page.Kind == PageKind.Sheet ? Grid.Sheet : Grid.Portrait;
        var set = Headed(page, new BlockSetter(letters).Flow(page.Blocks, grid.Width).Items, letters);
        return page.Kind == PageKind.Brief && set.Headline.Height + set.Items.Sum(item => item.Gap + item.Block.Height) > grid.LastBlockBottom - grid.Top
            ? Headed(page, new BlockSetter(letters, tight: true).Flow(page.Blocks, grid.Width).Items, letters)
            : set;
    }

    private SetPage Headed(Page page, IReadOnlyList<Placed> items, Letters letters) =>
        new(page, items, HeadlineSetter.Set(page, booklet, letters), HeadlineSetter.Under(page, letters), HeadlineSetter.Continued(page, booklet, letters));
}
