using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Glossaries;

/// <summary>How many slips of the hand lie between two words: a letter left out, put in, changed, or two neighbours swapped.</summary>
/// <remarks>Optimal string alignment distance; 0 for equal words, the length of the other for an empty word.</remarks>
public static class EditDistance
{
    public static int Between(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return NearestWord.Edits(a, b);
    }

    /// <summary>
    /// Whether one may be a slip for the other. Short words are codes (GT and GH, IZ and OZ) and never slips of each other;
    /// one slip is allowed from four letters on, two from eight.
    /// </summary>
    public static bool IsSlip(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var shorter = Math.Min(a.Length, b.Length);
        if (shorter < 4 || Math.Abs(a.Length - b.Length) > 2 || !SameDigits(a, b))
        {
            return false;
        }

        return Between(a, b) <= (shorter >= 8 ? 2 : 1);
    }

    // cover 2 and cover 3 differ in what matters. Asked for every pair of words, so without a string for each.
    private static bool SameDigits(string a, string b)
    {
        var at = 0;
        foreach (var c in a)
        {
            if (!char.IsAsciiDigit(c))
            {
                continue;
            }

            at = Next(b, at);
            if (at == b.Length || b[at++] != c)
            {
                return false;
            }
        }

        return Next(b, at) == b.Length;
    }

    private static int Next(string text, int at)
    {
        while (at < text.Length && !char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return at;
    }
}
