using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Makes one category of the several spellings of a word.</summary>
internal static class WordColumn
{
    /// <param name="column">Which column; its glossary kind says where to look words up.</param>
    /// <param name="words">One word a row as charted.</param>
    /// <param name="glossary">Joins names that mean the same.</param>
    public static CategoryColumn Build(ChartColumn column, WordCells words, Glossary glossary)
    {
        if (column.Name == ColumnNames.Formation)
        {
            return FormationCells.Shapes(words, glossary);
        }

        var spelt = words.Spellings.Select((spelling, index) => (Spelling: spelling, Uses: words.Uses[index], Key: spelling.Length == 0 ? "" : KeyOf(column, spelling, glossary))).ToArray();

        // Printed as most often spelt in the charts (ties: the first seen); run schemes as the glossary spells them.
        var printed = spelt.GroupBy(word => word.Key, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => Printed(column, group.MaxBy(word => word.Uses).Spelling, glossary), StringComparer.Ordinal);
        printed[""] = "";
        return words.Column(column.Name, [.. spelt.Select(word => printed[word.Key])]);
    }

    private static string KeyOf(ChartColumn column, string word, Glossary glossary) =>
        column.GlossaryKind.Length > 0 && glossary.Find(column.GlossaryKind, word) is { } term
            ? "term:" + term.Canonical
            : Glossary.Key(word);

    private static string Printed(ChartColumn column, string most, Glossary glossary) =>
        column.Name == ColumnNames.RunScheme ? glossary.Find(column.GlossaryKind, most)?.Canonical ?? most : most;
}
