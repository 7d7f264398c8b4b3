using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Breakdown.Tests.Fronts;

/// <summary>Break-even shares where everything is known, and how sure they are where it is not.</summary>
public class FrontBreakEvenTests
{
    private const double Expected = 0.45;

    private static readonly FrontBook Book = FrontBook.BuiltIn;
    private static readonly FrontOptions Options = new() { CardDraws = 400 };

    private static readonly (string Scheme, RunTo Side, int Share)[] Mix =
    [
        ("inside zone", RunTo.Away, 30), ("outside zone", RunTo.ToBack, 11), ("zone read", RunTo.Away, 9), ("power", RunTo.ToBack, 17),
        ("counter gt", RunTo.Away, 13), ("trap", RunTo.Away, 7), ("duo", RunTo.ToBack, 8), ("jet sweep", RunTo.Away, 5),
    ];

    /// <summary>With the mix and the ratings known, every pair of the thirteen fronts turns where the ratings' own arithmetic says.</summary>
    [Fact]
    public void Of_KnownMixAndRatings_IsTheRatingsArithmetic()
    {
        var rows = Rows(1);
        Assert.Equal(78 * RunFamily.All.Count, rows.Count);
        foreach (var row in rows)
        {
            var family = RunFamily.All.Single(f => f.Name == row.Family);
            double Lead(bool inside) => Weighted(inside, family, c => Book.RatingOf(row.FrontA, c.Scheme, c.Side) - Book.RatingOf(row.FrontB, c.Scheme, c.Side));
            var (with, without) = (Lead(true), Lead(false));
            if (Math.Round(with * without, 9) < 0)
            {
                Assert.Equal(without / (without - with), row.BreakEvenShare!.Value, 1e-9);
                Assert.Equal(with > 0 ? (row.FrontB, row.FrontA) : (row.FrontA, row.FrontB), (row.BetterBelow, row.BetterAbove));
                Assert.Equal(row.BreakEvenShare.Value, row.ByRatings!.Value, 1e-9);
            }
            else
            {
                Assert.Null(row.BreakEvenShare);
                Assert.Equal(row.BetterBelow, row.BetterAbove);
            }
        }
    }

    /// <summary>Ten times the runs in the same proportions: the same share, a narrower range around it.</summary>
    [Fact]
    public void Of_MoreRuns_NarrowTheRangeAroundTheSameShare()
    {
        var few = Pair(Rows(1));
        var many = Pair(Rows(10));
        Assert.Equal(few.BreakEvenShare!.Value, many.BreakEvenShare!.Value, 1e-9);
        Assert.True(few.IfRatesHold.Range!.Value.Contains(few.BreakEvenShare.Value));
        Assert.True(many.IfRatesHold.Range!.Value.Width < few.IfRatesHold.Range.Value.Width / 2);
    }

    /// <summary>What a front allows is less known than the mix: ratings worth eight plays let the turn go missing in some draws.</summary>
    [Fact]
    public void Of_RatingsWorthEightPlays_AreTheLargerPartOfTheDoubt()
    {
        var pair = Pair(Rows(10));
        Assert.True(pair.InAll.Range!.Value.Width > pair.IfRatesHold.Range!.Value.Width);
        Assert.InRange(pair.InAll.Chance, 0.2, 0.98);
        Assert.Equal(1, pair.IfRatesHold.Chance);
    }

    private static FrontBreakEven Pair(IReadOnlyList<FrontBreakEven> rows) =>
        rows.Single(r => r is { Family: "gap", FrontA: "tight", FrontB: "double five" });

    private static double Weighted(bool inside, RunFamily family, Func<(string Scheme, RunTo Side, int Share), double> value)
    {
        var part = Mix.Where(c => family.Holds(Book.Scheme(c.Scheme)!) == inside).ToArray();
        return part.Length == 0 ? 0 : part.Sum(c => c.Share * value(c)) / part.Sum(c => c.Share);
    }

    private static IReadOnlyList<FrontBreakEven> Rows(int times)
    {
        ChartedRun[] film =
        [
            .. Mix.SelectMany(c => Enumerable.Repeat(
                new ChartedRun(0, Book.Scheme(c.Scheme)!, c.Side, "", null, null, null, Tag.None, true), c.Share * times)),
        ];
        var matrix = FrontMatrix.Of(Book.Fronts, RunMix.Of(film, film, Options.MixPriorPlays), film, Expected, Book, Options);
        return FrontBreakEven.Of(matrix, Book, Expected, Options);
    }
}
