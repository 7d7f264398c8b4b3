namespace Tendency.Booklet.Pdf;

/// <summary>A block set in type for a given width: its height is known, it can be drawn anywhere, and perhaps parted at a page's end.</summary>
internal abstract class SetBlock
{
    public abstract double Height { get; }

    /// <summary>May not be the last on a page: the next block belongs under it.</summary>
    public virtual bool KeepsNext => false;

    public abstract void Draw(Ink ink, double x, double y);

    /// <summary>Parts the block so that the first part is at most <paramref name="room"/> high; null = it cannot be parted there.</summary>
    public virtual Parting? Split(double room) => null;

    /// <summary>The same where the block has a whole page to itself and still does not fit: what else stays together is parted too.</summary>
    public virtual Parting? SplitOnOwnPage(double room) => Split(room);
}

/// <summary>A block parted at a page's end.</summary>
internal readonly record struct Parting(SetBlock First, SetBlock Rest);

/// <summary>A block and the empty height above it.</summary>
internal readonly record struct Placed(double Gap, SetBlock Block);

/// <summary>Blocks under one another.</summary>
internal sealed class SetFlow(IReadOnlyList<Placed> items) : SetBlock
{
    public IReadOnlyList<Placed> Items => items;

    public override double Height { get; } = items.Sum(item => item.Gap + item.Block.Height);

    public override void Draw(Ink ink, double x, double y)
    {
        foreach (var item in items)
        {
            y += item.Gap;
            item.Block.Draw(ink, x, y);
            y += item.Block.Height;
        }
    }

    public override Parting? Split(double room)
    {
        var used = 0.0;
        for (var i = 0; i < items.Count; i++)
        {
            var item = items[i];
            if (used + item.Gap + item.Block.Height <= room)
            {
                used += item.Gap + item.Block.Height;
                continue;
            }

            if (item.Block.Split(room - used - item.Gap) is { } parts)
            {
                return new Parting(new SetFlow([.. items.Take(i), item with { Block = parts.First }]), new SetFlow([new Placed(0, parts.Rest), .. items.Skip(i + 1)]));
            }

            while (i > 0 && items[i - 1].Block.KeepsNext)
            {
                i--;
            }

            return i == 0 ? null : new Parting(new SetFlow([.. items.Take(i)]), new SetFlow([items[i] with { Gap = 0 }, .. items.Skip(i + 1)]));
        }

        return null;
    }
}

/// <summary>Flows beside one another.</summary>
internal sealed class SetColumns(IReadOnlyList<(double X, SetBlock Flow)> columns, double height) : SetBlock
{
    public override double Height => height;

    public static SetColumns Of(IReadOnlyList<(double X, SetBlock Flow)> columns) => new(columns, columns.Count == 0 ? 0 : columns.Max(column => column.Flow.Height));

    public override void Draw(Ink ink, double x, double y)
    {
        foreach (var (left, flow) in columns)
        {
            flow.Draw(ink, x + left, y);
        }
    }

    public override Parting? Split(double room)
    {
        var first = new List<(double, SetBlock)>();
        var rest = new List<(double, SetBlock)>();
        foreach (var (left, flow) in columns)
        {
            if (flow.Height <= room)
            {
                first.Add((left, flow));
            }
            else if (flow.Split(room) is { } parts)
            {
                first.Add((left, parts.First));
                rest.Add((left, parts.Rest));
            }
            else
            {
                return null;
            }
        }

        return rest.Count == 0 ? null : new Parting(Of(first), Of(rest));
    }
}

/// <summary>Rows of blocks of which each must stay whole: panels, claims.</summary>
internal sealed class SetRows(IReadOnlyList<Placed> rows, SetBlock? head = null) : SetBlock
{
    private double HeadHeight => head?.Height ?? 0;

    public override double Height { get; } = rows.Sum(row => row.Gap + row.Block.Height) + (head?.Height ?? 0);

    public override void Draw(Ink ink, double x, double y)
    {
        head?.Draw(ink, x, y);
        y += HeadHeight;
        foreach (var row in rows)
        {
            y += row.Gap;
            row.Block.Draw(ink, x, y);
            y += row.Block.Height;
        }
    }

    public override Parting? Split(double room)
    {
        var used = HeadHeight;
        var fit = 0;
        while (fit < rows.Count && used + rows[fit].Gap + rows[fit].Block.Height <= room)
        {
            used += rows[fit].Gap + rows[fit].Block.Height;
            fit++;
        }

        return fit == 0 || fit == rows.Count
            ? null
            : new Parting(new SetRows([.. rows.Take(fit)], head), new SetRows([rows[fit] with { Gap = 0 }, .. rows.Skip(fit + 1)], head));
    }
}

/// <summary>A block of fixed height that draws itself.</summary>
internal sealed class SetPicture(double height, Action<Ink, double, double> draw, bool keepsNext = false) : SetBlock
{
    public override double Height => height;

    public override bool KeepsNext => keepsNext;

    public override void Draw(Ink ink, double x, double y) => draw(ink, x, y);
}
