namespace Tendency.Breakdown.Glossaries;

/// <summary>How many slips of the hand lie between two words: a letter left out, put in, changed, or two neighbours swapped.</summary>
/// <remarks>Optimal string alignment distance; 0 for equal words, the length of the other for an empty word.</remarks>
public static class EditDistance
{
    public static int Between(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var beforeLast = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var now = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                now[j] = Math.Min(Math.Min(last[j] + 1, now[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    now[j] = Math.Min(now[j], beforeLast[j - 2] + 1);
                }
            }

            (beforeLast, last, now) = (last, now, beforeLast);
        }

        return last[b.Length];
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
        if (shorter < 4 || Math.Abs(a.Length - b.Length) > 2 || DigitsOf(a) != DigitsOf(b))
        {
            return false;
        }

        return Between(a, b) <= (shorter >= 8 ? 2 : 1);
    }

    // cover 2 and cover 3 differ in what matters.
    private static string DigitsOf(string word) => string.Concat(word.Where(char.IsAsciiDigit));
}
