using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Pdf;

/// <summary>Where percents and counts of a column stand, so that all rows line up whatever their width; in a column too narrow for both, counts go under the percent.</summary>
/// <param name="Percent">Right edge of the percent from the cell's left edge.</param>
/// <param name="Beside">Left edge of the counts.</param>
/// <param name="Under">Counts go under the percent.</param>
/// <param name="Size">Of the percent.</param>
internal readonly record struct ShareStops(double Percent, double Beside, bool Under, double Size)
{
    private const double UsualField = 27;
    private const double UsualGap = 5;
    private const double LeastGap = 3.5;

    public static ShareStops Of(IEnumerable<ShareCell> cells, Column column, Letters letters, bool compact)
    {
        var size = compact ? 9.5 : 10.5;
        var percent = 0.0;
        var beside = 0.0;
        foreach (var cell in cells)
        {
            percent = Math.Max(percent, letters.Width(ShareSetter.Percent(cell.Share), new Style(size, Bold: true)));
            beside = Math.Max(beside, ShareSetter.Beside(cell).Select(line => letters.Width(line, ShareSetter.Small)).DefaultIfEmpty(0).Max());
        }

        if (column.Align == Align.Right)
        {
            var left = column.Width - beside;
            return new ShareStops(left - UsualGap, left, left - UsualGap < percent, size);
        }

        var field = Math.Max(UsualField, percent);
        return field + UsualGap + beside <= column.Width
            ? new ShareStops(field, field + UsualGap, Under: false, size)
            : new ShareStops(percent, percent + LeastGap, percent + LeastGap + beside > column.Width, size);
    }
}

/// <summary>Sets a share in figures: the percent, bold when it differs from its baseline, and its counts.</summary>
internal static class ShareSetter
{
    public static readonly Style Small = new(8.5);
    private const double Leading = CellSetter.Leading;
    private const double Drop = 0.78;
    private static readonly Style Tiny = new(7.5);

    public static string Percent(Share share) => share.None || share.TooFew ? "" : Figures.Percent(share);

    /// <summary>The lines beside the percent.</summary>
    public static IReadOnlyList<string> Beside(ShareCell cell)
    {
        var share = cell.Share;
        var range = share.TooFew ? "too few" : Figures.Range(share);
        var count = share.None ? "no plays" : Figures.CountOf(share);
        string[] beside = cell.Form switch
        {
            ShareForm.PercentAndCount => [count],
            ShareForm.PercentAndRange => [share.None ? "no plays" : range],
            ShareForm.OneLine or ShareForm.RightStacked => [range.Length == 0 ? count : $"{count}; {range}"],
            ShareForm.WithBase when share.Baseline is { } rate && !share.None => [count, range, $"base {Figures.Percent(rate)}"],
            _ => [count, range],
        };
        return [.. beside.Where(line => line.Length > 0)];
    }

    public static SetCell Set(ShareCell cell, Column column, Letters letters, ShareStops stops)
    {
        var percent = Percent(cell.Share);
        var style = new Style(stops.Size, cell.Share.Differs);
        return cell.Form == ShareForm.RightStacked || stops.Under
            ? Stacked(percent, Beside(cell), style, column, letters)
            : OnStops(percent, Beside(cell), style, column, stops);
    }

    private static SetCell OnStops(string percent, IReadOnlyList<string> beside, Style style, Column column, ShareStops stops) =>
        new(beside.Count * Leading, (ink, x, y, rowHeight) =>
        {
            var baseline = y + ((rowHeight - (beside.Count * Leading)) / 2) + (Leading * Drop);
            ink.Text(x + stops.Percent, baseline, percent, style, Align.Right);
            var right = column.Align == Align.Right;
            for (var i = 0; i < beside.Count; i++)
            {
                var at = right ? column.Width : stops.Beside;
                ink.Text(x + at, baseline + (i * Leading), beside[i], i == 2 ? Tiny : Small, right ? Align.Right : Align.Left);
            }
        });

    /// <summary>The percent alone on a line, its counts wrapped under it.</summary>
    private static SetCell Stacked(string percent, IReadOnlyList<string> beside, Style style, Column column, Letters letters)
    {
        var lines = new List<TextLine>();
        if (percent.Length > 0)
        {
            lines.AddRange(letters.Wrap(percent, style, column.Width));
        }

        lines.AddRange(beside.SelectMany(line => letters.Wrap(line, Small, column.Width)));
        return new SetCell(lines.Count * Leading, (ink, x, y, rowHeight) =>
        {
            var baseline = y + ((rowHeight - (lines.Count * Leading)) / 2) + (Leading * Drop);
            foreach (var line in lines)
            {
                ink.Lines(x + CellSetter.Inset(column, line.Width), baseline, [line], Leading);
                baseline += Leading;
            }
        });
    }
}
