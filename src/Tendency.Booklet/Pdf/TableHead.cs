using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Pdf;

/// <summary>Column heads over at most two lines, and the scales of strip columns under them, their comparison line named once.</summary>
internal sealed class TableHead
{
    private const double Leading = 10.5;
    private const double ScaleHeight = 12;
    private static readonly Style Bold = new(8.5, Bold: true);
    private static readonly Style Scale = new(7.5);
    private static readonly Style LineName = new(7.5, Bold: true);
    private readonly IReadOnlyList<Column> columns;
    private readonly IReadOnlyList<IReadOnlyList<TextLine>> heads;
    private readonly double width;
    private readonly Letters letters;
    private readonly bool ruledAbove;
    private readonly bool ruledBelow;
    private readonly double headLines;
    private readonly bool ownScaleLine;

    public TableHead(IReadOnlyList<Column> columns, double width, Letters letters, bool ruledAbove, bool ruledBelow)
    {
        (this.columns, this.width, this.letters, this.ruledAbove, this.ruledBelow) = (columns, width, letters, ruledAbove, ruledBelow);
        heads = [.. columns.Select(SetHead)];
        headLines = heads.Max(lines => lines.Count) * Leading;
        // A scale without a head over it stands on the heads' last line.
        ownScaleLine = columns.Zip(heads).Any(pair => pair.First.Axis is not null && (pair.Second.Count > 0 || headLines == 0));
        Height = headLines == 0 && !ownScaleLine ? 0 : (ruledAbove ? 4 : 2) + headLines + (ownScaleLine ? ScaleHeight : 0) + 5;
    }

    public double Height { get; }

    public TableHead Ruled(bool above) => new(columns, width, letters, above && ruledBelow, ruledBelow);

    public void Draw(Ink ink, double x, double y)
    {
        if (Height == 0)
        {
            return;
        }

        if (ruledAbove)
        {
            ink.Rule(x, y, width, 0.75);
        }

        var lastHead = y + (ruledAbove ? 4 : 2) + headLines - (Leading * 0.22);
        var scaleLine = ownScaleLine ? lastHead + ScaleHeight : lastHead;
        for (var i = 0; i < columns.Count; i++)
        {
            var baseline = lastHead - ((heads[i].Count - 1) * Leading);
            foreach (var line in heads[i])
            {
                ink.Lines(x + columns[i].Stop + CellSetter.Inset(columns[i], line.Width), baseline, [line], Leading);
                baseline += Leading;
            }

            if (columns[i].Axis is { } axis)
            {
                DrawScale(ink, x + columns[i].Stop, scaleLine, y + Height, axis, columns[i].Width);
            }
        }

        if (ruledBelow)
        {
            ink.Rule(x, y + Height, width, 0.3);
        }
    }

    private IReadOnlyList<TextLine> SetHead(Column column)
    {
        if (column.Head.Length == 0 && column.Remark.Length == 0)
        {
            return [];
        }

        var text = RichText.Strong(column.Head);
        return letters.Wrap(column.Remark.Length == 0 ? text : text + RichText.Plain("  " + column.Remark), Bold.Size, column.Width, 2);
    }

    /// <summary>Tick labels and the line's name, which takes precedence: labels it would touch are left out.</summary>
    private void DrawScale(Ink ink, double x, double baseline, double foot, StripAxis axis, double axisWidth)
    {
        const double Room = 3;
        double? nameFrom = null;
        double? nameTo = null;
        if (axis.Line is { } line && axis.LineName.Length > 0)
        {
            var at = StripMarks.Place(axis, line, axisWidth);
            var wide = letters.Width(letters.Printable(axis.LineName), LineName);
            var left = Math.Clamp(at - (wide / 2), 0, Math.Max(0, axisWidth - wide));
            ink.Text(x + left, baseline, axis.LineName, LineName);
            ink.Line(x + at, foot - 3.5, x + at, foot, 0.8);
            (nameFrom, nameTo) = (left - Room, left + wide + Room);
        }

        for (var i = 0; i < axis.Ticks.Count; i++)
        {
            var at = StripMarks.Place(axis, axis.Ticks[i], axisWidth);
            ink.Line(x + at, foot - 3, x + at, foot, 0.4);
            var label = Label(axis, i);
            var wide = letters.Width(label, Scale);
            if (nameFrom is null || at + (wide / 2) < nameFrom || at - (wide / 2) > nameTo)
            {
                ink.Text(x + at, baseline, label, Scale, Align.Center);
            }
        }
    }

    internal static string Label(StripAxis axis, int tick)
    {
        var last = tick == axis.Ticks.Count - 1;
        return axis.Percent
            ? Figures.Number(axis.Ticks[tick] * 100, 0) + (last ? "%" : "")
            : Figures.Signed(axis.Ticks[tick], axis.Ticks.All(double.IsInteger) ? 0 : 1) + (last && axis.Unit.Length > 0 ? " " + axis.Unit : "");
    }
}
