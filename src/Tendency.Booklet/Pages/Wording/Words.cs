using System.Text;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>How words of charts and numbers stand in print.</summary>
internal static class Words
{
    private static readonly HashSet<string> s_initials = new(StringComparer.Ordinal) { "qb", "te", "gt", "gh", "rpo", "pa", "wr", "rb", "x", "y", "z", "h", "i" };

    private static readonly string[] s_numbers =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>"inside zone" becomes "Inside zone", "counter gt" "Counter GT"; a word with its own capitals stays as the staff writes it.</summary>
    public static string Title(string word) => Capital(Plain(word));

    /// <summary>The word inside a sentence: canonical terms in lower case, initials in capitals.</summary>
    public static string Plain(string word) => word.Any(char.IsUpper)
        ? word
        : string.Join(' ', word.Split(' ').Select(part => s_initials.Contains(part) ? part.ToUpperInvariant() : part));

    public static string Capital(string sentence)
    {
        if (sentence.Length == 0)
        {
            return sentence;
        }

        _ = Rune.TryGetRuneAt(sentence, 0, out var first);
        return Rune.ToUpperInvariant(first) + sentence[first.Utf16SequenceLength..];
    }

    /// <summary>Numbers to twelve in words: "five games".</summary>
    public static string Number(int count) => count is >= 0 and <= 12 ? s_numbers[count] : Blocks.Figures.Count(count);

    /// <summary>"five games", "one game".</summary>
    public static string Counted(int count, string one, string? many = null) => $"{Number(count)} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>"286 plays", "1 play".</summary>
    public static string Figured(int count, string one, string? many = null) => $"{Blocks.Figures.Count(count)} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string Join(IEnumerable<string> items, string last = "and")
    {
        var all = items.ToArray();
        return all.Length switch
        {
            0 => "",
            1 => all[0],
            _ => $"{string.Join(", ", all[..^1])} {last} {all[^1]}",
        };
    }

    /// <summary>Sentences after one another, empty ones skipped.</summary>
    public static string Sentences(params string[] sentences) => string.Join(' ', sentences.Where(sentence => sentence.Length > 0));
}
