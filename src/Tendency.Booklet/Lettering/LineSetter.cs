namespace Tendency.Booklet.Lettering;

/// <summary>Sets words of mixed weight into lines of a width.</summary>
internal sealed class LineSetter(Letters letters, double size, double width)
{
    private const double Slack = 0.01; // rounding of sums of widths
    private readonly List<List<LinePiece>> lines = [[]];
    private readonly double space = letters.Width(" ", new Style(size));
    private double x;
    private bool spaceDue;

    /// <summary>Adds a run; spaces at its ends count.</summary>
    public void Add(string text, Style style, string? anchor)
    {
        var at = 0;
        while (at < text.Length)
        {
            if (text[at] == ' ')
            {
                spaceDue = true;
                at++;
                continue;
            }

            var end = text.IndexOf(' ', at);
            end = end < 0 ? text.Length : end;
            Place(text[at..end], style, anchor);
            at = end;
        }
    }

    /// <summary>The lines, neighbouring words of one style joined so that they draw and select as one.</summary>
    public IReadOnlyList<TextLine> Finish(int mostLines)
    {
        var kept = lines.Where(line => line.Count > 0).ToList();
        var cut = kept.Count > mostLines;
        kept = [.. kept.Take(mostLines)];
        if (cut && kept.Count > 0)
        {
            kept[^1] = Shortened(kept[^1]);
        }

        return [.. kept.Select(line => new TextLine(Joined(line), line.Count == 0 ? 0 : line[^1].X + line[^1].Width))];
    }

    private void Place(string word, Style style, string? anchor)
    {
        var wide = letters.Width(word, style);
        var lead = spaceDue && lines[^1].Count > 0 ? space : 0;
        // Text without a space before it belongs to the word before ("62" + ","): it may not start a line by itself.
        if (lines[^1].Count > 0 && x + lead + wide > width + Slack)
        {
            if (!spaceDue && LastWordOfLine() is { } start && start > 0)
            {
                CarryOver(start);
            }
            else
            {
                lines.Add([]);
                x = 0;
            }

            lead = 0;
        }

        spaceDue = false;
        while (x + lead + wide > width + Slack && word.Length > 1)
        {
            var fits = Math.Max(1, LettersThatFit(word, style, width - x - lead));
            Put(word[..fits], style, anchor, lead);
            lines.Add([]);
            x = 0;
            lead = 0;
            word = word[fits..];
            wide = letters.Width(word, style);
        }

        Put(word, style, anchor, lead);
    }

    private void Put(string word, Style style, string? anchor, double lead)
    {
        var wide = letters.Width(word, style);
        lines[^1].Add(new LinePiece(x + lead, wide, word, style, anchor));
        x += lead + wide;
    }

    private int? LastWordOfLine()
    {
        var line = lines[^1];
        for (var i = line.Count - 1; i > 0; i--)
        {
            if (line[i].X > line[i - 1].X + line[i - 1].Width + Slack)
            {
                return i;
            }
        }

        return null;
    }

    private void CarryOver(int start)
    {
        var line = lines[^1];
        var moved = line.Skip(start).ToList();
        line.RemoveRange(start, line.Count - start);
        var shift = moved[0].X;
        lines.Add([.. moved.Select(piece => piece with { X = piece.X - shift })]);
        x -= shift;
    }

    private int LettersThatFit(string word, Style style, double room)
    {
        var fits = 0;
        for (var end = 1; end < word.Length; end++)
        {
            if (!char.IsHighSurrogate(word[end - 1]) && letters.Width(word[..end], style) <= room)
            {
                fits = end;
            }
        }

        return fits;
    }

    private List<LinePiece> Shortened(List<LinePiece> line)
    {
        for (var count = line.Count; count > 0; count--)
        {
            var last = line[count - 1];
            var text = last.Text.TrimEnd(',', ';', '.') + "…";
            var wide = letters.Width(text, last.Style);
            if (last.X + wide <= width + Slack)
            {
                return [.. line.Take(count - 1), last with { Text = text, Width = wide }];
            }
        }

        var only = line[0];
        var cut = letters.Cut(only.Text + " x", only.Style, width);
        return [only with { Text = cut, Width = letters.Width(cut, only.Style) }];
    }

    private List<LinePiece> Joined(List<LinePiece> line)
    {
        var joined = new List<LinePiece>();
        foreach (var piece in line)
        {
            if (joined.Count > 0 && joined[^1] is var open && open.Style == piece.Style && open.Anchor == piece.Anchor)
            {
                var gap = piece.X > open.X + open.Width + Slack ? " " : "";
                var text = open.Text + gap + piece.Text;
                joined[^1] = open with { Text = text, Width = letters.Width(text, open.Style) };
            }
            else if (joined.Count > 0)
            {
                var before = joined[^1];
                joined.Add(piece with { X = before.X + before.Width + (SpaceBetween(line, piece) ? space : 0) });
            }
            else
            {
                joined.Add(piece);
            }
        }

        return joined;
    }

    private static bool SpaceBetween(List<LinePiece> line, LinePiece piece)
    {
        var at = line.IndexOf(piece);
        return piece.X > line[at - 1].X + line[at - 1].Width + Slack;
    }
}
