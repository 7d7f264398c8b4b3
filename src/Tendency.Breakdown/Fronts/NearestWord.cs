using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Fronts;

/// <summary>The known word a misspelt one was probably meant to be.</summary>
internal static class NearestWord
{
    /// <returns>The candidate with the smallest edit distance; empty when more than a third of the letters, and more than two, would have to change.</returns>
    public static string To(string word, IEnumerable<string> candidates)
    {
        var key = Glossary.Key(word);
        var best = candidates
            .Select(c => (Word: c, Distance: Distance(key, Glossary.Key(c))))
            .OrderBy(c => c.Distance)
            .FirstOrDefault((Word: "", Distance: int.MaxValue));
        return best.Distance <= Math.Max(2, key.Length / 3) ? best.Word : "";
    }

    /// <summary>Insertions, deletions, replacements and swaps of neighbours that turn one word into the other (optimal string alignment).</summary>
    internal static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    d[i, j] = i + j;
                    continue;
                }

                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}
