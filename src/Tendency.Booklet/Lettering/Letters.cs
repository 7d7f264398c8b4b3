using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Lettering;

/// <summary>Size and weight of a piece of text, in points.</summary>
internal readonly record struct Style(double Size, bool Bold = false)
{
    /// <summary>Large type is set tighter.</summary>
    public double Tracking => Size >= 20 ? -0.018 : Size >= 13 ? -0.014 : 0;
}

/// <summary>A piece of a line at its place from the line's left end.</summary>
internal readonly record struct LinePiece(double X, double Width, string Text, Style Style, string? Anchor);

/// <summary>One set line.</summary>
internal sealed record TextLine(IReadOnlyList<LinePiece> Pieces, double Width);

/// <summary>
/// The two weights a booklet is set in, and everything that needs their widths: measuring, wrapping, cutting. One a document, which remembers
/// what it has measured; pages set side by side each take a <see cref="Sharing"/> of it.
/// </summary>
internal sealed class Letters
{
    private const string Ellipsis = "…";

    private readonly ConcurrentDictionary<string, Face.Shaped> regular;
    private readonly ConcurrentDictionary<string, Face.Shaped> bold;
    private readonly SortedSet<int> replaced;

    public Letters()
    {
        (regular, bold) = (new(StringComparer.Ordinal), new(StringComparer.Ordinal));
        (replaced, PageNumbers) = ([], new(StringComparer.Ordinal));
    }

    private Letters(Letters document) =>
        (regular, bold, replaced, PageNumbers) = (document.regular, document.bold, document.replaced, document.PageNumbers);

    /// <summary>Page numbers by anchor, filled once pages are placed; "00" stands in before.</summary>
    public Dictionary<string, int> PageNumbers { get; }

    /// <summary>Whether a page number was asked for: what did not ask will look the same with other numbers.</summary>
    public bool AskedForNumbers { get; private set; }

    /// <summary>Code points that Inter does not have and that were printed as their number.</summary>
    public IReadOnlyCollection<int> Replaced => replaced;

    /// <summary>The same document's letters for another page, with a memory of its own for <see cref="AskedForNumbers"/>.</summary>
    public Letters Sharing() => new(this);

    public Face.Shaped Shape(string text, bool isBold) => (isBold ? bold : regular).GetOrAdd(text, FaceOf(isBold).Shape);

    public static Face FaceOf(bool bold) => bold ? Face.Bold : Face.Regular;

    /// <summary>The text with every letter the face lacks written as "[U+6F22]", control characters as spaces.</summary>
    public string Printable(string text)
    {
        text = text.Replace('\'', '’');
        if (!NeedsWork(text))
        {
            return text;
        }

        var result = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Face.Regular.Has(rune.Value))
            {
                result.Append(rune.ToString());
            }
            else if (Rune.IsControl(rune) || Rune.IsWhiteSpace(rune))
            {
                result.Append(' ');
            }
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.OtherNotAssigned))
            {
                lock (replaced)
                {
                    _ = replaced.Add(rune.Value);
                }

                result.Append($"[U+{rune.Value:X4}]");
            }
        }

        return result.ToString();
    }

    public double Width(string text, Style style)
    {
        var set = Shape(text, style.Bold);
        return (set.Width * style.Size / FaceOf(style.Bold).UnitsPerEm) + (style.Tracking * style.Size * Math.Max(0, set.Glyphs.Length - 1));
    }

    /// <summary>One line of one weight, cut with … at a word's end (inside a word only if it is the first) to <paramref name="width"/>.</summary>
    public string Cut(string text, Style style, double width)
    {
        text = Printable(text);
        if (Width(text, style) <= width)
        {
            return text;
        }

        for (var end = text.Length - 1; end > 0; end--)
        {
            if (text[end] == ' ' && Width(text[..end].TrimEnd(' ', ',', ';', '.') + Ellipsis, style) <= width)
            {
                return text[..end].TrimEnd(' ', ',', ';', '.') + Ellipsis;
            }
        }

        var firstWord = text.IndexOf(' ', StringComparison.Ordinal) is var at && at < 0 ? text : text[..at];
        for (var end = firstWord.Length; end > 0; end--)
        {
            if (!char.IsHighSurrogate(firstWord[end - 1]) && Width(firstWord[..end] + Ellipsis, style) <= width)
            {
                return firstWord[..end] + Ellipsis;
            }
        }

        return Ellipsis;
    }

    /// <summary>Wraps to the width; a word wider than a line is broken where it must. Beyond <paramref name="mostLines"/> the last line ends in …. The last line is no lone word where the lines before can spare one.</summary>
    public IReadOnlyList<TextLine> Wrap(RichText text, double size, double width, int mostLines = int.MaxValue, bool allBold = false)
    {
        var runs = text.Runs.Select(run => (
            Words: Printable(run.Anchor is null ? run.Text : run.Text.TrimEnd() + "\u00A0" + PageNumber(run.Anchor)),
            Style: new Style(size, run.Bold || allBold),
            run.Anchor)).ToList();
        return Rag.WithoutOrphan(Fill, width, mostLines);

        IReadOnlyList<TextLine> Fill(double room, int most)
        {
            var setter = new LineSetter(this, size, room);
            foreach (var (words, style, anchor) in runs)
            {
                setter.Add(words, style, anchor);
            }

            return setter.Finish(most);
        }
    }

    public IReadOnlyList<TextLine> Wrap(string text, Style style, double width, int mostLines = int.MaxValue) =>
        Wrap(RichText.Plain(text), style.Size, width, mostLines, style.Bold);

    private string PageNumber(string anchor)
    {
        AskedForNumbers = true;
        return PageNumbers.TryGetValue(anchor, out var number) ? number.ToString(CultureInfo.InvariantCulture) : "00";
    }

    private static bool NeedsWork(string text)
    {
        foreach (var letter in text)
        {
            if (letter is < ' ' or > '~' && !Face.Regular.Has(letter))
            {
                return true;
            }
        }

        return false;
    }
}
