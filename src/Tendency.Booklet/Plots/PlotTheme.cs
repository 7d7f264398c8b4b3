using ScottPlot;
using ScottPlot.TickGenerators;
using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Plots;

/// <summary>Where a plot's parts stand inside its box, in points.</summary>
internal readonly record struct PlotFrame(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public double X(PlotAxis axis, double value) => Left + (Width * (value - axis.Low) / (axis.High - axis.Low));

    public double Y(PlotAxis axis, double value) => Bottom - (Height * (value - axis.Low) / (axis.High - axis.Low));
}

/// <summary>Builds a ScottPlot plot in the booklet's look: two thin axes, no box, no grid, black and three grays, no legend.</summary>
internal static class PlotTheme
{
    private const float TickSize = 7.5f;
    private static readonly Color Black = Colors.Black;

    public static ScottPlot.Plot Build(Blocks.Plot content, PlotFrame frame, double width, double height)
    {
        InterFonts.MakeKnown();
        var plot = new ScottPlot.Plot();
        plot.FigureBackground.Color = Colors.Transparent;
        plot.DataBackground.Color = Colors.Transparent;
        plot.HideGrid();
        plot.Axes.Right.IsVisible = false;
        plot.Axes.Top.IsVisible = false;
        Dress(plot.Axes.Bottom, content.Across);
        Dress(plot.Axes.Left, content.Up);
        foreach (var band in content.Bands)
        {
            var span = band.Upright ? (ScottPlot.Plottables.AxisSpan)plot.Add.HorizontalSpan(band.Low, band.High) : plot.Add.VerticalSpan(band.Low, band.High);
            span.FillColor = Color.FromHex(band.Upright ? "#EFEFEF" : "#DADADA");
            span.LineWidth = 0;
        }

        foreach (var rule in content.Rules)
        {
            ScottPlot.Plottables.AxisLine line = rule.Upright ? plot.Add.VerticalLine(rule.At) : plot.Add.HorizontalLine(rule.At);
            line.LineWidth = rule.Dotted ? 0.4f : 0.8f;
            line.LinePattern = rule.Dotted ? LinePattern.Dotted : LinePattern.Solid;
            line.LineColor = Black;
        }

        foreach (var line in content.Lines)
        {
            var scatter = plot.Add.ScatterLine(line.X.ToArray(), line.Y.ToArray());
            scatter.LineColor = Black;
            scatter.LineWidth = line.Winner ? 2.4f : 0.9f;
        }

        foreach (var dot in content.Dots)
        {
            if (dot.Low is { } low && dot.High is { } high)
            {
                var whisker = plot.Add.Line(dot.X, low, dot.X, high);
                whisker.LineColor = Black;
                whisker.LineWidth = dot.Solid ? 1.5f : 0.9f;
                whisker.MarkerSize = 0;
            }
        }

        plot.Axes.SetLimits(content.Across.Low, content.Across.High, content.Up.Low, content.Up.High);
        plot.Layout.Fixed(new PixelPadding((float)frame.Left, (float)(width - frame.Right), (float)(height - frame.Bottom), (float)frame.Top));
        plot.RenderManager.ClearCanvasBeforeEachRender = false;
        return plot;
    }

    private static void Dress(IAxis axis, PlotAxis content)
    {
        axis.FrameLineStyle.Width = 0.5f;
        axis.FrameLineStyle.Color = Black;
        axis.TickLabelStyle.FontName = InterFonts.Name;
        axis.TickLabelStyle.FontSize = TickSize;
        axis.TickLabelStyle.Bold = false;
        axis.TickLabelStyle.ForeColor = Black;
        axis.MajorTickStyle.Length = 3;
        axis.MajorTickStyle.Width = 0.4f;
        axis.MajorTickStyle.Color = Black;
        axis.MinorTickStyle.Length = 0;
        axis.TickGenerator = new NumericManual([.. content.Ticks.Select(tick => tick.At)], [.. content.Ticks.Select(tick => tick.Label)]);
    }
}
