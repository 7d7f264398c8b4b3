using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>Formation cells taken apart: the shape counts as the formation, the side fills the strength where that is not charted.</summary>
internal static class FormationCells
{
    /// <summary>Formations as printed: as the staff's glossary spells them, else as most often spelt in the charts (ties: the first seen).</summary>
    public static CategoryColumn Shapes(WordCells words, Glossary glossary)
    {
        var shapes = words.Spellings.Select(word => word.Length == 0 ? "" : ShapeOf(word, glossary)).ToArray();
        var printed = shapes.Select((shape, index) => (Shape: shape, Uses: words.Uses[index]))
            .Where(word => word.Shape.Length > 0)
            .GroupBy(word => Glossary.Key(word.Shape), StringComparer.Ordinal)
            .ToDictionary(
                group => group.Key,
                group => glossary.StaffFormation(group.First().Shape)?.Canonical
                    ?? group.GroupBy(word => word.Shape, StringComparer.Ordinal).MaxBy(spelling => spelling.Sum(word => word.Uses))!.Key,
                StringComparer.Ordinal);
        return words.Column(ColumnNames.Formation, [.. shapes.Select(shape => shape.Length == 0 ? "" : printed[Glossary.Key(shape)])]);
    }

    /// <summary>The strength column with sides from the formation words, or null when no word names one.</summary>
    public static CategoryColumn? Strengths(WordCells words, CategoryColumn? charted)
    {
        var sides = words.Spellings.Select(word => word.Length == 0 ? "" : FormationWord.Of(word).Strength).ToArray();
        if (sides.All(side => side.Length == 0))
        {
            return null;
        }

        var named = words.Column(ColumnNames.Strength, sides);
        var filled = new CategoryBuilder(ColumnNames.Strength, ["L", "R"]);
        for (var row = 0; row < words.Count; row++)
        {
            _ = filled.Add(charted is not null && charted.Codes[row] != 0 ? charted[row] : named[row]);
        }

        return filled.Build();
    }

    // A staff may keep Trips Right as a word of its own; then it is printed so.
    private static string ShapeOf(string word, Glossary glossary) =>
        glossary.StaffFormation(word) is { } whole ? whole.Canonical : FormationWord.Of(word).Shape;
}
