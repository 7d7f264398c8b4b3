using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>Where everything of a card's picture stands, in points; the hole is drawn wider by every blocker who stands in it. Not to scale.</summary>
/// <remarks>Places along the line are measured from the center, positive to the play, and turned into the picture by <see cref="X"/>.</remarks>
internal sealed class CardStage
{
    public const double Width = 516;
    public const double Height = 196;
    public const double Radius = 9.5;
    public const double DeepY = 12;
    public const double LinebackerY = 48;
    public const double OverhangY = 70;
    public const double LineY = 87;
    public const double Scrimmage = 107;
    public const double OffenseY = 123;
    public const double WingY = 143;
    public const double BackfieldY = 174;
    public const double FootY = Height - 3;

    private const double WidestGap = 48;
    private const double PartWidth = 18;
    private const double OpenWidth = 44;
    private const double AddedWidth = 48;
    private const double Room = Radius + 2;
    private const double Edge = 5;

    private readonly double gapWidth = WidestGap;
    private double[] play;
    private double[] back;
    private readonly double middle;
    private readonly int direction;

    public CardStage(GapLedger ledger, bool playRight)
    {
        Ledger = ledger;
        direction = playRight ? 1 : -1;
        (play, back) = (Men(Flank.Play), Men(Flank.Back));
        var over = Extent(Flank.Play) + Extent(Flank.Back) + (2 * Edge) - Width;
        if (over > 0)
        {
            // Two tight ends and a wing take more than the page has: every gap gives a little.
            gapWidth -= over / (play.Length + back.Length - 2);
            (play, back) = (Men(Flank.Play), Men(Flank.Back));
        }

        var (right, left) = playRight ? (Extent(Flank.Play), Extent(Flank.Back)) : (Extent(Flank.Back), Extent(Flank.Play));
        middle = Math.Clamp(Width / 2, left + Edge, Math.Max(left + Edge, Width - right - Edge));
    }

    public GapLedger Ledger { get; }

    /// <summary>Picture's x of a place along the line.</summary>
    public double X(double along) => middle + (direction * along);

    public bool PlayRight => direction > 0;

    /// <summary>1 to the play, −1 to the backside.</summary>
    public static int Sign(Flank flank) => flank == Flank.Play ? 1 : -1;

    /// <summary>Attached men of a side: guard, tackle, tight ends, wing.</summary>
    public int Attached(Flank flank) => Line(flank).Length - 1;

    /// <summary>Height of an attached man; a wing stands off the line.</summary>
    public double ManY(Flank flank, int man) => man > Attached(flank) - Ledger.Wings(flank) ? WingY : OffenseY;

    /// <summary>Place of the center (0), guard (1), tackle (2), tight end (3), as a distance.</summary>
    public double Man(Flank flank, int man) => Line(flank)[man];

    public double Outermost(Flank flank) => Line(flank)[^1];

    /// <summary>How far the gaps of a side reach, added ones included.</summary>
    public double Extent(Flank flank) => Fits(flank).Max(fit => Lane(fit).High) + 4;

    /// <summary>What a fitter has to fill, as distances from the center.</summary>
    public (double Low, double High) Lane(GapFit fit)
    {
        var place = fit.Place;
        if (place.IsAdded)
        {
            var before = Fits(fit.Flank).TakeWhile(other => other.Gap != fit.Gap).Count(other => other.Place.IsAdded);
            var from = Fits(fit.Flank).Where(other => !other.Place.IsAdded).Max(other => Lane(other).High) + 6 + (before * AddedWidth);
            return (from, from + AddedWidth - 6);
        }

        var (low, high) = Corridor(fit.Flank, place.From, place.To, place.Parts);
        var part = (high - low) / place.Parts;
        return (low + (place.Part * part), low + ((place.Part + 1) * part));
    }

    public double Center(GapFit fit) => (Lane(fit).Low + Lane(fit).High) / 2;

    /// <summary>Where a blocker on the move arrives, as a distance.</summary>
    public double Arrival(BlockerMove move)
    {
        var fit = Fits(move.To)[move.Gap];
        var splits = fit.Place.Part < fit.Place.Parts - 1;
        var alone = !splits && Ledger.Moves.Count(other => other.To == move.To && other.Gap == move.Gap) > 1;
        return Lane(fit).High - (splits ? 0 : alone && !move.KicksOut ? 9 : 3);
    }

    public IReadOnlyList<GapFit> Fits(Flank flank) => [.. Ledger.Fits.Where(fit => fit.Flank == flank)];

    /// <summary>Room between two linemen, or outside of the last.</summary>
    public (double Low, double High) Corridor(Flank flank, int from, int to, int parts)
    {
        var line = Line(flank);
        var low = line[from] + Room;
        return (low, to + 1 < line.Length ? line[to + 1] - Room : line[to] + Room + OpenWidth + (to == from ? PartWidth * (parts - 1) : 0));
    }

    private double[] Line(Flank flank) => flank == Flank.Play ? play : back;

    private double[] Men(Flank flank)
    {
        var places = new double[Ledger.Surface.BaseGaps(flank)];
        for (var man = 1; man < places.Length; man++)
        {
            var parts = Fits(flank).Where(fit => !fit.Place.IsAdded && fit.Place.From == man - 1 && fit.Place.To == man - 1).Select(fit => fit.Place.Parts).DefaultIfEmpty(1).First();
            places[man] = places[man - 1] + gapWidth + (PartWidth * (parts - 1));
        }

        return places;
    }
}
