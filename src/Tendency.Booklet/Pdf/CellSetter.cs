using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Pdf;

/// <summary>A cell set in type: the height its content needs and how to draw it into a row.</summary>
internal sealed record SetCell(double Height, Action<Ink, double, double, double> Draw)
{
    public static readonly SetCell Blank = new(0, (_, _, _, _) => { });
}

/// <summary>Sets table cells: words wrapped or cut to the column, shares on their tab stops, marks as shapes.</summary>
internal static class CellSetter
{
    public const double Leading = 10.5;
    private const double Drop = 0.78; // baseline within a line, as a part of the leading
    private static readonly Style Small = new(8.5);
    private static readonly Style Tiny = new(7.5);

    /// <param name="cell">What to set.</param>
    /// <param name="column">Where.</param>
    /// <param name="letters">Measures.</param>
    /// <param name="shares">Tab stops all shares of the column keep.</param>
    public static SetCell Set(Cell cell, Column column, Letters letters, ShareStops shares) => cell switch
    {
        TextCell text => SetWords(text, column, letters),
        ShareCell share => ShareSetter.Set(share, column, letters, shares),
        StripCell strip => Drawn(column, (width, height) => StripMarks.Of(strip.Share, column.Axis ?? StripAxis.OwnBaselines(), width, height)),
        EstimateCell estimate => Drawn(column, (width, height) => StripMarks.Of(estimate, column.Axis ?? StripAxis.OwnBaselines(), width, height)),
        CountsCell counts => SetCounts(counts, column, letters),
        SparkCell spark => Drawn(column, (width, height) => CellMarks.Of(spark, width, height), 26),
        BarCell bar => Drawn(column, (width, height) => CellMarks.Of(bar.Bar, bar.Full, width, height)),
        HeatCell heat => Drawn(column, (width, height) => CellMarks.Of(heat, width, height), 27),
        CallCell call => Drawn(column, (width, height) => CellMarks.Of(call, width, height), 20),
        _ => throw new InvalidOperationException($"{cell.GetType().Name} cannot be printed."),
    };

    private static SetCell Drawn(Column column, Func<double, double, IReadOnlyList<Shape>> shapes, double height = Leading) =>
        new(height, (ink, x, y, rowHeight) => ink.Shapes(x, y, shapes(column.Width, rowHeight)));

    private static SetCell SetWords(TextCell cell, Column column, Letters letters)
    {
        var cue = cell.Plays is not null;
        var lines = new List<(TextLine Line, double Leading)>();
        for (var i = 0; i < cell.Lines.Count; i++)
        {
            var named = cue || cell.Numeric || (i == 0 && cell.Lines[i].Runs is [{ Bold: true }]);
            var (size, leading) = cue ? (10.0, 12.0) : named ? (9.5, 11.0) : (8.5, Leading);
            lines.AddRange(letters.Wrap(cell.Lines[i], size, column.Width, cell.MostLines).Select(line => (line, leading)));
        }

        if (cell.Plays is { } plays)
        {
            lines.Add((letters.Wrap(PlayItems(plays, column.Width, letters), Tiny, column.Width, 1)[0], 11));
        }

        return Stack(lines, column);
    }

    private static SetCell Stack(IReadOnlyList<(TextLine Line, double Leading)> lines, Column column) =>
        new(lines.Sum(line => line.Leading), (ink, x, y, rowHeight) =>
        {
            var top = y + ((rowHeight - lines.Sum(line => line.Leading)) / 2);
            foreach (var (line, leading) in lines)
            {
                ink.Lines(x + Inset(column, line.Width), top + (leading * Drop), [line], leading);
                top += leading;
            }
        });

    /// <summary>Whole items as far as they fit, then how many more.</summary>
    private static string PlayItems(PlayList plays, double width, Letters letters)
    {
        var items = plays.Items().ToList();
        if (items.Count == 0)
        {
            return "no plays";
        }

        var fits = "";
        for (var count = 1; count <= items.Count; count++)
        {
            var text = Joined(items.Take(count));
            var whole = count == items.Count ? text : $"{text}; +{items.Count - count} more";
            if (letters.Width(letters.Printable(whole), Tiny) > width)
            {
                return fits.Length > 0 ? fits : letters.Cut(whole, Tiny, width);
            }

            fits = whole;
        }

        return fits;
    }

    /// <summary>"G1 18, 42; G2 13": a semicolon where the game changes.</summary>
    private static string Joined(IEnumerable<string> items)
    {
        var text = "";
        foreach (var item in items)
        {
            text += text.Length == 0 ? item : (item.Contains(' ', StringComparison.Ordinal) ? "; " : ", ") + item;
        }

        return text;
    }

    private static SetCell SetCounts(CountsCell cell, Column column, Letters letters)
    {
        var items = cell.Counts.Take(3).ToList();
        return new SetCell(items.Count * Leading, (ink, x, y, rowHeight) =>
        {
            var baseline = y + ((rowHeight - (items.Count * Leading)) / 2) + (Leading * Drop);
            foreach (var item in items)
            {
                var count = Figures.Count(item.Count);
                var room = column.Width - letters.Width(count, Small) - 4;
                ink.Text(x, baseline, letters.Cut(item.Name, Small, room), Small);
                ink.Text(x + column.Width, baseline, count, Small, Align.Right);
                baseline += Leading;
            }
        });
    }

    public static double Inset(Column column, double width) => column.Align switch
    {
        Align.Right => column.Width - width,
        Align.Center => (column.Width - width) / 2,
        _ => 0,
    };
}
