using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>A blocker's way: where he starts, and the spots he passes; the last is where he arrives.</summary>
internal sealed record BlockerPath(BlockerMove Move, IReadOnlyList<Spot> Spots)
{
    /// <summary>"guard kicks out".</summary>
    public string Words => $"{Move.Who} {Move.Job}";
}

/// <summary>The offense of a card: who stands where, who moves to block, which way the ball goes.</summary>
internal sealed class CardOffense
{
    private const double R = CardStage.Radius;
    private const double HighLane = CardStage.OffenseY + 17;
    private const double LaneStep = 6;
    private const double FootRoom = 104; // the words in the lower corners
    private readonly CardStage stage;
    private readonly CardLook look;
    private readonly Spot passer;
    private readonly Spot? deep;

    public CardOffense(CardStage stage, CardLook look)
    {
        (this.stage, this.look) = (stage, look);
        passer = At(0, IsUnder ? OffenseBehind(2 * R) : CardStage.BackfieldY - 2);
        deep = stage.Ledger.Surface.IsEmpty ? null : Deep();
        Paths = [.. stage.Ledger.Moves.Select(PathOf)];
    }

    public IReadOnlyList<BlockerPath> Paths { get; }

    private GapLedger Ledger => stage.Ledger;

    private RunScheme Scheme => Ledger.Scheme;

    /// <summary>The quarterback close to the center: under him, or with the back behind, who needs the room.</summary>
    private bool IsUnder => look.Set == "under" || look.BackSide is null;

    /// <summary>The back carries unless the scheme, or a bash, gives the ball to another.</summary>
    private Carrier Carrier => Ledger.Tag == Tag.Bash ? Carrier.Quarterback : Scheme.Carrier;

    public IEnumerable<Shape> Men()
    {
        yield return new BoxShape(stage.X(0) - R, CardStage.OffenseY - R, 2 * R, 2 * R, Tone.White, 1.2);
        foreach (var flank in (Flank[])[Flank.Back, Flank.Play])
        {
            for (var man = 1; man <= stage.Attached(flank); man++)
            {
                yield return Circle(At(CardStage.Sign(flank) * stage.Man(flank, man), stage.ManY(flank, man)));
            }
        }

        foreach (var off in OffBall())
        {
            yield return Circle(off);
        }

        yield return Circle(passer);
        if (!IsUnder)
        {
            yield return Named(passer, "QB");
        }

        if (deep is { } back)
        {
            yield return new CircleShape(back.X, back.Y, R, Tone.Dark);
            yield return Named(back, "back");
        }

        if (Carrier == Carrier.MotionMan)
        {
            yield return Circle(Motion());
            yield return Named(Motion(), "motion");
        }
    }

    /// <summary>The ball dotted, and where a second runner may take it.</summary>
    public IEnumerable<Shape> Ball()
    {
        var start = Carrier switch { Carrier.Quarterback => passer, Carrier.MotionMan => Motion(), _ => deep ?? passer };
        yield return new PathShape(BallWay(start, Aim()), 1.3, Dash.Dotted, Cap.Arrow);
        foreach (var added in Ledger.Fits.Where(fit => fit.Place.IsAdded))
        {
            var from = added.Gap is "pitch" or "second runner" or "back's path" ? deep ?? passer : passer;
            yield return new PathShape(BallWay(from, added), 1.3, Dash.Dotted, Cap.Arrow);
        }
    }

    /// <summary>First steps of the linemen who stay: short, flat at the end.</summary>
    public IEnumerable<Shape> Blocks()
    {
        const double Reach = 10;
        var leaving = Ledger.Moves.Where(move => move.Insert is null).Select(move => (move.From, move.Who)).ToHashSet();
        foreach (var flank in (Flank[])[Flank.Back, Flank.Play])
        {
            for (var man = flank == Flank.Play ? 0 : 1; man <= stage.Attached(flank); man++)
            {
                var who = man switch { 0 => "center", 1 => "guard", 2 => "tackle", _ => "end" };
                var side = Scheme.Line switch
                {
                    LineBlocks.Step => 1,
                    LineBlocks.Down when flank == Flank.Play => -1,
                    _ => 0,
                };
                var leaves = leaving.Contains((who == "center" ? Flank.Back : flank, who));
                if (leaves || (Scheme.Line == LineBlocks.Straight && Scheme.Aim.Length == 0))
                {
                    continue;
                }

                var at = At(CardStage.Sign(flank) * stage.Man(flank, man), stage.ManY(flank, man) - R);
                yield return new PathShape([at, new Spot(at.X + (side * (stage.PlayRight ? 1 : -1) * Reach * .8), at.Y - Reach + (side == 0 ? 3 : 2))], 1, End: Cap.Flat);
            }
        }
    }

    /// <summary>The gap the scheme aims at: inside of a kick-out, outside of men who wrap or lead.</summary>
    public GapFit Aim()
    {
        var fits = stage.Fits(Flank.Play);
        var hole = fits.Where(fit => fit.Place.Parts > 1).ToArray();
        if (hole.Length > 0)
        {
            var first = fits.ToList().IndexOf(hole[0]);
            var kick = Ledger.Moves.FirstOrDefault(move => move.To == Flank.Play && move.KicksOut && move.Gap < first + hole.Length - 1);
            return kick is null ? hole[^1] : fits[kick.Gap];
        }

        var between = fits.Where(fit => !fit.Place.IsAdded).ToArray();
        var aim = Scheme.Aim switch { "A" => 0, "B" => 1, "C" => 2, _ => int.MaxValue };
        return between.FirstOrDefault(fit => fit.Place.From <= aim && aim <= fit.Place.To) ?? between[^1];
    }

