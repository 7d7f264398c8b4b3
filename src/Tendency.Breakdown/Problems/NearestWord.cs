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

    /// <summary>The nearest candidate, or null when none is near: one edit up to five letters, two up to eight, three beyond. Ties: the earlier candidate.</summary>
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

    /// <summary>Edits between two words, as written; 0 = the same.</summary>
    public static int Edits(string a, string b)
    {
        if (Math.Max(a.Length, b.Length) > MostLetters)
        {
            return string.Equals(a, b, StringComparison.Ordinal) ? 0 : Math.Max(a.Length, b.Length);
        }

        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    rows[i, j] = i + j;
                    continue;
                }

                var replaced = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(replaced, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
                }
            }
        }

        return rows[a.Length, b.Length];
    }

    private static int Allowed(int letters) => letters switch
    {
        <= 2 => 0,
        <= 5 => 1,
        <= 8 => 2,
        _ => 3,
    };

    private static string Key(string word) =>
        string.Concat(word.Where(c => !char.IsWhiteSpace(c) && c is not ('_' or '-')).Select(char.ToLowerInvariant));
}
