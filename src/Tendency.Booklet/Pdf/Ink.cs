using SkiaSharp;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Marks;

namespace Tendency.Booklet.Pdf;

/// <summary>Draws lines, shapes and set text onto one page. Everything visible on a page goes through here, except ScottPlot's axes.</summary>
internal sealed class Ink(SKCanvas canvas, Letters letters) : IDisposable
{
    private readonly SKPaint stroke = new() { Style = SKPaintStyle.Stroke, IsAntialias = true, Color = SKColors.Black };
    private readonly SKPaint fill = new() { Style = SKPaintStyle.Fill, IsAntialias = true, Color = SKColors.Black };

    // Thousands of words on a few dozen sizes: making the font anew for each took a fifth of the drawing.
    private readonly Dictionary<int, SKFont> fonts = [];
    private readonly SKTextBlobBuilder builder = new();

    public SKCanvas Canvas => canvas;

    public Letters Letters { get; } = letters;

    public void Dispose()
    {
        stroke.Dispose();
        fill.Dispose();
        builder.Dispose();
        foreach (var font in fonts.Values)
        {
            font.Dispose();
        }
    }

    public void Rule(double x, double y, double width, double weight) => Line(x, y, x + width, y, weight);

    public void Line(double x1, double y1, double x2, double y2, double weight, Dash dash = Dash.Solid)
    {
        stroke.StrokeWidth = (float)weight;
        stroke.StrokeCap = SKStrokeCap.Butt;
        using var effect = Effect(dash);
        stroke.PathEffect = effect;
        canvas.DrawLine((float)x1, (float)y1, (float)x2, (float)y2, stroke);
        stroke.PathEffect = null;
    }

    public void Box(double x, double y, double width, double height, Tone tone, double weight)
    {
        var box = SKRect.Create((float)x, (float)y, (float)width, (float)height);
        if (tone != Tone.None)
        {
            fill.Color = ColorOf(tone);
            canvas.DrawRect(box, fill);
        }

        if (weight > 0)
        {
            stroke.StrokeWidth = (float)weight;
            canvas.DrawRect(box, stroke);
        }
    }

    public void Circle(double x, double y, double radius, Tone tone, double weight)
    {
        if (tone != Tone.None)
        {
            fill.Color = ColorOf(tone);
            canvas.DrawCircle((float)x, (float)y, (float)radius, fill);
        }

        if (weight > 0)
        {
            stroke.StrokeWidth = (float)weight;
            canvas.DrawCircle((float)x, (float)y, (float)radius, stroke);
        }
    }

    /// <summary>One line of one weight at a baseline; returns its width.</summary>
    public double Text(double x, double baseline, string text, Style style, Align align = Align.Left, bool white = false)
    {
        text = Letters.Printable(text);
        if (text.Length == 0)
        {
            return 0;
        }

        var width = Letters.Width(text, style);
        var left = align switch
        {
            Align.Right => x - width,
            Align.Center => x - (width / 2),
            _ => x,
        };
        var face = Lettering.Letters.FaceOf(style.Bold);
        var shaped = Letters.Shape(text, style.Bold);
        var scale = style.Size / face.UnitsPerEm;
        var points = new SKPoint[shaped.Glyphs.Length];
        for (var i = 0; i < points.Length; i++)
        {
            points[i] = new SKPoint((float)((shaped.Places[i] * scale) + (style.Tracking * style.Size * i)), 0);
        }

        builder.AddPositionedRun(shaped.Glyphs, FontOf(style), points);
        using var blob = builder.Build();
        fill.Color = white ? SKColors.White : SKColors.Black;
        canvas.DrawText(blob, (float)left, (float)baseline, fill);
        return width;
    }

    /// <summary>Set lines from a first baseline; anchored pieces become links.</summary>
    public void Lines(double x, double baseline, IReadOnlyList<TextLine> lines, double leading)
    {
        foreach (var line in lines)
        {
            foreach (var piece in line.Pieces)
            {
                Text(x + piece.X, baseline, piece.Text, piece.Style);
                if (piece.Anchor is { } anchor && Letters.PageNumbers.ContainsKey(anchor))
                {
                    Link(x + piece.X, baseline - piece.Style.Size, piece.Width, piece.Style.Size * 1.25, anchor);
                }
            }

            baseline += leading;
        }
    }

    public void Link(double x, double y, double width, double height, string anchor) =>
        canvas.DrawLinkDestinationAnnotation(SKRect.Create((float)x, (float)y, (float)width, (float)height), anchor)?.Dispose();

