using Tendency.Breakdown.Fronts;

namespace Tendency.Breakdown.Tests.Fronts;

public class FrontBookTests
{
    private static readonly FrontBook Book = FrontBook.BuiltIn;

    [Fact]
    public void BuiltIn_IsComplete()
    {
        Assert.Equal(13, Book.Fronts.Count);
        Assert.Equal(44, Book.Schemes.Count);
        var rated = Book.Schemes.Where(s => s.Name != RunScheme.Unknown).ToArray();
        foreach (var front in Book.Fronts)
        {
            foreach (var scheme in rated)
            {
                Assert.True(Book.TryRating(front.Name, scheme.Name, RunTo.ToBack, out var to), $"{front.Name} {scheme.Name} to back");
                Assert.True(Book.TryRating(front.Name, scheme.Name, RunTo.Away, out var away), $"{front.Name} {scheme.Name} away");
                Assert.All([to!, away!], r => Assert.True(r.Reason.Length > 3 && r.Confidence is "high" or "medium" or "low"));
            }
        }

        Assert.False(Book.IsRated(RunScheme.Unknown));
    }

    /// <summary>What coaches hold for settled: facts of the trade, not of this file.</summary>
    [Theory]
    [InlineData("tight", "inside zone", "away", 2)]
    [InlineData("double five", "inside zone", "away", -1)]
    [InlineData("double five", "power", "to back", 1)]
    [InlineData("wide nine", "power", "away", -2)]
    [InlineData("bear", "inside zone", "to back", 2)]
    [InlineData("bear", "toss sweep", "to back", -1)]
    [InlineData("even 2i", "sneak", "away", 2)]
    [InlineData("double five", "sneak", "away", -1)]
    [InlineData("tight", "insert zone", "away", 1)]
    [InlineData("double five", "power read", "to back", 1)]
    [InlineData("under", "power read", "away", 0.5)]
    [InlineData("wide nine", "qb counter", "away", -2)]
    [InlineData("tight", "arc read", "away", -1)]
    public void RatingOf_KnownMatch_IsAsTheTradeHasIt(string front, string scheme, string side, double rating) =>
        Assert.Equal(rating, Book.RatingOf(front, scheme, RunToWords.Parse(side)!.Value));

    /// <summary>The same picture has one rating: a front and its mirror swap their sides.</summary>
    [Theory]
    [InlineData("five to back", "five away")]
    [InlineData("edge away", "edge to back")]
    public void RatingOf_MirroredFronts_AreMirrored(string one, string other)
    {
        foreach (var scheme in Book.Schemes)
        {
            foreach (var side in Enum.GetValues<RunTo>())
            {
                Assert.Equal((scheme.Name, Book.RatingOf(one, scheme.Name, side)), (scheme.Name, Book.RatingOf(other, scheme.Name, side.Other())));
            }
        }
    }

    [Theory]
    [InlineData("five_to_back")]
    [InlineData("Five To Back")]
    [InlineData("five-to-back")]
    [InlineData("5 to back")]
    public void Front_AnySpelling_IsFound(string name) => Assert.Equal("five to back", Book.Front(name)?.Name);

    [Fact]
    public void Alignment_EdgeToBack_ReadsFromTheFarSideIn() => Assert.Equal("5-1-4i-edge", Book.Front("edge to back")!.Alignment);

    [Fact]
    public void Plan_UnknownName_IsHandedBack()
    {
        var (fronts, unknown) = Book.Plan(["tight", "Tite", "tihgt"]);
        Assert.Equal("tight", Assert.Single(fronts).Name);
        Assert.Equal("tihgt", Assert.Single(unknown));
    }
}
