using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Glossaries;

/// <summary>Whether one word may be a slip of the hand for another.</summary>
internal static class TypingSlip
{
    /// <summary>
    /// Short words are codes (GT and GH, IZ and OZ) and never slips of each other, nor are words that differ in a digit (cover 2 and cover 3);
    /// one edit is allowed from four letters on, two from eight.
    /// </summary>
    public static bool Between(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var shorter = Math.Min(a.Length, b.Length);
        return shorter >= 4 && Math.Abs(a.Length - b.Length) <= 2 && DigitsOf(a) == DigitsOf(b) && NearestWord.Edits(a, b) <= (shorter >= 8 ? 2 : 1);
    }

    private static string DigitsOf(string word) => string.Concat(word.Where(char.IsAsciiDigit));
}
