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
    /// <param name="compact">Small percents, for the tables inside panels.</param>
    /// <param name="besideWidth">Room the widest "k of n" of the column takes, so that percents of a right-aligned column stand under one another.</param>
    public static SetCell Set(Cell cell, Column column, Letters letters, bool compact, double besideWidth) => cell switch
    {
        TextCell text => SetWords(text, column, letters),
        ShareCell share => SetShare(share, column, letters, compact, besideWidth),
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
            lines.AddRange(letters.Wrap(cell.Lines[i], size, column.Width, 2).Select(line => (line, leading)));
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

    /// <summary>The lines beside the percent.</summary>
    public static IReadOnlyList<string> Beside(ShareCell cell)
    {
        var share = cell.Share;
        var range = Figures.Range(share);
        var count = share.None ? "no plays" : Figures.CountOf(share);
        if (share.TooFew)
        {
            range = "too few";
        }

        string[] beside = cell.Form switch
        {
            ShareForm.PercentAndCount => [count],
            ShareForm.PercentAndRange => [share.None ? "no plays" : range],
            ShareForm.OneLine => [Both(count, range)],
            ShareForm.RightStacked => [Both(count, range)],
            ShareForm.WithBase when share.Baseline is { } rate && !share.None => [count, range, $"base {Figures.Percent(rate)}"],
            _ => [count, range],
        };
        return [.. beside.Where(line => line.Length > 0)];
    }

    public static double BesideWidth(ShareCell cell, Letters letters) => Beside(cell).Select(line => letters.Width(line, Small)).DefaultIfEmpty(0).Max();

    private static SetCell SetShare(ShareCell cell, Column column, Letters letters, bool compact, double besideWidth)
    {
        var share = cell.Share;
        var beside = Beside(cell);
        var percent = share.None || share.TooFew ? "" : Figures.Percent(share);
        var big = new Style(compact ? 9.5 : 10.5, share.Differs);
        if (cell.Form == ShareForm.RightStacked)
        {
            return RightStacked(percent, beside, big, column);
        }

        var percentWidth = letters.Width(percent, big);
        var (field, stop) = (27.0, 32.0);
        var shift = Math.Max(0, percentWidth - field);
        var right = column.Align == Align.Right;
        return new SetCell(beside.Count * Leading, (ink, x, y, rowHeight) =>
        {
            var left = right ? x + column.Width - besideWidth - stop - shift : x;
            var baseline = y + ((rowHeight - (beside.Count * Leading)) / 2) + (Leading * Drop);
            ink.Text(left + field + shift, baseline, percent, big, Align.Right);
            for (var i = 0; i < beside.Count; i++)
            {
                ink.Text(right ? x + column.Width : left + stop + shift, baseline + (i * Leading), beside[i], i == 2 ? Tiny : Small, right ? Align.Right : Align.Left);
            }
        });
    }

    private static SetCell RightStacked(string percent, IReadOnlyList<string> beside, Style big, Column column)
    {
        var lines = percent.Length == 0 ? beside.Count : beside.Count + 1;
        return new SetCell(lines * Leading, (ink, x, y, rowHeight) =>
        {
            var baseline = y + ((rowHeight - (lines * Leading)) / 2) + (Leading * Drop);
            if (percent.Length > 0)
            {
                ink.Text(x + column.Width, baseline, percent, big, Align.Right);
                baseline += Leading;
            }

            foreach (var line in beside)
            {
                ink.Text(x + column.Width, baseline, line, Small, Align.Right);
                baseline += Leading;
            }
        });
    }

    private static string Both(string count, string range) => range.Length == 0 ? count : $"{count}; {range}";

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
