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
        ownScaleLine = columns.Zip(heads).Any(pair => pair.First.Axis is not null && (pair.Second.Count > 0 || headLines == 0)) || ScaleTouchesHead();
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
            var left = NameLeft(axis, at, wide, axisWidth);
            ink.Text(x + left, baseline, axis.LineName, LineName);
            ink.Line(x + at, foot - 3.5, x + at, foot, 0.8);
            (nameFrom, nameTo) = (left - Room, left + wide + Room);
        }

        var every = LabelEvery(axis, axisWidth);
        for (var i = 0; i < axis.Ticks.Count; i++)
        {
            var at = StripMarks.Place(axis, axis.Ticks[i], axisWidth);
            ink.Line(x + at, foot - 3, x + at, foot, 0.4);
            var span = LabelSpan(axis, i, axisWidth);
            var clearOfName = nameFrom is null || span.To < nameFrom || span.From > nameTo;
            if (clearOfName && i % every == 0)
            {
                ink.Text(x + at, baseline, Label(axis, i), Scale, Align.Center);
            }
        }
    }

    /// <summary>Centered on its line; moved aside where that leaves both ends of the scale their labels and the name still stands over the line.</summary>
    private double NameLeft(StripAxis axis, double at, double wide, double axisWidth)
    {
        const double Room = 3.5;
        var centered = Math.Clamp(at - (wide / 2), 0, Math.Max(0, axisWidth - wide));
        if (axis.Ticks.Count < 2)
        {
            return centered;
        }

        var from = LabelSpan(axis, 0, axisWidth).To + Room;
        var to = LabelSpan(axis, axis.Ticks.Count - 1, axisWidth).From - Room - wide;
        var between = from <= to ? Math.Clamp(centered, from, to) : centered;
        return between <= at && at <= between + wide ? between : centered;
    }

    /// <summary>The smallest step that labels both ends and keeps labels apart: 0, 20, 40, 60% rather than 0, 10, 30, 60%.</summary>
    private int LabelEvery(StripAxis axis, double axisWidth)
    {
        const double Room = 3;
        var last = axis.Ticks.Count - 1;
        for (var step = 1; step < last; step++)
        {
            var apart = last % step == 0 && Enumerable.Range(0, last / step).All(i =>
                LabelSpan(axis, i * step, axisWidth).To + Room < LabelSpan(axis, (i + 1) * step, axisWidth).From);
            if (apart)
            {
                return step;
            }
        }

        return Math.Max(1, last);
    }

    private (double From, double To) LabelSpan(StripAxis axis, int tick, double axisWidth)
    {
        var at = StripMarks.Place(axis, axis.Ticks[tick], axisWidth);
        var half = letters.Width(Label(axis, tick), Scale) / 2;
        return (at - half, at + half);
    }

    /// <summary>A scale on the heads' line would run into a head beside it.</summary>
    private bool ScaleTouchesHead()
    {
        const double Room = 4;
        for (var i = 0; i < columns.Count; i++)
        {
            if (columns[i].Axis is not { Ticks.Count: > 0 } axis)
            {
                continue;
            }

            var from = columns[i].Stop + LabelSpan(axis, 0, columns[i].Width).From - Room;
            var to = columns[i].Stop + LabelSpan(axis, axis.Ticks.Count - 1, columns[i].Width).To + Room;
            for (var j = 0; j < columns.Count; j++)
            {
                var wide = heads[j].Select(line => line.Width).DefaultIfEmpty(0).Max();
                var left = columns[j].Stop + CellSetter.Inset(columns[j], wide);
                if (j != i && wide > 0 && left < to && left + wide > from)
                {
                    return true;
                }
            }
        }

        return false;
    }

    internal static string Label(StripAxis axis, int tick)
    {
        var last = tick == axis.Ticks.Count - 1;
        return axis.Percent
            ? Figures.Number(axis.Ticks[tick] * 100, 0) + (last ? "%" : "")
            : Figures.Signed(axis.Ticks[tick], axis.Ticks.All(double.IsInteger) ? 0 : 1) + (last && axis.Unit.Length > 0 ? " " + axis.Unit : "");
    }
}
