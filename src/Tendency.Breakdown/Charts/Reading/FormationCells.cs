using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Formation cells taken apart: the shape counts as the formation, the side fills the strength where that is not charted.</summary>
internal static class FormationCells
{
    /// <summary>Formations as printed: as the staff's glossary spells them, else as most often spelt in the charts (ties: the first seen).</summary>
    public static CategoryColumn Shapes(IReadOnlyList<string> words, Glossary glossary)
    {
        var shapes = words.Select(word => word.Length == 0 ? "" : ShapeOf(word, glossary)).ToArray();
        var printed = shapes.Where(shape => shape.Length > 0)
            .GroupBy(Glossary.Key, StringComparer.Ordinal)
            .ToDictionary(
                group => group.Key,
                group => glossary.StaffFormation(group.First())?.Canonical
                    ?? group.GroupBy(s => s, StringComparer.Ordinal).OrderByDescending(g => g.Count()).First().Key,
                StringComparer.Ordinal);
        return CategoryColumn.FromWords(ColumnNames.Formation, shapes.Select(shape => shape.Length == 0 ? "" : printed[Glossary.Key(shape)]));
    }

    /// <summary>The strength column with sides from the formation words, or null when no word names one.</summary>
    public static CategoryColumn? Strengths(IReadOnlyList<string> words, CategoryColumn? charted)
    {
        var sides = words.Select(word => word.Length == 0 ? "" : FormationWord.Of(word).Strength).ToArray();
        if (sides.All(side => side.Length == 0))
        {
            return null;
        }

        var filled = new CategoryBuilder(ColumnNames.Strength, ["L", "R"]);
        for (var row = 0; row < sides.Length; row++)
        {
            _ = filled.Add(charted is not null && charted.Codes[row] != 0 ? charted[row] : sides[row]);
        }

        return filled.Build();
    }

    // A staff may keep Trips Right as a word of its own; then it is printed so.
    private static string ShapeOf(string word, Glossary glossary) =>
        glossary.StaffFormation(word) is { } whole ? whole.Canonical : FormationWord.Of(word).Shape;
}
