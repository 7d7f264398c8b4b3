using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pdf;

/// <summary>One side of paper with the blocks placed on it.</summary>
internal sealed class Sheet(Grid grid, PageKind kind)
{
    private readonly List<(double X, double Y, SetBlock Block)> blocks = [];

    public Grid Grid => grid;

    public PageKind Kind => kind;

    /// <summary>Where the next block may begin.</summary>
    public double Cursor { get; set; } = grid.Top;

    /// <summary>Another page may begin here.</summary>
    public bool IsOpen { get; init; }

    /// <summary>Begins with the rest of a page.</summary>
    public bool IsContinued { get; set; }

    /// <summary>Link targets: anchor and height.</summary>
    public List<(string Anchor, double Y)> Targets { get; } = [];

    /// <summary>Names of the pages on this sheet, for the header.</summary>
    public List<string> Names { get; } = [];

    /// <summary>The part of the live height that is used.</summary>
    public double Used => (Cursor - grid.Top) / (grid.LastBlockBottom - grid.Top);

    /// <summary>A little more than half, because the reader sees words, and blocks reach below their last word.</summary>
    public bool HalfEmpty => Used < 0.52;

    public void Put(SetBlock block, double x)
    {
        blocks.Add((x, Cursor, block));
        Cursor += block.Height;
    }

    /// <summary>Takes trailing headings off again, because what they head begins on the next sheet. In reading order from the last.</summary>
    public IEnumerable<SetBlock> TakeBackHeadings()
    {
        const int Headline = 1; // the first block is the page's headline: it stays
        while (blocks.Count > Headline && blocks[^1].Block.KeepsNext)
        {
            var (_, y, block) = blocks[^1];
            blocks.RemoveAt(blocks.Count - 1);
            Cursor = y;
            yield return block;
        }
    }

    public void Draw(Ink ink)
    {
        foreach (var (anchor, y) in Targets)
        {
            ink.Target(0, y, anchor);
        }

        foreach (var (x, y, block) in blocks)
        {
            block.Draw(ink, x, y);
        }
    }
}
