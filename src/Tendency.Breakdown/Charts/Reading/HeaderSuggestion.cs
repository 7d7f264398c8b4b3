using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Problems;

namespace Tendency.Breakdown.Charts.Reading;

/// <summary>The column of ours that a staff's header probably means; only ever offered, never taken.</summary>
internal static class HeaderSuggestion
{
    // Plain words for what our column holds.
    private static readonly Dictionary<string, string> s_words = new(StringComparer.Ordinal)
    {
        ["togo"] = ColumnNames.Distance,
        ["yardstogo"] = ColumnNames.Distance,
        ["yardline"] = ColumnNames.BallOn,
        ["spot"] = ColumnNames.BallOn,
        ["fieldposition"] = ColumnNames.BallOn,
        ["yards"] = ColumnNames.Gain,
        ["gained"] = ColumnNames.Gain,
        ["yardsgained"] = ColumnNames.Gain,
        ["period"] = ColumnNames.Quarter,
        ["time"] = ColumnNames.Clock,
        ["timeleft"] = ColumnNames.Clock,
        ["scoredifference"] = ColumnNames.Margin,
        ["drive"] = ColumnNames.Series,
        ["possession"] = ColumnNames.Series,
        ["snap"] = ColumnNames.Play,
        ["no"] = ColumnNames.Play,
        ["number"] = ColumnNames.Play,
        ["#"] = ColumnNames.Play,
        ["opponent"] = ColumnNames.Game,
        ["runpass"] = ColumnNames.Call,
        ["r/p"] = ColumnNames.Call,
        ["type"] = ColumnNames.Call,
        ["concept"] = ColumnNames.PassConcept,
        ["scheme"] = ColumnNames.RunScheme,
        ["backfield"] = ColumnNames.BackSide,
        ["blitz"] = ColumnNames.PressureSide,
        ["comment"] = ColumnNames.Note,
        ["comments"] = ColumnNames.Note,
        ["notes"] = ColumnNames.Note,
        ["td"] = ColumnNames.Touchdown,
        ["receiver"] = ColumnNames.Target,
    };

    /// <param name="header">The header as written.</param>
    /// <param name="free">Our columns that no header has named.</param>
    /// <returns>Our column's name; empty when none is near.</returns>
    public static string For(string header, IReadOnlyCollection<string> free)
    {
        var key = ColumnCatalogue.Key(header);
        if (s_words.TryGetValue(key, out var meant) && free.Contains(meant))
        {
            return meant;
        }

        return NearestWord.In(free, header)
            ?? free.Where(name => IsShortFor(key, ColumnCatalogue.Key(name))).MinBy(name => name.Length)
            ?? free.FirstOrDefault(name => name.Length >= 4 && key.Contains(ColumnCatalogue.Key(name), StringComparison.Ordinal))
            ?? "";
    }

    // dist, dn, qtr: the first letter and further letters in their order.
    private static bool IsShortFor(string key, string name)
    {
        if (key.Length < 2 || key.Length >= name.Length || key[0] != name[0])
        {
            return false;
        }

        var at = 0;
        foreach (var letter in name)
        {
            at += at < key.Length && key[at] == letter ? 1 : 0;
        }

        return at == key.Length && key[^1] is not ('.' or ' ') && (name.StartsWith(key, StringComparison.Ordinal) || name[^1] == key[^1]);
    }
}
