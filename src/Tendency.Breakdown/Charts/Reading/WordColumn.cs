using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Makes one category of the several spellings of a word.</summary>
internal static class WordColumn
{
    /// <param name="column">Which column; its glossary kind says where to look words up.</param>
    /// <param name="words">One word a row as charted; empty = not charted.</param>
    /// <param name="glossary">Joins names that mean the same.</param>
    public static CategoryColumn Build(ChartColumn column, IReadOnlyList<string> words, Glossary glossary)
    {
        if (column.Name == ColumnNames.Formation)
        {
            return FormationCells.Shapes(words, glossary);
        }

        var keys = words.Select(word => word.Length == 0 ? "" : KeyOf(column, word, glossary)).ToArray();

        // Printed as most often spelt in the charts (ties: the first seen); run schemes as the glossary spells them.
        var printed = words.Zip(keys)
            .Where(pair => pair.Second.Length > 0)
            .GroupBy(pair => pair.Second, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => Printed(column, group.Select(pair => pair.First), glossary), StringComparer.Ordinal);
        return CategoryColumn.FromWords(column.Name, keys.Select(key => key.Length == 0 ? "" : printed[key]));
    }

    private static string KeyOf(ChartColumn column, string word, Glossary glossary) =>
        column.GlossaryKind.Length > 0 && glossary.Find(column.GlossaryKind, word) is { } term
            ? "term:" + term.Canonical
            : Glossary.Key(word);

    private static string Printed(ChartColumn column, IEnumerable<string> spellings, Glossary glossary)
    {
        var most = spellings.GroupBy(s => s, StringComparer.Ordinal).OrderByDescending(g => g.Count()).First().Key;
        return column.Name == ColumnNames.RunScheme ? glossary.Find(column.GlossaryKind, most)?.Canonical ?? most : most;
    }
}
