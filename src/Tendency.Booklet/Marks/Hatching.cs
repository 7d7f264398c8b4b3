namespace Tendency.Booklet.Marks;

/// <summary>45-degree lines inside a box, 3.2 apart, cut at its edges: drawn as lines, so no printer needs clipping or patterns.</summary>
internal static class Hatching
{
    public const double Weight = 0.35;
    private const double Pitch = 3.2;

    public static IEnumerable<(double X1, double Y1, double X2, double Y2)> Lines(double x, double y, double width, double height)
    {
        // Lines x' + y' = c, from c = Pitch to the far corner.
        for (var c = Pitch; c < width + height; c += Pitch)
        {
            var startX = Math.Min(c, width);
            var endX = Math.Max(0, c - height);
            yield return (x + startX, y + c - startX, x + endX, y + c - endX);
        }
    }
}
