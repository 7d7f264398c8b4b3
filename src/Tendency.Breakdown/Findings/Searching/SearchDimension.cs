using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>A dimension of the search: one code a play, -1 where it is not charted or the value has too few plays to be looked at.</summary>
internal sealed record SearchDimension(string Name, IReadOnlyList<string> Values, int[] Codes)
{
    public static SearchDimension From(CategoryColumn column, ReadOnlySpan<int> rows, int minPlays)
    {
        var plays = new int[column.Levels.Count];
        foreach (var row in rows)
        {
            plays[column.Codes[row]]++;
        }

        var values = new List<string>();
        var newCode = new int[plays.Length];
        for (var code = 0; code < plays.Length; code++)
        {
            newCode[code] = code > 0 && plays[code] >= minPlays ? values.Count : -1;
            if (newCode[code] >= 0)
            {
                values.Add(column.Levels[code]);
            }
        }

        var codes = new int[rows.Length];
        for (var i = 0; i < codes.Length; i++)
        {
            codes[i] = newCode[column.Codes[rows[i]]];
        }

        return new SearchDimension(column.Name, values, codes);
    }

    /// <summary>Whether every play has the same value, so that the dimension sets nothing apart.</summary>
    public bool IsConstant => Values.Count == 0 || (Values.Count == 1 && !Codes.Contains(-1));

    /// <summary>Whether the two split the plays alike, whatever their values are called.</summary>
    public bool SplitsLike(SearchDimension other)
    {
        if (Values.Count != other.Values.Count)
        {
            return false;
        }

        var match = new int[Values.Count];
        Array.Fill(match, -2);
        for (var i = 0; i < Codes.Length; i++)
        {
            var mine = Codes[i];
            if (mine < 0 || other.Codes[i] < 0)
            {
                if (mine != other.Codes[i])
                {
                    return false;
                }
            }
            else if (match[mine] == -2)
            {
                match[mine] = other.Codes[i];
            }
            else if (match[mine] != other.Codes[i])
            {
                return false;
            }
        }

        return match.Distinct().Count() == match.Length;
    }
}
