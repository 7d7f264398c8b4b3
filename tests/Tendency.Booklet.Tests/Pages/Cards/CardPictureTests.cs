using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Booklet.Pages.Cards;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Booklet.Tests.Pages.Cards;

/// <summary>Laws of the drawn card, for every front against every scheme, to both sides of the back, from surfaces of all kinds.</summary>
public class CardPictureTests
{
    private const double FitWidth = 1.9;

    [ThreadStatic]
    private static Letters? s_letters;

    private static readonly Surface[] s_surfaces =
    [
        new() { AttachedPlay = 1 },
        new() { AttachedBack = 1, Strength = Flank.Back },
        new() { AttachedPlay = 1, AttachedBack = 1, WingPlay = 1, OffBall = 1 },
        new() { AttachedPlay = 2, WingBack = 1, AttachedBack = 1 },
        new() { IsEmpty = true },
    ];

    public static TheoryData<string> Schemes => [.. FrontBook.BuiltIn.Schemes.Select(scheme => scheme.Name)];

    public static TheoryData<Tag> AllTags => [Tag.Read, Tag.Bash, Tag.Rpo];

    [Theory]
    [MemberData(nameof(Schemes))]
    public void Of_AnyFrontSideAndSurface_DrawsTheLedgerInReadableWords(string scheme) => Each(scheme, Tag.None);

    [Theory]
    [MemberData(nameof(AllTags))]
    public void Of_TaggedRun_KeepsTheSameLaws(Tag tag)
    {
        foreach (var scheme in (string[])["inside zone", "power", "counter gt"])
        {
            Each(scheme, tag);
        }
    }

    private static void Each(string schemeName, Tag tag)
    {
        var scheme = FrontBook.BuiltIn.Scheme(schemeName)!;
        foreach (var front in FrontBook.BuiltIn.Fronts)
        {
            foreach (var (surface, i) in s_surfaces.Select((surface, i) => (surface, i)))
            {
                // Every surface to one side, the first to both: sides mirror the picture and turn the fronts set by the back.
                foreach (var side in i == 0 ? (RunTo?[])[RunTo.ToBack, RunTo.Away, null] : [i % 2 == 0 ? RunTo.ToBack : RunTo.Away])
                {
                    var ledger = GapLedger.Of(front, scheme, surface with { RunTo = side }, tag);
                    var look = new CardLook(side, i % 2 == 0 ? "gun" : "under") { WingToPlay = surface.OffBall > 0, SecondBack = i == 3 };
                    var (picture, stage) = (CardPicture.Of(ledger, look), new CardStage(ledger, look.PlayRight));
                    DrawsTheLedger(picture, stage);
                    BlockersArriveAtTheirGap(picture, stage, look);
                    IsReadable(picture);
                    ArrowsKeepClearOfLetters(picture, stage);
                }
            }
        }
    }

    private static void DrawsTheLedger(Diagram picture, CardStage stage)
    {
        var arrows = picture.Shapes.OfType<PathShape>().Where(path => path is { Width: FitWidth, End: Cap.Arrow }).ToList();
        Assert.Equal(stage.Ledger.Fits.Count(fit => !fit.IsUncovered), arrows.Count);
        foreach (var fit in stage.Ledger.Fits)
        {
            var ends = arrows.Where(arrow => IsIn(stage, fit, arrow.Spots[^1].X)).ToArray();
            Assert.Equal(fit.IsUncovered ? 0 : 1, ends.Length);
            Assert.All(ends, arrow => Assert.Equal(fit.IsLate ? Dash.Long : Dash.Solid, arrow.Dash));
        }

        // A merged gap shows its letters one by one.
        int Letters(Func<GapFit, bool> holds) => stage.Ledger.Fits.Where(holds).Sum(fit => fit.Place.To - fit.Place.From + 1);
        Assert.Equal(Letters(fit => fit.IsUncovered), picture.Shapes.OfType<WordShape>().Count(word => word.White));
        Assert.Equal(Letters(fit => fit.IsLate), picture.Shapes.OfType<BoxShape>().Count(box => box.Fill == Tone.Middle));
    }

