using Tendency.Booklet.Blocks;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Html;

/// <summary>Shapes as an inline SVG picture, a point being 4/3 of a pixel as in style sheets. Text stays text.</summary>
internal static class Svg
{
    /// <param name="to">Where to write.</param>
    /// <param name="shapes">In drawing order.</param>
    /// <param name="size">Width and height of the box in points.</param>
    /// <param name="label">What a reader who hears the page is told; empty = decoration, the words beside it say it.</param>
    public static void Write(Markup to, IEnumerable<Shape> shapes, (double Width, double Height) size, string label)
    {
        const double Bleed = 2; // marks at an end reach past the box
        var box = $"{Markup.Number(-Bleed)} {Markup.Number(-Bleed)} {Markup.Number(size.Width + (2 * Bleed))} {Markup.Number(size.Height + (2 * Bleed))}";
        var heard = label.Length == 0 ? "aria-hidden=\"true\"" : $"role=\"img\" aria-label=\"{Markup.Escape(label)}\"";
        const double PixelsPerPoint = 4.0 / 3;
        to.Open("svg", $"width=\"{Markup.Number(PixelsPerPoint * (size.Width + (2 * Bleed)))}\" height=\"{Markup.Number(PixelsPerPoint * (size.Height + (2 * Bleed)))}\" viewBox=\"{box}\" {heard}");
        foreach (var shape in shapes)
        {
            Write(to, shape);
        }

        to.Close("svg");
    }

    private static void Write(Markup to, Shape shape)
    {
        switch (shape)
        {
            case PathShape path:
                Path(to, path);
                break;
            case BoxShape box:
                if (box.Fill != Tone.None || box.Stroke > 0)
                {
                    to.Raw($"<rect x=\"{Markup.Number(box.X)}\" y=\"{Markup.Number(box.Y)}\" width=\"{Markup.Number(box.Width)}\" height=\"{Markup.Number(box.Height)}\"{Fill(box.Fill)}{Stroke(box.Stroke)}/>");
                }

                if (box.Hatched)
                {
                    var lines = Hatching.Lines(box.X, box.Y, box.Width, box.Height).Select(line =>
                        $"M{Markup.Number(line.X1)} {Markup.Number(line.Y1)}L{Markup.Number(line.X2)} {Markup.Number(line.Y2)}");
                    to.Raw($"<path d=\"{string.Concat(lines)}\" fill=\"none\"{Stroke(Hatching.Weight)}/>");
                }

                break;
            case CircleShape circle:
                to.Raw($"<circle cx=\"{Markup.Number(circle.X)}\" cy=\"{Markup.Number(circle.Y)}\" r=\"{Markup.Number(circle.Radius)}\"{Fill(circle.Fill)}{Stroke(circle.Stroke)}/>");
                break;
            case WordShape word:
                var anchor = word.Align switch
                {
                    Align.Right => "end",
                    Align.Center => "middle",
                    _ => "start",
                };
                var backed = word.Backed ? " class=\"backed\"" : "";
                to.Raw($"<text x=\"{Markup.Number(word.X)}\" y=\"{Markup.Number(word.Y)}\" font-size=\"{Markup.Number(word.Size)}\" text-anchor=\"{anchor}\"{(word.Bold ? " font-weight=\"700\"" : "")}{(word.White ? " fill=\"#fff\"" : "")}{backed}>");
                to.Words(word.Text).Close("text");
                break;
        }
    }

    private static void Path(Markup to, PathShape path)
    {
        var spots = PathEnds.Shortened(path);
        var dash = path.Dash switch
        {
            Dash.Dashed => " stroke-dasharray=\"3.2 2.2\"",
            Dash.Dotted => " stroke-dasharray=\"1 2\"",
            Dash.Fine => " stroke-dasharray=\"0.6 2.4\"",
            Dash.Long => " stroke-dasharray=\"7 3\"",
            _ => "",
        };
        to.Raw($"<path d=\"M{Points(spots)}\" fill=\"none\"{Stroke(path.Width)}{dash}/>");
        if (path.End == Cap.Arrow)
        {
            to.Raw($"<path d=\"M{Points(PathEnds.ArrowHead(path))}Z\"/>");
        }
        else if (path.End == Cap.Flat)
        {
            var (a, b) = PathEnds.FlatBar(path);
            to.Raw($"<path d=\"M{Points([a, b])}\"{Stroke(Math.Max(1.2, path.Width))}/>");
        }
    }

    private static string Points(IEnumerable<Spot> spots) => string.Join('L', spots.Select(spot => $"{Markup.Number(spot.X)} {Markup.Number(spot.Y)}"));

    private static string Stroke(double weight) => weight > 0 ? $" stroke=\"#000\" stroke-width=\"{Markup.Number(weight)}\"" : "";

    private static string Fill(Tone tone) => tone switch
    {
        Tone.None => " fill=\"none\"",
        Tone.White => " fill=\"#fff\"",
        Tone.Light => " fill=\"#efefef\"",
        Tone.Middle => " fill=\"#dadada\"",
        Tone.Dark => " fill=\"#bababa\"",
        Tone.Frame => " fill=\"#b0b0b0\"",
        Tone.DarkFrame => " fill=\"#6e6e6e\"",
        _ => "",
    };
}
