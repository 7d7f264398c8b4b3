using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Pictures;

/// <summary>How a formation family lines up, strength to the right, with the spots where the back was seen in gray. Schematic: not to scale.</summary>
internal static class FormationPicture
{
    private const double Width = 164;
    private const double Line = 9;
    private const double OffLine = 16.5;
    private const double Spacing = 9.4;
    private const double Radius = 3.2;

    // Receivers and tight ends: points from the center and whether on the line. Families as the glossary names them (common practice).
    private static readonly Dictionary<string, (double X, bool OnLine)[]> s_receivers = new(StringComparer.Ordinal)
    {
        ["doubles 2x2"] = [(-74, true), (-48, false), (48, false), (74, true)],
        ["trips 3x1"] = [(-74, true), (40, false), (57, false), (74, true)],
        ["quads 4x1"] = [(32, false), (46, false), (60, false), (74, true)],
        ["empty 3x2"] = [(-74, true), (-48, false), (40, false), (57, false), (74, true)],
        ["empty 4x1"] = [(-74, true), (32, false), (46, false), (60, false), (74, true)],
        ["bunch"] = [(-74, true), (43, false), (50, true), (57, false)],
        ["stack set"] = [(-62, true), (-62, false), (62, true), (62, false)],
        ["twins 2x1"] = [(-28, true), (50, false), (74, true)],
        ["pro 2x1"] = [(-74, true), (28, true), (62, false)],
        ["tight wing"] = [(-74, true), (28, true), (37, false), (68, false)],
        ["nub trips"] = [(-28, true), (40, false), (57, false), (74, true)],
        ["trips tight end"] = [(-74, true), (28, true), (52, false), (72, false)],
        ["two tight 2x2"] = [(-28, true), (28, true), (-62, false), (62, false)],
        ["two tight same side"] = [(-74, true), (28, true), (37, true), (66, false)],
        ["three tight"] = [(-28, true), (28, true), (37, false), (-74, false)],
        ["i backs"] = [(-74, true), (28, true), (62, false)],
        ["offset i"] = [(-74, true), (28, true), (62, false)],
        ["split backs"] = [(-74, true), (28, true), (62, false)],
        ["two back gun"] = [(-74, true), (48, false), (74, true)],
        ["full house"] = [(-28, true), (28, true)],
        ["condensed"] = [(-40, true), (-30, false), (30, false), (40, true)],
    };

    private static readonly Dictionary<string, (double X, double Y)[]> s_leadBacks = new(StringComparer.Ordinal)
    {
        ["i backs"] = [(0, 28)],
        ["offset i"] = [(10, 27)],
        ["full house"] = [(-10, 32), (10, 32)],
    };

    /// <summary>Receivers and tight ends of a family, strength to the right, in points from the center; null when the family has no picture.</summary>
    internal static IReadOnlyList<(double X, bool OnLine)>? Receivers(string family) => s_receivers.GetValueOrDefault(family);

    /// <summary>Backs in front of the deep one, in points from the center and down from the picture's top.</summary>
    internal static IReadOnlyList<(double X, double Y)> LeadBacks(string family) => s_leadBacks.GetValueOrDefault(family, []);

    /// <summary>Height a picture of the family needs, in points.</summary>
    public static double HeightOf(string family) => s_leadBacks.ContainsKey(family) ? 40 : 35;

    /// <param name="family">Glossary family of the formation.</param>
    /// <param name="spots">Back's sides seen: weak, middle, strong.</param>
    /// <param name="height">Of all pictures beside one another, so that what stands under them stands level.</param>
    /// <returns>Null when the family has no picture.</returns>
    public static Diagram? Of(string family, IReadOnlyCollection<string> spots, double height)
    {
        if (!s_receivers.TryGetValue(family, out var receivers))
        {
            return null;
        }

        const double Middle = Width / 2;
        var shapes = new List<Shape>();
        for (var man = -2; man <= 2; man++)
        {
            shapes.Add(man == 0
                ? new BoxShape(Middle - Radius, Line - Radius, 2 * Radius, 2 * Radius, Tone.White, 1)
                : new CircleShape(Middle + (man * Spacing), Line, Radius, Tone.White, 1));
        }

        shapes.AddRange(receivers.Select(man => new CircleShape(Middle + man.X, man.OnLine ? Line : OffLine, Radius, Tone.White, 1)));
        shapes.Add(new CircleShape(Middle, 21, Radius, Tone.White, 1));
        shapes.AddRange(s_leadBacks.GetValueOrDefault(family, []).Select(man => new CircleShape(Middle + man.X, man.Y, Radius, Tone.White, 1)));
        foreach (var (spot, x, y) in new[] { ("weak", -10.0, 23.0), ("middle", 0, s_leadBacks.ContainsKey(family) ? 36 : 31), ("strong", 10, 23) })
        {
            if (spots.Contains(spot))
            {
                shapes.Add(new CircleShape(Middle + x, y, Radius, Tone.Dark, 1));
            }
        }

        return new Diagram(Width, height, shapes, $"{family}, back seen {(spots.Count == 0 ? "nowhere" : string.Join(", ", spots))}");
    }
}
