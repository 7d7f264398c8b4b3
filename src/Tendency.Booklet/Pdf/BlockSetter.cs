using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>Sets blocks in type: one line a kind of block.</summary>
internal sealed class BlockSetter(Letters letters, bool tight = false)
{
    public SetFlow Flow(IReadOnlyList<Block> blocks, double width)
    {
        var placed = new List<Placed>();
        Block? before = null;
        foreach (var block in blocks)
        {
            var gap = before is null ? 0 : Spacing.Between(before, block);
            placed.Add(new Placed(gap, Set(block, width, before)));
            before = block;
        }

        return new SetFlow(placed);
    }

    public SetBlock Set(Block block, double width, Block? before) => block switch
    {
        Heading heading => SetHeading(heading, width),
        Paragraph paragraph => SetText.Of(paragraph, letters, width),
        Table table => SetTable.Of(table, width, letters, ruled: before is not Heading),
        KeyFigures figures => KeyFigureSetter.Set(figures, width, letters),
        EvidenceList list => EvidenceSetter.Set(list, width, letters, tight),
        Bars bars => SmallSetters.Bars(bars, width, letters),
        EmptyState empty => SmallSetters.Empty(empty, width, letters),
        PlayListing listing => SmallSetters.Listing(listing, width, letters),
        SmallMultiples multiples => SetPanels(multiples, width),
        SideBySide beside => SetBeside(beside, width),
        Together together => new SetWhole(Flow(together.Blocks, width)),
        Diagram diagram => SmallSetters.Picture(diagram, width),
        Plot plot => PlotSetter.Set(plot, width, letters),
        Space space => new SetPicture(space.Points, (_, _, _) => { }),
        _ => throw new InvalidOperationException($"{block.GetType().Name} cannot be printed."),
    };

    private SetPicture SetHeading(Heading heading, double width)
    {
        const double Room = 8;
        var title = new Style(10.5, Bold: true);
        var name = letters.Wrap(heading.Title, title, width, 2);
        var nameWidth = name.Count == 1 ? name[0].Width : width;
        var beside = letters.Wrap(heading.Remark, new Style(8.5), Math.Max(1, width - nameWidth - Room), 2);
        var fitsBeside = heading.Remark.Length == 0 || (width - nameWidth > 120 && beside.Count == 1);
        var remark = fitsBeside ? beside : letters.Wrap(heading.Remark, new Style(8.5), width, 2);
        var above = heading.Bare ? 0.0 : 3.5;
        var height = above + (name.Count * 13) + (fitsBeside ? 0 : remark.Count * 11);
        return new SetPicture(height, Draw, keepsNext: true);

        void Draw(Ink ink, double x, double y)
        {
            if (!heading.Bare)
            {
                ink.Rule(x, y, width, 0.75);
            }

            var baseline = y + above + 9;
            ink.Lines(x, baseline, name, 13);
            if (fitsBeside)
            {
                ink.Lines(x + nameWidth + Room, baseline, remark, 11);
            }
            else
            {
                ink.Lines(x, baseline + ((name.Count - 1) * 13) + 11.5, remark, 11);
            }
        }
    }

    private SetRows SetPanels(SmallMultiples multiples, double width)
    {
        const double Gutter = 12;
        const double Between = 16;
        var columns = Math.Max(1, multiples.Columns);
        var panelWidth = (width - (Gutter * (columns - 1))) / columns;
        var rows = multiples.Panels.Chunk(columns).Select((row, number) => new Placed(
            number == 0 ? 0 : Between,
            SetColumns.Of([.. row.Select((panel, i) => (i * (panelWidth + Gutter), SetPanel(panel, panelWidth)))])));
        return new SetRows([.. rows]);
    }

    private SetWhole SetPanel(Panel panel, double width)
    {
        const double Room = 6;
        var title = new Style(10.5, Bold: true);
        var small = new Style(8.5);
        var remark = letters.Cut(panel.Remark, small, width * 0.6);
        var name = letters.Cut(panel.Title, title, width - letters.Width(remark, small) - Room);
        var subtitle = letters.Wrap(panel.Subtitle, new Style(8, panel.Marked), width, 1);
        var headHeight = 18.0 + (subtitle.Count * 11);
        var head = new SetPicture(headHeight, Draw, keepsNext: true);
        return new SetWhole(new SetFlow([new Placed(0, head), new Placed(0, Flow(panel.Body, width))]));

        void Draw(Ink ink, double x, double y)
        {
            ink.Rule(x, y, width, panel.Marked ? 1.5 : 0.75);
            ink.Text(x, y + 12.5, name, title);
            ink.Text(x + width, y + 12.5, remark, small, Align.Right);
            ink.Lines(x, y + 23.5, subtitle, 11);
        }
    }

    private SetColumns SetBeside(SideBySide beside, double width)
    {
        var fixedWidth = beside.Sides.Sum(side => side.Width);
        var open = beside.Sides.Count(side => side.Width <= 0);
        var share = open == 0 ? 0 : (width - fixedWidth - (beside.Gutter * (beside.Sides.Count - 1))) / open;
        var columns = new List<(double, SetBlock)>();
        var x = 0.0;
        foreach (var side in beside.Sides)
        {
            var sideWidth = side.Width > 0 ? side.Width : share;
            columns.Add((x, Flow(side.Blocks, sideWidth)));
            x += sideWidth + beside.Gutter;
        }

        return SetColumns.Of(columns);
    }
}

/// <summary>A flow that stays on one page; parted only where a page of its own does not hold it.</summary>
internal sealed class SetWhole(SetFlow flow) : SetBlock
{
    public override double Height => flow.Height;

    public override void Draw(Ink ink, double x, double y) => flow.Draw(ink, x, y);

    public override Parting? Split(double room) => flow.Height > Grid.Portrait.LastBlockBottom - 90 ? flow.Split(room) : null;

    public override Parting? SplitOnOwnPage(double room) => flow.Split(room);
}
