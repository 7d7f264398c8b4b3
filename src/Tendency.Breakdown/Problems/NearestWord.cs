namespace Tendency.Breakdown.Problems;

/// <summary>The known word a mistyped one most likely stands for, by edit distance.</summary>
/// <remarks>
/// Distance: insertions, deletions, replacements and swaps of neighbours, each counting one (optimal string alignment; F. J. Damerau,
/// Communications of the ACM 7 (1964) 171, doi:10.1145/363958.363994). Case, spaces, _ and - do not count.
/// </remarks>
public static class NearestWord
{
    // A longer word was not mistyped from one of ours, and the table of distances grows with the square of the length.
    private const int MostLetters = 60;

    /// <summary>The nearest candidate, or null when none is near: one edit from two to five letters, two up to eight, three beyond. Ties: the earlier candidate.</summary>
    public static string? In(IEnumerable<string> candidates, string word) => All(candidates, word, 1) is [var nearest] ? nearest : null;

    /// <summary>The near candidates, nearest first, at most <paramref name="most"/>; ties in the order of the candidates.</summary>
    public static IReadOnlyList<string> All(IEnumerable<string> candidates, string word, int most = 3)
    {
        var key = Key(word);
        return key.Length is 0 or > MostLetters
            ? []
            : [.. candidates
                .Distinct(StringComparer.Ordinal)
                .Select(candidate => (candidate, Distance: Edits(key, Key(candidate))))
                .Where(near => near.Distance <= Allowed(key.Length))
                .OrderBy(near => near.Distance)
                .Take(most)
                .Select(near => near.candidate)];
    }

    /// <summary>Edits between two words, as written; 0 = the same. Words of more than 60 letters are told equal or wholly different.</summary>
    public static int Edits(string a, string b)
    {
        if (Math.Max(a.Length, b.Length) > MostLetters)
        {
            return string.Equals(a, b, StringComparison.Ordinal) ? 0 : Math.Max(a.Length, b.Length);
        }

        // Three rows of the table of distances are all that is ever looked at.
        var width = b.Length + 1;
        Span<int> table = stackalloc int[3 * width];
        for (var i = 0; i <= a.Length; i++)
        {
            var now = table.Slice(i % 3 * width, width);
            var last = table.Slice((i + 2) % 3 * width, width);
            var beforeLast = table.Slice((i + 1) % 3 * width, width);
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                if (i == 0)
                {
                    now[j] = j;
                    continue;
                }

                now[j] = Math.Min(last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1), Math.Min(last[j], now[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    now[j] = Math.Min(now[j], beforeLast[j - 2] + 1);
                }
            }
        }

        return table[(a.Length % 3 * width) + b.Length];
    }

    private static int Allowed(int letters) => letters switch
    {
        <= 1 => 0,
        <= 5 => 1,
        <= 8 => 2,
        _ => 3,
    };

    private static string Key(string word) =>
        string.Concat(word.Where(c => !char.IsWhiteSpace(c) && c is not ('_' or '-')).Select(char.ToLowerInvariant));
}
