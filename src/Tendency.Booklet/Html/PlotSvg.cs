using System.Text;
using ScottPlot;
using SkiaSharp;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Plots;

namespace Tendency.Booklet.Html;

/// <summary>A plot as inline SVG: the same ScottPlot drawing as on paper, on a canvas that writes SVG, with the same words over it.</summary>
internal static class PlotSvg
{
    public static string Of(Blocks.Plot plot, double width)
    {
        var letters = new Letters();
        var frame = PlotSetter.Frame(plot, width, letters);
        using var built = PlotTheme.Build(plot, frame, width, plot.Height);
        var box = new PixelRect(0, (float)width, (float)plot.Height, 0);
        using (var nowhere = new SKNoDrawCanvas((int)Math.Ceiling(width), (int)Math.Ceiling(plot.Height)))
        {
            built.Render(nowhere, box);
        }

        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(SKRect.Create((float)width, (float)plot.Height), stream))
        {
            built.Render(canvas, box);
        }

        var drawn = Encoding.UTF8.GetString(stream.ToArray());
        // The picture goes inside ours, which also carries the words and the description.
        var inner = drawn[(drawn.IndexOf("<svg", StringComparison.Ordinal))..];
        var words = new Markup();
        Svg.Write(words, PlotWords.Of(plot, frame, width, letters), (width, plot.Height), plot.Description);
        var text = words.ToString();
        var open = text.IndexOf('>', StringComparison.Ordinal) + 1;
        return text[..open] + inner.TrimEnd() + text[open..];
    }
}