    private static double OffenseBehind(double points) => CardStage.OffenseY + points + 2;

    private static WordShape Named(Spot at, string name) => new(at.X, at.Y + R + 8.5, name, 8);

    private static CircleShape Circle(Spot at) => new(at.X, at.Y, R);

    private Spot At(double along, double y) => new(stage.X(along), y);

    private Spot Deep()
    {
        var side = look.BackSide switch { RunTo.ToBack => 1, RunTo.Away => -1, _ => 0 };
        return At(side * 42, CardStage.BackfieldY + (IsUnder ? 2 : 0));
    }

    private Spot Motion() => new(Math.Clamp(stage.X(-stage.Outermost(Flank.Back) - 40), FootRoom, CardStage.Width - FootRoom), CardStage.BackfieldY - 2);

    private Spot WingSpot(Flank flank) => At(CardStage.Sign(flank) * (stage.Outermost(flank) + 20), CardStage.WingY);

    private Spot LeadSpot() => At((look.BackSide == RunTo.ToBack ? -1 : 1) * 42, CardStage.BackfieldY);

    /// <summary>Where an insert starts: a wing who is not there is the second back when they have one.</summary>
    private Spot Start(BlockerMove move) => move.Insert switch
    {
        InsertStart.Back => deep ?? passer,
        InsertStart.Backfield => LeadSpot(),
        InsertStart.Wing when !look.WingToPlay && look.SecondBack => LeadSpot(),
        _ => WingSpot(move.From),
    };

    private IEnumerable<Spot> OffBall()
    {
        var spots = Ledger.Moves.Where(move => move.Insert is not null and not InsertStart.Back).Select(Start).ToList();
        if (look.WingToPlay && Ledger.Wings(Flank.Play) == 0)
        {
            spots.Add(WingSpot(Flank.Play));
        }

        if (look.WingToBackside && Ledger.Wings(Flank.Back) == 0)
        {
            spots.Add(WingSpot(Flank.Back));
        }

        return spots.Distinct();
    }

    private BlockerPath PathOf(BlockerMove move, int order)
    {
        var sign = CardStage.Sign(move.To);
        var arrival = sign * stage.Arrival(move);
        var lane = (IsUnder ? passer.Y + R + 4 : HighLane) + (LaneStep * order);
        var end = move.KicksOut ? CardStage.Scrimmage + 2 : CardStage.Scrimmage - 4;
        Spot[] arrive = move.KicksOut
            ? [At(arrival, CardStage.OffenseY + 4), At(arrival + (sign * 4), end)]
            : [At(arrival, CardStage.OffenseY + 4), At(arrival, end)];
        if (move.Insert is null)
        {
            var man = move.Who switch { "guard" => 1, "tackle" => 2, _ => 0 };
            var from = man == 0 ? 0 : CardStage.Sign(move.From) * stage.Man(move.From, man);
            return new BlockerPath(move, [At(from, CardStage.OffenseY + R), At(from, lane), At(arrival, lane), .. arrive]);
        }

        var start = Start(move);
        if (move.Insert == InsertStart.FarWing || (IsUnder && move.From != move.To))
        {
            // He runs behind the pullers: below their lanes, off his own spot.
            var low = Math.Max(lane, start.Y + R + 1);
            return new BlockerPath(move, [TowardX(start, stage.X(arrival), low + 60), At(arrival, low), .. arrive]);
        }

        return new BlockerPath(move, [TowardX(start, stage.X(arrival), lane), At(arrival, Math.Min(lane + 6, start.Y)), .. arrive]);
    }

    /// <summary>Where a path leaves a circle on its way to an x at a height.</summary>
    private static Spot TowardX(Spot from, double x, double y)
    {
        var (dx, dy) = (x - from.X, y - from.Y);
        var length = Math.Max(1, Math.Sqrt((dx * dx) + (dy * dy)));
        return new Spot(from.X + (dx / length * R), from.Y + (dy / length * R));
    }

    private List<Spot> BallWay(Spot start, GapFit to)
    {
        const double Tip = CardStage.OffenseY + R + 1;
        var at = At(CardStage.Sign(to.Flank) * stage.Center(to), Tip);
        var before = new Spot(at.X, Tip + 14);
        var spots = new List<Spot>();
        foreach (var other in new[] { passer, deep ?? passer }.Distinct().Where(other => other != start).OrderBy(other => Math.Abs(other.X - start.X)))
        {
            // Past a man who stands in the way the path runs before him, as the hand-off does.
            if ((other.X - start.X) * (other.X - before.X) < 0 && Lines.Crosses(start, before, new Area(other.X - R, other.Y - R, other.X + R, other.Y + R)))
            {
                spots.Add(new Spot(other.X, other.Y - R - 3));
            }
        }

        var next = spots.Count > 0 ? spots[0] : before;
        return [TowardX(start, next.X, next.Y), .. spots, before, at];
    }
}
