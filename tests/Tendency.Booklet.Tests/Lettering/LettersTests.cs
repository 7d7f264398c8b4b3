using CsCheck;
using Tendency.Booklet.Blocks;
using Tendency.Booklet.Lettering;
using Tendency.Tests.Shared;

namespace Tendency.Booklet.Tests.Lettering;

public sealed class LettersTests
{
    private static readonly Gen<string> Words = Gen.Char["abcdefg –%'12345 éñ漢 "].Array[0, 60].Select(letters => new string(letters));

    [Fact]
    public void Width_Digits_AreAllTheSame()
    {
        var letters = new Letters();
        foreach (var bold in new[] { false, true })
        {
            // Inter's own tabular digits differ by up to 5 of 2816 units: 0.02 points at 10.
            var widths = Enumerable.Range(0, 10).Select(digit => letters.Width($"{digit}", new Style(10, bold))).ToList();
            Assert.InRange(widths.Max() - widths.Min(), 0, 0.02);
        }
    }

    [Fact]
    public void Width_KernedPair_IsNarrowerThanItsLetters()
    {
        var letters = new Letters();
        var style = new Style(10);
        Assert.True(letters.Width("AV", style) < letters.Width("A", style) + letters.Width("V", style));
    }

    [Fact]
    public void Width_CombiningMark_IsComposed()
    {
        var letters = new Letters();
        Assert.Equal(letters.Width("é", new Style(10)), letters.Width(letters.Printable("e\u0301"), new Style(10)));
    }

    [Theory]
    [InlineData("Añejo é", "Añejo é")]
    [InlineData("漢字", "[U+6F22][U+5B57]")]
    [InlineData("a\tb", "a b")]
    [InlineData("🏈", "[U+1F3C8]")]
    public void Printable_LettersNotInTheFace_ShowTheirNumber(string text, string expected) => Assert.Equal(expected, new Letters().Printable(text));

    [Fact]
    public void Wrap_AnyText_KeepsToTheWidthAndLosesNothing()
    {
        var letters = new Letters();
        Law.Holds(Gen.Select(Words, Words, Gen.Double[20, 120]), 300, (plain, bold, width) =>
        {
            var lines = letters.Wrap(RichText.Plain(plain) + RichText.Strong(bold), 10, width);
            Assert.All(lines, line => Assert.True(line.Width <= width + 0.5, $"{line.Width} > {width}"));
            var kept = string.Concat(lines.SelectMany(line => line.Pieces).Select(piece => piece.Text)).Replace(" ", "", StringComparison.Ordinal);
            Assert.Equal(letters.Printable(plain + bold).Replace(" ", "", StringComparison.Ordinal), kept);
        });
    }

    [Fact]
    public void Cut_AnyText_FitsAndSaysSo()
    {
        var letters = new Letters();
        var style = new Style(8.5);
        Law.Holds(Gen.Select(Words, Gen.Double[12, 90]), 300, (text, width) =>
        {
            var cut = letters.Cut(text, style, width);
            Assert.True(letters.Width(cut, style) <= width);
            Assert.True(cut == letters.Printable(text) || cut.EndsWith('…'));
        });
    }

    [Fact]
    public void Wrap_MoreLinesThanAllowed_EndsInEllipsis()
    {
        var letters = new Letters();
        var lines = letters.Wrap("Trips, tight end flexed, motion across the formation", new Style(9.5, Bold: true), 80, 2);
        Assert.Equal(2, lines.Count);
        Assert.EndsWith("…", lines[1].Pieces[^1].Text, StringComparison.Ordinal);
    }
}