    public void Target(double x, double y, string anchor) =>
        canvas.DrawNamedDestinationAnnotation(new SKPoint((float)x, (float)y), anchor)?.Dispose();

    /// <summary>Shapes from an origin.</summary>
    public void Shapes(double x, double y, IEnumerable<Shape> shapes)
    {
        foreach (var shape in shapes)
        {
            switch (shape)
            {
                case PathShape path:
                    Path(x, y, path);
                    break;
                case BoxShape box:
                    Box(x + box.X, y + box.Y, box.Width, box.Height, box.Fill, box.Stroke);
                    if (box.Hatched)
                    {
                        foreach (var (x1, y1, x2, y2) in Hatching.Lines(x + box.X, y + box.Y, box.Width, box.Height))
                        {
                            Line(x1, y1, x2, y2, Hatching.Weight);
                        }
                    }

                    break;
                case CircleShape circle:
                    Circle(x + circle.X, y + circle.Y, circle.Radius, circle.Fill, circle.Stroke);
                    break;
                case WordShape word:
                    Word(x, y, word);
                    break;
            }
        }
    }

    private SKFont FontOf(Style style)
    {
        const int Fineness = 1000;
        var key = (int)Math.Round(style.Size * Fineness) * (style.Bold ? -1 : 1);
        if (!fonts.TryGetValue(key, out var font))
        {
            font = new SKFont(Lettering.Letters.FaceOf(style.Bold).Typeface, (float)style.Size) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };
            fonts.Add(key, font);
        }

        return font;
    }

    private static SKColor ColorOf(Tone tone) => tone switch
    {
        Tone.White => SKColors.White,
        Tone.Light => new SKColor(0xEF, 0xEF, 0xEF),
        Tone.Middle => new SKColor(0xDA, 0xDA, 0xDA),
        Tone.Dark => new SKColor(0xBA, 0xBA, 0xBA),
        Tone.Frame => new SKColor(0xB0, 0xB0, 0xB0),
        Tone.DarkFrame => new SKColor(0x6E, 0x6E, 0x6E),
        _ => SKColors.Black,
    };

    private static SKPathEffect? Effect(Dash dash) => dash switch
    {
        Dash.Dashed => SKPathEffect.CreateDash([3.2f, 2.2f], 0),
        Dash.Dotted => SKPathEffect.CreateDash([1f, 2f], 0),
        Dash.Fine => SKPathEffect.CreateDash([0.6f, 2.4f], 0),
        Dash.Long => SKPathEffect.CreateDash([7f, 3f], 0),
        _ => null,
    };

    private void Word(double x, double y, WordShape word)
    {
        var style = new Style(word.Size, word.Bold);
        var text = word.MaxWidth > 0 ? Letters.Cut(word.Text, style, word.MaxWidth) : Letters.Printable(word.Text);
        if (word.Backed)
        {
            const double Room = 1.5;
            var width = Letters.Width(text, style);
            var left = word.X - (word.Align == Align.Right ? width : word.Align == Align.Center ? width / 2 : 0);
            Box(x + left - Room, y + word.Y - (0.75 * word.Size) - Room, width + (2 * Room), (0.95 * word.Size) + (2 * Room), Tone.White, 0);
        }

        Text(x + word.X, y + word.Y, text, style, word.Align, word.White);
    }

    private void Path(double x, double y, PathShape path)
    {
        var spots = PathEnds.Shortened(path);
        using var line = new SKPath();
        line.MoveTo((float)(x + spots[0].X), (float)(y + spots[0].Y));
        foreach (var spot in spots.Skip(1))
        {
            line.LineTo((float)(x + spot.X), (float)(y + spot.Y));
        }

        stroke.StrokeWidth = (float)path.Width;
        stroke.StrokeCap = SKStrokeCap.Butt;
        stroke.StrokeJoin = SKStrokeJoin.Round;
        using var effect = Effect(path.Dash);
        stroke.PathEffect = effect;
        canvas.DrawPath(line, stroke);
        stroke.PathEffect = null;
        if (path.End == Cap.Flat)
        {
            var (a, b) = PathEnds.FlatBar(path);
            Line(x + a.X, y + a.Y, x + b.X, y + b.Y, Math.Max(1.2, path.Width));
        }
        else if (path.End == Cap.Arrow)
        {
            using var head = new SKPath();
            head.AddPoly([.. PathEnds.ArrowHead(path).Select(spot => new SKPoint((float)(x + spot.X), (float)(y + spot.Y)))]);
            fill.Color = SKColors.Black;
            canvas.DrawPath(head, fill);
        }
    }
}
