namespace Tendency.Booklet.Lettering;

/// <summary>How the words of a text are shared among its lines: filled from the left, they may leave a lone word on the last line, or a headline of one full line and one short.</summary>
internal static class Rag
{
    /// <summary>A last line narrower than this part of a wide column is a crumb, whatever its words.</summary>
    private const double Crumb = .12;

    /// <summary>In a column narrower than this, in points, only a lone word is one: half the words there are short of it.</summary>
    private const double WideColumn = 200;

    // Longer texts would be narrowed as a whole for the sake of their last line.
    private const int MostLines = 4;
    private const double LeastWidth = .7;
    private const double Step = .03;

    /// <param name="fill">Lines of a width, cut at a number of lines.</param>
    /// <param name="width">Points.</param>
    /// <param name="most">Lines at most.</param>
    public static IReadOnlyList<TextLine> WithoutOrphan(Func<double, int, IReadOnlyList<TextLine>> fill, double width, int most)
    {
        var filled = fill(width, most);
        if (filled.Count is < 2 or > MostLines || !Orphaned(filled, width))
        {
            return filled;
        }

        var whole = most == int.MaxValue ? filled.Count : fill(width, int.MaxValue).Count;
        if (whole > filled.Count)
        {
            return filled; // cut with …: it ends where it must
        }

        for (var part = 1 - Step; part >= LeastWidth; part -= Step)
        {
            var narrower = fill(width * part, int.MaxValue);
            if (narrower.Count > filled.Count || Words(narrower) != Words(filled))
            {
                break;
            }

            if (!Orphaned(narrower, width))
            {
                return narrower;
            }
        }

        return filled;
    }

    /// <summary>The same number of lines in the least width that holds them.</summary>
    public static IReadOnlyList<TextLine> Even(Func<double, IReadOnlyList<TextLine>> fill, double width)
    {
        const int Halvings = 8;
        var best = fill(width);
        var (low, high) = (width / 2, width);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            var lines = fill(middle);
            if (lines.Count > best.Count || Words(lines) != Words(best))
            {
                low = middle;
            }
            else
            {
                (best, high) = (lines, middle);
            }
        }

        return best;
    }

    // A word broken at a line's end counts as two, so the words tell whether one was.
    private static string Words(IReadOnlyList<TextLine> lines) => string.Join(' ', lines.Select(line => string.Join(' ', line.Pieces.Select(piece => piece.Text))));

    private static bool Orphaned(IReadOnlyList<TextLine> lines, double width)
    {
        var last = lines[^1];
        var lone = last.Pieces.Count == 1 && !last.Pieces[0].Text.Contains(' ', StringComparison.Ordinal);
        return lone || (width >= WideColumn && last.Width < Crumb * width);
    }
}
