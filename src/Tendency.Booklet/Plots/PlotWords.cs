using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;

namespace Tendency.Booklet.Plots;

/// <summary>What is drawn over a plot: dots, rings, names at line ends, words for bands and rules, axis words. All as shapes in the plot's box.</summary>
internal static class PlotWords
{
    private const double NameGap = 10;

    public static IReadOnlyList<Shape> Of(Plot plot, PlotFrame frame, double width, Letters letters)
    {
        var shapes = new List<Shape>();
        AddDots(shapes, plot, frame, letters);
        AddNames(shapes, plot, frame, width);
        AddTopWords(shapes, plot, frame, letters);
        AddRings(shapes, plot, frame, letters);
        if (plot.Up.Words.Length > 0)
        {
            shapes.Add(new WordShape(0, 8, plot.Up.Words, 8.5, Align: Align.Left) { MaxWidth = width });
        }

        if (plot.Across.Words.Length > 0)
        {
            shapes.Add(new WordShape(frame.Left + (frame.Width / 2), plot.Height - 2, plot.Across.Words, 8.5) { MaxWidth = frame.Width + (2 * frame.Left) });
        }

        return shapes;
    }

    private static void AddDots(List<Shape> shapes, Plot plot, PlotFrame frame, Letters letters)
    {
        const double Radius = 2.9;
        const double Outline = 1.05;
        var lastEnd = double.NegativeInfinity;
        foreach (var dot in plot.Dots)
        {
            var x = frame.X(plot.Across, dot.X);
            var y = frame.Y(plot.Up, dot.Y);
            shapes.Add(dot.Solid ? new CircleShape(x, y, Radius, Tone.Black, 0) : new CircleShape(x, y, Radius - (Outline / 2), Tone.White, Outline));
            var half = letters.Width(letters.Printable(dot.Label), new Style(7.5)) / 2;
            if (dot.Label.Length > 0 && x - half > lastEnd + 2)
            {
                shapes.Add(new WordShape(x, frame.Bottom + 12, dot.Label, 7.5));
                lastEnd = x + half;
            }
        }
    }

    /// <summary>Names at the right end of lines, level rules and level bands, pushed apart where they would touch.</summary>
    private static void AddNames(List<Shape> shapes, Plot plot, PlotFrame frame, double width)
    {
        var names = plot.Lines.Select(line => (Y: frame.Y(plot.Up, line.Y[^1]), Text: line.Name, Bold: line.Winner))
            .Concat(plot.Rules.Where(rule => !rule.Upright).Select(rule => (Y: frame.Y(plot.Up, rule.At), Text: rule.Words, Bold: true)))
            .Concat(plot.Bands.Where(band => !band.Upright).Select(band => (Y: frame.Y(plot.Up, (band.Low + band.High) / 2), Text: band.Words, Bold: false)))
            .Where(name => name.Text.Length > 0)
            .OrderBy(name => name.Y)
            .ToList();
        for (var i = 1; i < names.Count; i++)
        {
            names[i] = names[i] with { Y = Math.Max(names[i].Y, names[i - 1].Y + NameGap) };
        }

        var overrun = names.Count == 0 ? 0 : Math.Max(0, names[^1].Y - frame.Bottom);
        for (var i = names.Count - 1; i >= 0 && overrun > 0; i--)
        {
            var most = i == names.Count - 1 ? frame.Bottom : names[i + 1].Y - NameGap;
            names[i] = names[i] with { Y = Math.Min(names[i].Y, most) };
        }

        foreach (var (y, text, bold) in names)
        {
            shapes.Add(new WordShape(frame.Right + 4, y + 3.2, text, 9, bold, Align.Left) { MaxWidth = width - frame.Right - 4 });
        }
    }

    /// <summary>Words of upright rules at the top, of upright bands under them; their backing takes the band's gray.</summary>
    private static void AddTopWords(List<Shape> shapes, Plot plot, PlotFrame frame, Letters letters)
    {
        foreach (var rule in plot.Rules.Where(rule => rule.Upright && rule.Words.Length > 0))
        {
            var inBand = plot.Bands.Any(band => band.Upright && band.Low <= rule.At && rule.At <= band.High);
            Add(frame.X(plot.Across, rule.At), 9, rule.Words, new Style(8.5, Bold: true), inBand);
        }

        foreach (var band in plot.Bands.Where(band => band.Upright && band.Words.Length > 0))
        {
            Add(frame.X(plot.Across, (band.Low + band.High) / 2), 20, band.Words, new Style(7.5), inBand: true);
        }

        void Add(double x, double down, string words, Style style, bool inBand)
        {
            var half = (letters.Width(letters.Printable(words), style) / 2) + 1.5;
            shapes.Add(new BoxShape(x - half, frame.Top + down - style.Size, 2 * half, style.Size + 2.5, inBand ? Tone.Light : Tone.White, 0));
            shapes.Add(new WordShape(x, frame.Top + down, words, style.Size, style.Bold));
        }
    }

    /// <summary>A ring, its words above to the right (to the left near the right end), a straight leader between.</summary>
    private static void AddRings(List<Shape> shapes, Plot plot, PlotFrame frame, Letters letters)
    {
        const double Radius = 4.2;
        foreach (var ring in plot.Rings)
        {
            var x = frame.X(plot.Across, ring.X);
            var y = frame.Y(plot.Up, ring.Y);
            var half = letters.Width(letters.Printable(ring.Words), new Style(8.5, Bold: true)) / 2;
            var wordX = Math.Clamp(x + 34, frame.Left + half, Math.Max(frame.Left + half, frame.Right - half));
            var wordY = y - 62 < frame.Top + 34 ? Math.Min(y + 50, frame.Bottom - 6) : y - 62;
            var foot = wordY < y ? wordY + 4 : wordY - 9;
            shapes.Add(new PathShape([new Spot(wordX, foot), new Spot(x, y)], 0.4));
            shapes.Add(new WordShape(wordX, wordY, ring.Words, 8.5, Bold: true) { Backed = true });
            shapes.Add(new CircleShape(x, y, Radius - 0.75, Tone.White, 1.5));
        }
    }
}