    private static void BlockersArriveAtTheirGap(Diagram picture, CardStage stage, CardLook look)
    {
        var paths = new CardOffense(stage, look).Paths;
        Assert.Equal(stage.Ledger.Moves.Count, paths.Count);
        Assert.Equal(paths.Count, picture.Shapes.OfType<PathShape>().Count(path => path is { Dash: Dash.Dashed, End: Cap.Flat }));
        foreach (var path in paths)
        {
            var gap = stage.Fits(path.Move.To)[path.Move.Gap];
            var sign = CardStage.Sign(path.Move.To);
            var (inner, outer) = (stage.X(sign * stage.Corridor(path.Move.To, gap.Place.From, gap.Place.To, gap.Place.Parts).Low), stage.X(sign * (stage.Lane(gap).High + 5)));
            Assert.InRange(path.Spots[^1].X, Math.Min(inner, outer), Math.Max(inner, outer));
            Assert.True(path.Spots[^1].Y < CardStage.OffenseY - CardStage.Radius, "A blocker arrives beyond the line.");
            if (path.Move.Insert is null && path.Move.Who is "guard" or "tackle")
            {
                var from = stage.X(CardStage.Sign(path.Move.From) * stage.Man(path.Move.From, path.Move.Who == "guard" ? 1 : 2));
                Assert.Equal(from, path.Spots[0].X, 6);
            }
        }
    }

    private static void IsReadable(Diagram picture)
    {
        var letters = s_letters ??= new Letters();
        var words = picture.Shapes.OfType<WordShape>().Select(word => (word.Text, Box: BoxOf(word, letters))).ToArray();
        var all = picture.Shapes.SelectMany(Corners).Concat(words.SelectMany(word => new[] { new Spot(word.Box.Left, word.Box.Top), new Spot(word.Box.Right, word.Box.Bottom) }));
        Assert.All(all, spot => Assert.True(spot.X is >= -1 and <= CardStage.Width + 1 && spot.Y is >= -1 and <= CardStage.Height + 1, $"{picture.Description}: {spot}"));
        for (var i = 0; i < words.Length; i++)
        {
            for (var j = i + 1; j < words.Length; j++)
            {
                Assert.False(Overlap(words[i].Box, words[j].Box), $"{picture.Description}: {words[i].Text} / {words[j].Text}");
            }
        }
    }

    private static void ArrowsKeepClearOfLetters(Diagram picture, CardStage stage)
    {
        var men = PlacedMan.Of(stage, s_letters ??= new Letters());
        var arrows = picture.Shapes.OfType<PathShape>().Where(path => path is { Width: FitWidth, End: Cap.Arrow });
        foreach (var (man, arrow) in men.Where(man => man.Fit is not null).Zip(arrows))
        {
            Assert.All(
                arrow.Spots.Zip(arrow.Spots.Skip(1)),
                leg => Assert.DoesNotContain(men, other => other != man && Lines.Crosses(leg.First, leg.Second, other.Box)));
        }
    }

    private static bool IsIn(CardStage stage, GapFit fit, double x)
    {
        var (low, high) = stage.Lane(fit);
        var (a, b) = (stage.X(CardStage.Sign(fit.Flank) * low), stage.X(CardStage.Sign(fit.Flank) * high));
        return x > Math.Min(a, b) && x < Math.Max(a, b);
    }

    private static Area BoxOf(WordShape word, Letters letters)
    {
        var width = letters.Width(word.Text, new Style(word.Size, word.Bold));
        var left = word.X - (word.Align == Align.Right ? width : word.Align == Align.Center ? width / 2 : 0);
        return new Area(left, word.Y - (.72 * word.Size), left + width, word.Y);
    }

    private static bool Overlap(Area a, Area b) =>
        Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left) > .5 && Math.Min(a.Bottom, b.Bottom) - Math.Max(a.Top, b.Top) > .5;

    private static IEnumerable<Spot> Corners(Shape shape) => shape switch
    {
        PathShape path => path.Spots,
        CircleShape circle => [new(circle.X - circle.Radius, circle.Y - circle.Radius), new(circle.X + circle.Radius, circle.Y + circle.Radius)],
        BoxShape box => [new(box.X, box.Y), new(box.X + box.Width, box.Y + box.Height)],
        _ => [],
    };
}
