using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Plots;

/// <summary>Where in its block a plot's data stand.</summary>
internal static class PlotLayout
{
    /// <summary>The data area: room at the left for tick labels, above for the axis words, below for ticks, counts and words, at the right for names.</summary>
    internal static PlotFrame Frame(Plot plot, double width, Letters letters)
    {
        var labels = plot.Up.Ticks.Select(tick => letters.Width(letters.Printable(tick.Label), new Style(7.5))).DefaultIfEmpty(0).Max();
        var left = labels + 9;
        var above = plot.Up.Words.Length > 0 ? 18 : 5;
        var below = 4.0 + (plot.Across.Ticks.Any(tick => tick.Label.Length > 0) || plot.Dots.Any(dot => dot.Label.Length > 0) ? 10 : 0) + (plot.Across.Words.Length > 0 ? 13 : 0);
        return new PlotFrame(left, above, width - left - plot.NameWidth, plot.Height - above - below);
    }
}
