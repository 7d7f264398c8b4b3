namespace Tendency.Breakdown.Glossaries;

/// <summary>The family of a formation word by rule, when the glossary does not know the word as a whole.</summary>
/// <remarks>Families and what tells them apart are common practice of the trade; there is no single source.</remarks>
internal static class FormationFamilies
{
    // What says most about the picture comes first: a bunch is a bunch whatever the split, empty is empty however tight.
    private static readonly string[] s_strongestFirst =
    [
        "victory set", "direct snap set", "unbalanced", "empty 4x1", "empty 3x2", "quads 4x1", "bunch", "stack set", "nub trips", "trips tight end",
        "wing t", "flex bone", "full house", "diamond", "three tight", "two tight same side", "two tight 2x2", "tight wing", "offset i", "i backs",
        "split backs", "two back gun", "trips 3x1", "overload", "twins 2x1", "pro 2x1", "doubles 2x2", "condensed",
    ];

    // Said of the quarterback or the surface, not of the shape: dropped before a word is looked up again.
    private static readonly HashSet<string> s_asides = new(StringComparer.Ordinal)
    {
        "gun", "shotgun", "pistol", "under", "uc", "tight", "closed", "open", "strong", "weak", "near", "far", "flex", "wide", "slot", "over", "off",
    };

    /// <param name="word">The shape, without its side.</param>
    /// <param name="glossary">Knows single words and the staff's own.</param>
    /// <param name="seen">What other columns say of the same snap.</param>
    /// <returns>A family's canonical name; empty when neither word nor columns tell.</returns>
    public static string Of(string word, Glossary glossary, FormationSeen seen)
    {
        if (Whole(word, glossary) is { Length: > 0 } known)
        {
            return known;
        }

        var parts = word.Split([' ', '_', '-', '.', '/'], StringSplitOptions.RemoveEmptyEntries);
        var found = Phrases(parts).Select(phrase => Whole(phrase, glossary)).Where(family => family.Length > 0).ToHashSet(StringComparer.Ordinal);
        if (found.Contains("trips 3x1") && found.Contains("empty 3x2"))
        {
            return "empty 3x2";
        }

        return s_strongestFirst.FirstOrDefault(found.Contains) ?? BySurface(seen);
    }

    private static string Whole(string word, Glossary glossary)
    {
        if (glossary.Find("formation", word) is { FromStaff: true, Family.Length: > 0 } own)
        {
            return own.Family;
        }

        return glossary.Find("formation_family", word) is { } term ? term.Family.Length > 0 ? term.Family : term.Canonical : "";
    }

    // Longest phrases first, so that "i strong" is read before "i"; asides count only inside a longer phrase.
    private static IEnumerable<string> Phrases(string[] parts)
    {
        for (var length = parts.Length - 1; length > 0; length--)
        {
            for (var start = 0; start + length <= parts.Length; start++)
            {
                if (length > 1 || !s_asides.Contains(Glossary.Key(parts[start])))
                {
                    yield return string.Join(' ', parts[start..(start + length)]);
                }
            }
        }
    }

    private static string BySurface(FormationSeen seen) => seen switch
    {
        { TightEnds: >= 3 } => "three tight",
        { Attached: "both" } => "two tight 2x2",
        { Attached: "L" or "R" } when seen.Wing == seen.Attached || seen.Wing == "both" => "tight wing",
        _ => "",
    };
}

/// <summary>What the chart says of a snap's shape beside the formation word; empty or null = not charted.</summary>
/// <param name="Attached">L, R, both, none: sides with an attached tight end.</param>
/// <param name="Wing">L, R, both, none.</param>
/// <param name="TightEnds">From the personnel.</param>
public readonly record struct FormationSeen(string Attached, string Wing, int? TightEnds)
{
    public static FormationSeen Nothing { get; } = new("", "", null);
}
