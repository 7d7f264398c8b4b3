using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Situations;

/// <summary>A column or derived dimension and the values asked for; holds for a play whose value is one of them.</summary>
public sealed record Condition(string Name, IReadOnlyList<string> Values)
{
    /// <summary>Which rows fulfil the condition. Case and the kind of dash do not matter.</summary>
    public bool[] Rows(PlayLog log)
    {
        var column = log.Dimension(Name);
        var wanted = Values.Select(Key).ToHashSet(StringComparer.Ordinal);
        var byCode = column.Levels.Select((level, code) => code > 0 && wanted.Contains(Key(level))).ToArray();
        var rows = new bool[log.Rows];
        for (var row = 0; row < rows.Length; row++)
        {
            rows[row] = byCode[column.Codes[row]];
        }

        return rows;
    }

    public override string ToString() => $"{Name}={string.Join(',', Values)}";

    private static string Key(string value) => value.Trim().Replace('\u2013', '-').Replace('\u2212', '-').ToLowerInvariant();
}
