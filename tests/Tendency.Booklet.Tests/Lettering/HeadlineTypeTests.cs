using CsCheck;
using Tendency.Booklet.Lettering;
using Tendency.Tests.Shared;

namespace Tendency.Booklet.Tests.Lettering;

public sealed class HeadlineTypeTests
{
    [Theory]
    [InlineData("No clear winner. Five to back leads in 36 of 100 draws, over in 21.", "No clear winner. Five to back leads|in 36 of 100 draws, over in 21.")]
    [InlineData("They run from wing and from trips closed. They throw from bunch and from empty.", "They run from wing and from trips closed.|They throw from bunch and from empty.")]
    [InlineData("They run.", "They run.")]
    public void Set_Headline_PartsWhereASentenceEndsElseEvenly(string headline, string lines) =>
        Assert.Equal(lines, string.Join('|', Lines(headline)));

    [Theory]
    [InlineData("They throw on third and long. No down is a sure run.", true)]
    [InlineData("They run from wing, from trips closed, from two tight and from the I formation, and they throw from bunch, from empty and from nub trips.", false)]
    public void Fits_Headline_ByItsWidth(string headline, bool fits) => Assert.Equal(fits, HeadlineType.Fits(headline));

    // Words as long as an ordinary one: a word wider than half a line can leave no even lines.
    [Fact]
    public void Set_AnyHeadline_KeepsItsWordsAndLeavesNoLoneWord() =>
        Law.Holds(Gen.Select(Gen.Char["abceinortw"].Array[2, 9], letters => new string(letters)).Array[4, 18], 200, words =>
        {
            var headline = string.Join(' ', words) + ".";
            var lines = Lines(headline).ToArray();
            Assert.Equal(HeadlineType.Fits(headline), lines.Length <= HeadlineType.MostLines);
            Assert.Equal(headline, string.Join(' ', lines));
            Assert.True(lines.Length == 1 || lines[^1].Contains(' ', StringComparison.Ordinal), string.Join('|', lines));
        });

    [Theory]
    [InlineData("Bunch, not the first play of a series", 170, "Bunch, not the first play of|a series")]
    [InlineData("Outside zone", 40, "Outside|zone")]
    public void Wrap_NarrowColumn_SparesALoneWordAndBreaksNone(string text, double width, string lines) =>
        Assert.Equal(lines, string.Join('|', new Letters().Wrap(text, new Style(10, Bold: true), width).Select(Words)));

    private static IEnumerable<string> Lines(string headline) => HeadlineType.Set(headline, new Letters()).Select(Words);

    private static string Words(TextLine line) => string.Concat(line.Pieces.Select(piece => piece.Text));
}
