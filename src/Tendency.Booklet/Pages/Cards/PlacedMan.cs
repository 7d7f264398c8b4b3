using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>A box that words take, in picture points; y runs down.</summary>
internal readonly record struct Area(double Left, double Top, double Right, double Bottom)
{
    public Area Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}

/// <summary>One of our men in the picture.</summary>
/// <param name="Fit">The gap he has; null for a free man or one held by a throw.</param>
/// <param name="At">Middle of his letter, on the baseline.</param>
/// <param name="Box">What letter and number take.</param>
internal sealed record PlacedMan(Defender Man, GapFit? Fit, string Letter, string Technique, Spot At, Area Box)
{
    private const double LetterSize = 15;
    private const double NumberSize = 7.5;
    private const double LeastApart = 23;

    private const double RemarkSize = 7.5;

    /// <summary>A word under the letter of a man without a gap, or over the man they read; empty for all others.</summary>
    public string Remark { get; private init; } = "";

    /// <summary>What the remark takes; none without one.</summary>
    public IEnumerable<Area> RemarkBox { get; private init; } = [];

    public bool IsLate(GapLedger ledger) => ledger.Late.Contains(Man);

    /// <summary>Letter, number beside it.</summary>
    public IEnumerable<Shape> Shapes()
    {
        yield return new WordShape(At.X, At.Y, Letter, LetterSize, Bold: true);
        if (Technique.Length > 0)
        {
            yield return new WordShape(Box.Right, At.Y, Technique, NumberSize, Align: Align.Right);
        }

        foreach (var box in RemarkBox)
        {
            yield return new WordShape((box.Left + box.Right) / 2, box.Bottom - 1, Remark, RemarkSize);
        }
    }

    /// <summary>All men of a ledger, those of the line first, from the center out.</summary>
    public static IReadOnlyList<PlacedMan> Of(CardStage stage, Letters letters)
    {
        var ledger = stage.Ledger;
        var men = ledger.Fits.Where(fit => fit.Man is not null).Select(fit => (Man: fit.Man!, Fit: (GapFit?)fit))
            .Concat(ledger.Free.Select(man => (Man: man, Fit: (GapFit?)null)))
            .Concat(ledger.Held is { } held ? [(Man: held, Fit: (GapFit?)null)] : [])
            .ToList();
        var placed = new List<PlacedMan>();
        foreach (var group in men.GroupBy(man => (man.Man.Role, man.Man.Stand)))
        {
            var along = Apart(group.Select(man => (man.Man, man.Fit, Along: Along(stage, man.Man))).OrderBy(man => Math.Abs(man.Along)).ToList());
            placed.AddRange(along.Select(man => Place(stage, letters, man.Man, man.Fit, man.Along)));
        }

        return [.. placed.OrderBy(man => man.Man.Role).ThenBy(man => man.Man.Role == Role.Linebacker ? 0 : Math.Abs(man.At.X - stage.X(0))).ThenBy(man => man.At.X)];
    }

    private static PlacedMan Place(CardStage stage, Letters letters, Defender man, GapFit? fit, double along)
    {
        const double Gap = 1;
        var letter = CardLetters.Of(man, stage.Ledger);
        var number = CardLetters.Technique(man);
        var half = letters.Width(letter, new Style(LetterSize, Bold: true)) / 2;
        var (x, y) = (Inside(stage.X(along), half + 6), Y(man));
        var beside = number.Length == 0 ? 0 : Gap + letters.Width(number, new Style(NumberSize));
        var remark = RemarkOf(man, fit, stage.Ledger);
        var wide = letters.Width(remark, new Style(RemarkSize)) / 2;
        var under = fit is null && man.Role != Role.Overhang ? y + 10 : y - 12;
        var below = Inside(x, wide + 1);
        return new PlacedMan(man, fit, letter, number, new Spot(x, y), new Area(x - half, y - 11, x + half + beside, y + 1))
        {
            Remark = remark,
            RemarkBox = remark.Length == 0 ? [] : [new Area(below - wide, under - 7, below + wide, under)],
        };
    }

    private static double Inside(double x, double half) => Math.Clamp(x, half, CardStage.Width - half);

    private static string RemarkOf(Defender man, GapFit? fit, GapLedger ledger) =>
        fit is not null ? (man == CardRead.Man(ledger) ? "read" : "")
        : man == ledger.Held ? "held by the throw"
        : ledger.Late.Contains(man) ? "free, late" : "free";

    private static double Y(Defender man) => man.Role switch
    {
        Role.Line => CardStage.LineY,
        Role.Overhang => CardStage.OverhangY,
        Role.Linebacker => CardStage.LinebackerY,
        _ when man.Name == "strong safety" => CardStage.DeepY + 18,
        _ => CardStage.DeepY,
    };

    /// <summary>Place along the line, positive to the play.</summary>
    private static double Along(CardStage stage, Defender man)
    {
        if (man.Stand == Stand.Middle)
        {
            return 0;
        }

        var flank = man.Stand == Stand.Play ? Flank.Play : Flank.Back;
        return CardStage.Sign(flank) * man.Role switch
        {
            Role.Line => OnLine(stage, flank, man.Technique),
            Role.Linebacker => stage.Ledger.Front.Linebackers > 2 ? 62 : 42,
            Role.Overhang => Math.Max(stage.Outermost(flank) + 46, LineEnd(stage, flank) + LeastApart),
            _ => man.Name switch { "safety" => 92, "strong safety" => 176, _ => 150 },
        };
    }

    /// <summary>How far out the front's last man on the line stands.</summary>
    private static double LineEnd(CardStage stage, Flank flank)
    {
        var line = stage.Ledger.SetTo == flank ? stage.Ledger.Front.LineTo : stage.Ledger.Front.LineOff;
        return line.Count == 0 ? 0 : OnLine(stage, flank, line[^1]);
    }

    /// <summary>Distance from the center of a technique; where there is no tight end, his techniques stand on air outside the tackle.</summary>
    private static double OnLine(CardStage stage, Flank flank, string technique)
    {
        const double Shade = 15;
        var (guard, tackle) = (stage.Man(flank, 1), stage.Man(flank, 2));
        var hasEnd = stage.Attached(flank) > 2;
        var end = hasEnd ? stage.Man(flank, 3) : tackle;
        var last = stage.Outermost(flank);
        return technique switch
        {
            "1" => 0.34 * guard,
            "2i" => guard - Shade,
            "2" => guard,
            "3" => guard + Shade,
            "4i" => tackle - Shade,
            "4" => tackle,
            "5" => tackle + Shade,
            "7" => hasEnd ? end - Shade : tackle + 20,
            "6" => hasEnd ? end : tackle + 24,
            "9" => hasEnd ? end + Shade : tackle + 38,
            _ => last + 32,
        };
    }

    private static List<(Defender Man, GapFit? Fit, double Along)> Apart(List<(Defender Man, GapFit? Fit, double Along)> men)
    {
        for (var i = 1; i < men.Count; i++)
        {
            var (inner, outer) = (Math.Abs(men[i - 1].Along), Math.Abs(men[i].Along));
            if (outer - inner < LeastApart)
            {
                men[i] = (men[i].Man, men[i].Fit, Math.CopySign(inner + LeastApart, men[i].Along));
            }
        }

        return men;
    }
}
