namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>Where the men on the line stand and which gap is theirs by alignment.</summary>
internal static class Technique
{
    private const int Outermost = 99;

    private static readonly Dictionary<string, (int Gap, bool SetsEdge)> Known = new(StringComparer.Ordinal)
    {
        ["0"] = (0, false),
        ["1"] = (0, false),
        ["2i"] = (0, false),
        ["2"] = (0, false),
        ["3"] = (1, false),
        ["4i"] = (1, false),
        ["4"] = (1, false),
        ["5"] = (2, true),
        ["6"] = (2, true),
        ["7"] = (2, true),
        ["8"] = (Outermost, true),
        ["9"] = (Outermost, true),
        ["edge"] = (Outermost, true),
        ["backer"] = (Outermost, true),
    };

    public static IEnumerable<string> All => Known.Keys;

    public static bool IsKnown(string technique) => Known.ContainsKey(technique);

    /// <summary>Index of the gap that is his by alignment (0 = A), never beyond the outermost of the side.</summary>
    public static int Gap(string technique, int gaps) => Math.Min(Known[technique].Gap, gaps - 1);

    /// <summary>How far out he stands among the men of his side: techniques are numbered from the inside out, stand-up edges beyond all.</summary>
    public static int Order(string technique) => int.TryParse(technique.TrimEnd('i'), out var number) ? (2 * number) - (technique.EndsWith('i') ? 1 : 0) : Outermost;

    /// <summary>Whether he can hold the edge from the line: nobody of the offense's five stands outside him.</summary>
    public static bool SetsEdge(string technique) => Known[technique].SetsEdge;
}
