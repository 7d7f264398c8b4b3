using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Tests.Problems;

public class NearestWordTests
{
    // Distances counted by hand; "ca" to "abc" is 3 under optimal string alignment (2 under unrestricted Damerau).
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("", "abc", 3)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("form", "from", 1)]
    [InlineData("ca", "abc", 3)]
    public void Edits_TwoWords_AreCounted(string a, string b, int edits)
    {
        Assert.Equal(edits, NearestWord.Edits(a, b));
        Assert.Equal(edits, NearestWord.Edits(b, a));
    }

    [Theory]
    [InlineData("Distnace", "distance")]
    [InlineData("ball-onn", "ball_on")]
    [InlineData("dwon", "down")]
    [InlineData("zebra", null)]
    [InlineData("dn", null)]
    [InlineData("", null)]
    public void In_Word_IsTheNearestOrNone(string word, string? nearest) =>
        Assert.Equal(nearest, NearestWord.In(["down", "distance", "ball_on"], word));

    [Fact]
    public void In_ExtremelyLongWord_IsNone() => Assert.Null(NearestWord.In(["down"], new string('d', 1_000_000)));
}
