namespace Tendency.Breakdown.Glossaries;

/// <summary>A formation as charted, taken apart: the shape, and the side it is set to.</summary>
/// <param name="Shape">The word without its side, as spelt; never empty for a filled cell.</param>
/// <param name="Strength">L, R, or empty when the word names no side.</param>
public readonly record struct FormationWord(string Shape, string Strength)
{
    private static readonly char[] s_breaks = [' ', '_', '-', '.', '/', '\t'];

    /// <summary>Trips Rt, trips right, TRIPS R, Rt Trips and TripsRt are all Trips to the right.</summary>
    /// <remarks>A word of sides only, or one that names both sides, is left whole: it would be a guess to split it.</remarks>
    public static FormationWord Of(string written)
    {
        ArgumentNullException.ThrowIfNull(written);
        var parts = written.Split(s_breaks, StringSplitOptions.RemoveEmptyEntries);
        var sides = parts.Select((part, at) => SideOf(part, at == 0 || at == parts.Length - 1)).ToArray();
        if (sides.Any(side => side.Length > 0))
        {
            var named = sides.Where(side => side.Length > 0).Distinct(StringComparer.Ordinal).ToArray();
            var shape = string.Join(' ', parts.Where((_, at) => sides[at].Length == 0));
            return named.Length == 1 && shape.Length > 0 ? new FormationWord(shape, named[0]) : new FormationWord(written, "");
        }

        return Glued(written);
    }

    private static string SideOf(string part, bool atEnd) => part.ToLowerInvariant() switch
    {
        "rt" or "right" or "rgt" or "rite" => "R",
        "lt" or "left" or "lft" => "L",
        "r" or "rt)" or "(r)" or "(rt)" when atEnd => "R",
        "l" or "lt)" or "(l)" or "(lt)" when atEnd => "L",
        _ => "",
    };

    // TripsRt, DeuceLt: a capital in the middle of a word that is not all capitals begins the side.
    private static FormationWord Glued(string written)
    {
        foreach (var (ending, side) in ((string, string)[])[("Right", "R"), ("Rt", "R"), ("Left", "L"), ("Lt", "L")])
        {
            if (written.Length > ending.Length + 1 && written.EndsWith(ending, StringComparison.Ordinal) && char.IsLower(written[^(ending.Length + 1)]))
            {
                return new FormationWord(written[..^ending.Length].TrimEnd(s_breaks), side);
            }
        }

        return new FormationWord(written, "");
    }
}
