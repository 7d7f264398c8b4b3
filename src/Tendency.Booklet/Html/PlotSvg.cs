using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ScottPlot;
using SkiaSharp;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Plots;

namespace Tendency.Booklet.Html;

/// <summary>A plot as inline SVG: the same ScottPlot drawing as on paper, on a canvas that writes SVG, with the same words over it.</summary>
internal static partial class PlotSvg
{
    /// <param name="plot">What to draw.</param>
    /// <param name="width">Points.</param>
    /// <param name="number">Which plot of the file this is: names inside it must be its own.</param>
    public static string Of(Blocks.Plot plot, double width, int number)
    {
        var letters = new Letters();
        var frame = PlotLayout.Frame(plot, width, letters);
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
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        var inner = ClipName().Replace(drawn[drawn.IndexOf("<svg", StringComparison.Ordinal)..], Renamed);
        var words = new Markup();
        Svg.Write(words, PlotWords.Of(plot, frame, width, letters), (width, plot.Height), plot.Description);
        var text = words.ToString();
        var open = text.IndexOf('>', StringComparison.Ordinal) + 1;
        return text[..open] + inner.TrimEnd() + text[open..];

        string Renamed(Match match)
        {
            if (!names.TryGetValue(match.Value, out var name))
            {
                name = string.Create(CultureInfo.InvariantCulture, $"plot{number}-{names.Count + 1}");
                names[match.Value] = name;
            }

            return name;
        }
    }

    // Skia numbers clip paths over the whole process; ours are numbered within the file.
    [GeneratedRegex("cl_[0-9a-f]+", RegexOptions.CultureInvariant, 5000)]
    private static partial Regex ClipName();
}
