namespace Tendency.Booklet.Lettering;

/// <summary>A page's headline in type: 17 points bold, at most two lines of the live width. Type is never squeezed: what does not fit is said shorter.</summary>
internal static class HeadlineType
{
    /// <summary>Points of a line.</summary>
    public const double Width = 516;

    public const int MostLines = 2;

    /// <summary>Lines of a headline that nobody could shorten: it is made of a chart's own long words.</summary>
    private const int LinesOfLongWords = 3;

    /// <summary>Of two lines that end with a sentence each, the shorter has at least this part of the longer.</summary>
    private const double LeastShorter = .45;

    public static readonly Style Style = new(17, Bold: true);

    public static bool Fits(string headline) => new Letters().Wrap(headline, Style, Width).Count <= MostLines;

    /// <summary>The lines of about even length; where one sentence goes on each line, a sentence each.</summary>
    public static IReadOnlyList<TextLine> Set(string headline, Letters letters)
    {
        var lines = letters.Wrap(headline, Style, Width, LinesOfLongWords);
        return lines.Count == 1 || letters.Wrap(headline, Style, Width).Count > LinesOfLongWords
            ? lines
            : lines.Count == 2 && BySentence(headline, letters) is { } parted
            ? parted
            : Rag.Even(room => letters.Wrap(headline, Style, room), Width);
    }

    private static IReadOnlyList<TextLine>? BySentence(string headline, Letters letters)
    {
        IReadOnlyList<TextLine>? best = null;
        var evenness = LeastShorter;
        for (var end = headline.IndexOf(". ", StringComparison.Ordinal); end >= 0; end = headline.IndexOf(". ", end + 1, StringComparison.Ordinal))
        {
            var (above, below) = (letters.Wrap(headline[..(end + 1)], Style, Width), letters.Wrap(headline[(end + 2)..], Style, Width));
            if (above.Count == 1 && below.Count == 1 && Math.Min(above[0].Width, below[0].Width) / Math.Max(above[0].Width, below[0].Width) is var even && even >= evenness)
            {
                (best, evenness) = ([above[0], below[0]], even);
            }
        }

        return best;
    }
}
