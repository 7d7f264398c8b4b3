using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Glossaries;

namespace Tendency.Breakdown.Charts.Charters;

/// <summary>Which games of two charts are the same: by label, else, where each has one game left, that one.</summary>
internal static class GamePairs
{
    public static IReadOnlyList<(int[] A, int[] B)> Of(PlayLog a, PlayLog b)
    {
        var (gamesA, gamesB) = (Games(a), Games(b));
        var pairs = new List<(int[], int[])>();
        foreach (var key in gamesA.Keys.Where(gamesB.ContainsKey).ToArray())
        {
            pairs.Add((gamesA[key], gamesB[key]));
            _ = gamesA.Remove(key);
            _ = gamesB.Remove(key);
        }

        if (gamesA.Count == 1 && gamesB.Count == 1)
        {
            pairs.Add((gamesA.Values.Single(), gamesB.Values.Single()));
        }

        return pairs;
    }

    private static Dictionary<string, int[]> Games(PlayLog log) =>
        Enumerable.Range(0, log.Rows).GroupBy(row => Glossary.Key(log.Category(ColumnNames.Game)[row]), StringComparer.Ordinal)
            .ToDictionary(game => game.Key, game => game.OrderBy(row => log.Number(ColumnNames.Play)[row]).ToArray(), StringComparer.Ordinal);
}
