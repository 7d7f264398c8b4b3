using ScottPlot;
using SkiaSharp;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Plots;

namespace Tendency.Booklet.Pdf;

/// <summary>Sets a plot: ScottPlot draws axes, bands, lines and whiskers; dots and all words on the spot are drawn over them, so that nothing at an edge is cut and words keep clear of one another.</summary>
internal static class PlotSetter
{
    public static SetBlock Set(Blocks.Plot plot, double width, Letters letters)
    {
        var frame = PlotLayout.Frame(plot, width, letters);
        return new SetPicture(plot.Height, (ink, x, y) => Draw(ink, plot, frame, x, y, width));
    }

    private static void Draw(Ink ink, Blocks.Plot plot, PlotFrame frame, double x, double y, double width)
    {
        using var built = PlotTheme.Build(plot, frame, width, plot.Height);
        var box = new PixelRect(0, (float)width, (float)plot.Height, 0);
        using (var nowhere = new SKNoDrawCanvas((int)Math.Ceiling(width), (int)Math.Ceiling(plot.Height)))
        {
            built.Render(nowhere, box); // the first render always draws twice, to measure
        }

        var restore = ink.Canvas.Save();
        ink.Canvas.Translate((float)x, (float)y);
        built.Render(ink.Canvas, box);
        ink.Canvas.RestoreToCount(restore);
        ink.Shapes(x, y, PlotWords.Of(plot, frame, width, ink.Letters));
    }
}
