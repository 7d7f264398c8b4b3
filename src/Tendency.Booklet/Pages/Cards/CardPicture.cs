using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Pages.Wording;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Pages.Cards;

/// <summary>One front against one run, drawn: who stands where, who fits which gap, who is late, who pulls, where the ball goes.</summary>
internal static class CardPicture
{
    private const double FitWidth = 1.9;
    private const double TipY = CardStage.Scrimmage + 3;

    public static Diagram Of(GapLedger ledger, CardLook look)
    {
        var letters = new Letters();
        var stage = new CardStage(ledger, look.PlayRight);
        var offense = new CardOffense(stage, look);
        var men = PlacedMan.Of(stage, letters);
        var shapes = new List<Shape> { new PathShape([new Spot(0, CardStage.Scrimmage), new Spot(CardStage.Width, CardStage.Scrimmage)], 0.4, Dash.Fine) };
        shapes.AddRange(offense.Paths.Select(path => new PathShape(path.Spots, 1.2, Dash.Dashed, Cap.Flat)));
        shapes.AddRange(offense.Ball());
        shapes.AddRange(offense.Blocks());
        shapes.AddRange(offense.Men());
        shapes.AddRange(Arrows(stage, men));
        shapes.AddRange(men.SelectMany(man => man.Shapes()));
        shapes.AddRange(GapLetters(stage));
        shapes.AddRange(Labels(stage, offense, letters));
        shapes.AddRange(Feet(look));
        return new Diagram(CardStage.Width, CardStage.Height, shapes, Description(ledger));
    }

    /// <summary>Every fitter's way, in the order of <paramref name="men"/>; late men dashed.</summary>
    public static IEnumerable<PathShape> Arrows(CardStage stage, IReadOnlyList<PlacedMan> men)
    {
        var router = new ArrowRouter([.. men.Select(man => man.Box), .. men.SelectMany(man => man.RemarkBox)], TipY);
        foreach (var man in men.Where(man => man.Fit is not null))
        {
            var (low, high) = stage.Lane(man.Fit!);
            var (a, b) = (stage.X(CardStage.Sign(man.Fit!.Flank) * low), stage.X(CardStage.Sign(man.Fit.Flank) * high));
            yield return new PathShape(router.Route(man.Box, (Math.Min(a, b), Math.Max(a, b))), FitWidth, man.IsLate(stage.Ledger) ? Dash.Long : Dash.Solid, Cap.Arrow);
        }
    }

    /// <summary>The letter of every gap as it stands at the snap, once a part: white on black where nobody comes, on gray where the man is late.</summary>
    private static IEnumerable<Shape> GapLetters(CardStage stage)
    {
        foreach (var fit in stage.Ledger.Fits)
        {
            for (var gap = fit.Place.From; gap <= fit.Place.To; gap++)
            {
                var (text, size) = fit.Place.IsAdded ? (Short(fit.Gap), 8.5) : (((char)('A' + gap)).ToString(), 11);
                var single = fit.Place.To == fit.Place.From;
                var (low, high) = single ? stage.Lane(fit) : stage.Corridor(fit.Flank, gap, gap, 1);
                var x = stage.X(CardStage.Sign(fit.Flank) * (low + high) / 2);
                var width = fit.Place.IsAdded ? high - low : 13;
                if (fit.IsUncovered || fit.IsLate)
                {
                    yield return new BoxShape(x - (width / 2), CardStage.OffenseY - 6.5, width, 13, fit.IsUncovered ? Tone.Black : Tone.Middle, 0);
                }

                yield return new WordShape(x, CardStage.OffenseY + (size * .36), text, size, Bold: true) { White = fit.IsUncovered };
            }
        }
    }

    /// <summary>What an added gap is called where there is little room.</summary>
    private static string Short(string gap) => gap switch { "second runner" => "runner", "back's path" => "back", _ => gap };

    /// <summary>What each blocker on the move does, outside of where he arrives, the outermost on top so that no leader runs through words.</summary>
    private static IEnumerable<Shape> Labels(CardStage stage, CardOffense offense, Letters letters)
    {
        const double Size = 8.5, Row = 11, First = CardStage.OffenseY + 37, Aside = 42;
        foreach (var group in offense.Paths.GroupBy(path => path.Move.To))
        {
            var outward = (group.Key == Flank.Play) == stage.PlayRight ? 1 : -1;
            var paths = group.OrderByDescending(path => outward * Bend(path).X).ToArray();
            var widest = paths.Max(path => letters.Width(path.Words, new Style(Size)));
            var outermost = Bend(paths[0]).X + (outward * Aside);
            var x = outward > 0 ? Math.Min(outermost, CardStage.Width - 2 - widest) : Math.Max(outermost, 2 + widest);
            foreach (var (path, row) in paths.Select((path, row) => (path, row)))
            {
                var y = First + (row * Row);
                var bend = Bend(path);
                var beyond = outward * (bend.X - x) > -6;
                yield return new PathShape([beyond ? new Spot(bend.X, y - 8) : new Spot(x - (outward * 3), y - 3), bend], 0.4);
                yield return new WordShape(x, y, path.Words, Size, Align: outward > 0 ? Align.Left : Align.Right);
            }
        }

        static Spot Bend(BlockerPath path) => path.Spots[^3];
    }

    private static IEnumerable<Shape> Feet(CardLook look)
    {
        if (look.BackSide is null)
        {
            yield return new WordShape(CardStage.Width - 2, CardStage.FootY, "to the play", 8.5, Bold: true, Align.Right);
            yield break;
        }

        yield return new WordShape(2, CardStage.FootY, "the back's side", 8.5, Bold: true, Align.Left);
        yield return new WordShape(CardStage.Width - 2, CardStage.FootY, "away from the back", 8.5, Bold: true, Align.Right);
    }

    private static string Description(GapLedger ledger)
    {
        string Side(Flank flank) => string.Join(", ", ledger.Fits.Where(fit => fit.Flank == flank).Select(fit =>
            $"{fit.Gap} {(fit.IsUncovered ? "nobody" : CardLetters.Of(fit.Man!, ledger))}{(fit.IsLate ? " late" : "")}"));
        return $"{Words.Title(ledger.Front.Name)} against {Words.Plain(ledger.Scheme.Name)}; to the play: {Side(Flank.Play)}; backside: {Side(Flank.Back)}";
    }
}
