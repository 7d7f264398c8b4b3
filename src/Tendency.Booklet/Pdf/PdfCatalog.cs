using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Tendency.Booklet.Pdf;

/// <summary>An entry of the reader's side bar: a title and the named place it goes to.</summary>
internal sealed record Bookmark(string Title, string Anchor, IReadOnlyList<Bookmark> Under);

/// <summary>
/// Adds what the drawing library cannot write: bookmarks, the document's language, the view it opens in.
/// Appended as an incremental update (ISO 32000-1, 7.5.6): the file's own bytes stay, a new catalog, outline objects and a cross-reference section follow.
/// </summary>
internal static partial class PdfCatalog
{
    public static byte[] Complete(byte[] file, IReadOnlyList<Bookmark> marks, string language)
    {
        var text = Encoding.Latin1.GetString(file);
        var end = text[Math.Max(0, text.LastIndexOf("trailer", StringComparison.Ordinal))..];
        var previous = Match(StartXref(), end, "startxref");
        var trailer = Match(Trailer(), end, "trailer");
        var root = Match(Root(), trailer, "Root");
        var size = int.Parse(Match(Size(), trailer, "Size"), CultureInfo.InvariantCulture);
        var catalogAt = text.LastIndexOf($"\n{root} 0 obj", StringComparison.Ordinal);
        var catalogEnd = text.IndexOf("endobj", catalogAt, StringComparison.Ordinal);
        var catalog = text[catalogAt..catalogEnd];
        var body = catalog[(catalog.IndexOf("<<", StringComparison.Ordinal) + 2)..catalog.LastIndexOf(">>", StringComparison.Ordinal)];

        var update = new StringBuilder("\n");
        var places = new SortedDictionary<int, int>();
        var next = size;
        var outline = next++;
        var (first, last, count) = Write(marks, outline);
        Object(outline, $"<</Type /Outlines{(count == 0 ? "" : $" /First {first} 0 R /Last {last} 0 R /Count {count}")}>>");
        Object(
            int.Parse(root, CultureInfo.InvariantCulture),
            $"<<{body.TrimEnd()}\n/Outlines {outline} 0 R\n/PageMode /UseOutlines\n/Lang {Literal(language)}\n/ViewerPreferences <</DisplayDocTitle true>>>>");
        var xref = file.Length + update.Length;
        update.Append("xref\n");
        foreach (var (number, place) in places)
        {
            update.Append(CultureInfo.InvariantCulture, $"{number} 1\n{place:D10} 00000 n \n");
        }

        var kept = Size().Replace(trailer, "").Trim();
        update.Append(CultureInfo.InvariantCulture, $"trailer\n<<{kept}\n/Size {next} /Prev {previous}>>\nstartxref\n{xref}\n%%EOF\n");
        return [.. file, .. Encoding.Latin1.GetBytes(update.ToString())];

        void Object(int number, string content)
        {
            places[number] = file.Length + update.Length;
            update.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{content}\nendobj\n");
        }

        (int First, int Last, int Count) Write(IReadOnlyList<Bookmark> level, int parent)
        {
            var numbers = level.Select(_ => next++).ToList();
            var shown = level.Count;
            for (var i = 0; i < level.Count; i++)
            {
                var (under, underLast, underCount) = Write(level[i].Under, numbers[i]);
                var links = new StringBuilder();
                links.Append(i == 0 ? "" : $" /Prev {numbers[i - 1]} 0 R").Append(i == level.Count - 1 ? "" : $" /Next {numbers[i + 1]} 0 R");
                links.Append(underCount == 0 ? "" : $" /First {under} 0 R /Last {underLast} 0 R /Count {underCount}");
                Object(numbers[i], $"<</Title {Literal(level[i].Title)} /Parent {parent} 0 R /Dest /{level[i].Anchor}{links}>>");
                shown += underCount;
            }

            return level.Count == 0 ? (0, 0, 0) : (numbers[0], numbers[^1], shown);
        }
    }

    /// <summary>A text string: UTF-16 with byte order mark, in hexadecimal, so that any title is safe.</summary>
    private static string Literal(string text) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    private static string Match(Regex pattern, string text, string what)
    {
        var matches = pattern.Matches(text);
        return matches.Count > 0 ? matches[^1].Groups["it"].Value : throw new InvalidOperationException($"The printed file has no {what}; the drawing library writes files differently now.");
    }

    [GeneratedRegex(@"startxref\s+(?<it>\d+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex StartXref();

    [GeneratedRegex(@"trailer\s*<<(?<it>.*?)>>\s*startxref", RegexOptions.Singleline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Trailer();

    [GeneratedRegex(@"/Root (?<it>\d+) 0 R", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Root();

    [GeneratedRegex(@"/Size (?<it>\d+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Size();
}
