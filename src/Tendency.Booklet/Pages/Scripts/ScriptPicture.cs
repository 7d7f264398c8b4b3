using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Pictures;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Scripts;

/// <summary>How one snap lines up, seen from behind the offense: the family's spots, strength, back and tight end on their charted sides, the ball's way dotted. Schematic: not to scale.</summary>
internal static class ScriptPicture
{
    private const double Width = 252;
    private const double Middle = Width / 2;
    private const double Wider = 1.5;
    private const double Line = 26;
    private const double OffLine = 37;
    private const double Passer = 45;
    private const double Spacing = 14;
    private const double Radius = 4.6;
    private const double TightEnd = 28; // in the family pictures' points
    private const double SecondTightEnd = 37;

    /// <returns>Null when the formation's family has no picture.</returns>
    public static Diagram? Of(PlayLog plays, int row)
    {
        string Word(string name) => plays.Category(name)[row];
        var family = Word(ColumnNames.FormationFamily);
        if (FormationPicture.Receivers(family) is not { } receivers)
        {
            return null;
        }

        var mirrored = Word(ColumnNames.Strength) == "L" ? -1 : 1;
        var men = Attach([.. receivers.Select(man => (X: man.X * mirrored, man.OnLine))], Word(ColumnNames.Attached), Word(ColumnNames.Wing));
        var shapes = new List<Shape>();
        var back = BackSpot(Word(ColumnNames.BackAt), Word(ColumnNames.BackSet));
        if (Word(ColumnNames.Call) == "run" && Hole(Word(ColumnNames.RunSide), Word(ColumnNames.Gap)) is { } hole)
        {
            var from = back ?? new Spot(Middle, Passer);
            shapes.Add(new PathShape([new Spot(from.X, from.Y), new Spot(hole, Line + 6), new Spot(hole, 5)], 1.3, Dash.Dotted, Cap.Arrow));
        }

        shapes.AddRange(Enumerable.Range(-2, 5).Select(man => man == 0
            ? (Shape)new BoxShape(Middle - Radius, Line - Radius, 2 * Radius, 2 * Radius, Tone.White, 1.2)
            : new CircleShape(Middle + (man * Spacing), Line, Radius)));
        shapes.AddRange(men.Select(man => new CircleShape(Middle + (man.X * Wider), man.OnLine ? Line : OffLine, Radius)));
        shapes.Add(new CircleShape(Middle, Passer, Radius));
        shapes.AddRange(FormationPicture.LeadBacks(family).Select(man => new CircleShape(Middle + (man.X * mirrored * Wider), Passer + 10, Radius)));
        if (back is { } spot)
        {
            shapes.Add(new CircleShape(spot.X, spot.Y, Radius, Tone.Dark));
        }

        return new Diagram(Width, 68, shapes, $"{family}{(back is null ? "" : $", back {Side(Word(ColumnNames.BackAt))}")}, strength {Side(Word(ColumnNames.Strength))}");
    }

    /// <summary>The innermost receiver of a side goes to the tight end's spot, or the wing's, where the chart puts one there and the family does not.</summary>
    private static (double X, bool OnLine)[] Attach((double X, bool OnLine)[] men, string attached, string wing)
    {
        foreach (var (charted, onLine) in new[] { (attached, true), (wing, false) })
        {
            foreach (var side in (int[])[-1, 1])
            {
                var there = charted == "both" || charted == (side < 0 ? "L" : "R");
                if (!there || men.Any(man => man.X * side is > 0 and <= SecondTightEnd && man.OnLine == onLine))
                {
                    continue;
                }

                var inner = Enumerable.Range(0, men.Length).Where(i => men[i].X * side > SecondTightEnd).OrderBy(i => men[i].X * side).FirstOrDefault(-1);
                if (inner >= 0)
                {
                    var taken = men.Any(man => man.X * side is > 0 and <= TightEnd);
                    men[inner] = ((taken ? SecondTightEnd : TightEnd) * side, onLine);
                }
            }
        }

        return men;
    }

    private static Spot? BackSpot(string at, string set) => at switch
    {
        "L" => new Spot(Middle - 16, Passer + 3),
        "R" => new Spot(Middle + 16, Passer + 3),
        "middle" => new Spot(Middle, Passer + (set == "under" ? 17 : 14)),
        _ => null,
    };

    /// <summary>Where the ball crosses the line: the charted gap of the charted side; without a gap, off tackle.</summary>
    private static double? Hole(string side, string gap)
    {
        var gaps = gap switch { "A" => 0.5, "B" => 1.5, "C" => 2.5, "D" => 3.7, _ => 2.5 };
        return side switch { "L" => Middle - (gaps * Spacing), "R" => Middle + (gaps * Spacing), _ => null };
    }

    private static string Side(string side) => side switch { "L" => "left", "R" => "right", "middle" => "behind", _ => "not charted" };
}
