using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Pictures;

/// <summary>Five linemen, two tight-end spots, gap letters between them, quarterback and back behind.</summary>
/// <param name="Middle">X of the center.</param>
/// <param name="Y">Y of the linemen's middles.</param>
/// <param name="Spacing">Points between linemen.</param>
/// <param name="Radius">Radius of a lineman.</param>
/// <param name="BackLeft">The back stands to the quarterback's left; else he is not drawn.</param>
internal sealed record LineOfScrimmage(double Middle, double Y, double Spacing, double Radius, bool BackLeft)
{
    private static readonly string[] s_letters = ["D", "C", "B", "A", "A", "B", "C", "D"];

    public double Bottom => Y + (Radius * 4) + 6;

    /// <summary>X of a gap, 0 (far left D) to 7 (far right D).</summary>
    public double GapAt(int gap) => Middle + ((gap - 3.5) * Spacing);

    public IEnumerable<Shape> Shapes(double letterSize)
    {
        for (var gap = 0; gap < 8; gap++)
        {
            yield return new WordShape(GapAt(gap), Y + (letterSize * .36), s_letters[gap], letterSize, Bold: true);
        }

        for (var man = -3; man <= 3; man++)
        {
            var x = Middle + (man * Spacing);
            if (man == 0)
            {
                yield return new BoxShape(x - Radius, Y - Radius, 2 * Radius, 2 * Radius, Tone.White, 1.2);
            }
            else
            {
                yield return new CircleShape(x, Y, Radius, Tone.White, Math.Abs(man) == 3 ? 0.5 : 1.2);
            }
        }

        if (letterSize > 8)
        {
            yield return new WordShape(Middle - (3 * Spacing), Y + 2.7, "TE", 7.5);
            yield return new WordShape(Middle + (3 * Spacing), Y + 2.7, "TE", 7.5);
        }

        var behind = Y + (Radius * 3) + 2;
        yield return new CircleShape(Middle, behind, Radius);
        if (BackLeft)
        {
            yield return new CircleShape(Middle - (Spacing * .9), behind, Radius, Tone.Dark);
            if (letterSize > 8)
            {
                yield return new WordShape(Middle - (Spacing * .9) - Radius - 4, behind + 3, "back", 8.5, Align: Align.Right);
            }
        }

        if (letterSize > 8)
        {
            yield return new WordShape(Middle + Radius + 4, behind + 3, "QB", 8.5, Align: Align.Left);
        }
    }
}
