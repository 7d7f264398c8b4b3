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
            .Select(c => (Word: c, Distance: Problems.NearestWord.Edits(key, Glossary.Key(c))))
            .OrderBy(c => c.Distance)
            .FirstOrDefault((Word: "", Distance: int.MaxValue));
        return best.Distance <= Math.Max(2, key.Length / 3) ? best.Word : "";
    }
}
