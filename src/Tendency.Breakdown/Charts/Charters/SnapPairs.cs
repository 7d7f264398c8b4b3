using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Charts.Charters;

/// <summary>Which rows of two charts are the same snap: the best common sequence (Needleman and Wunsch 1970, doi:10.1016/0022-2836(70)90057-4).</summary>
internal static class SnapPairs
{
    // What two charters of one snap rarely get wrong both; a pair must agree on more than half of it to be the same snap.
    private static readonly (string Column, double Weight)[] s_evidence =
    [
        (ColumnNames.Down, 2), (ColumnNames.Distance, 2), (ColumnNames.YardsToGoal, 2), (ColumnNames.Gain, 2), (ColumnNames.Call, 1), (ColumnNames.Result, 1),
        (ColumnNames.Quarter, 1), (ColumnNames.Series, 0.5), (ColumnNames.Offense, 1),
    ];

    // A game has two hundred snaps at most; a table for far more is not a game and would only take memory.
    private const long MostCells = 4_000_000;

    /// <param name="a">One chart.</param>
    /// <param name="rowsA">Its rows of the game, in order.</param>
    /// <param name="b">The other chart.</param>
    /// <param name="rowsB">Its rows of the game, in order.</param>
    /// <returns>Pairs of rows in order; a row in no pair stands in one chart only.</returns>
    public static IReadOnlyList<(int A, int B)> Of(PlayLog a, int[] rowsA, PlayLog b, int[] rowsB)
    {
        if ((long)rowsA.Length * rowsB.Length > MostCells)
        {
            return ByNumber(a, rowsA, b, rowsB);
        }

        var (keysA, keysB) = (Keys(a, rowsA), Keys(b, rowsB));
        var (playsA, playsB) = (Plays(a, rowsA), Plays(b, rowsB));
        var best = new double[rowsA.Length + 1, rowsB.Length + 1];
        for (var i = 1; i <= rowsA.Length; i++)
        {
            for (var j = 1; j <= rowsB.Length; j++)
            {
                var paired = best[i - 1, j - 1] + Likeness(i - 1, j - 1);
                best[i, j] = Math.Max(paired, Math.Max(best[i - 1, j], best[i, j - 1]));
            }
        }

        var pairs = new List<(int, int)>();
        for (var (i, j) = (rowsA.Length, rowsB.Length); i > 0 && j > 0;)
        {
            var likeness = Likeness(i - 1, j - 1);
            if (likeness > 0 && best[i, j] == best[i - 1, j - 1] + likeness)
            {
                pairs.Add((rowsA[--i], rowsB[--j]));
            }
            else if (best[i, j] == best[i - 1, j])
            {
                i--;
            }
            else
            {
                j--;
            }
        }

        pairs.Reverse();
        return pairs;

        double Likeness(int i, int j)
        {
            var (agree, known) = (0.0, 0.0);
            for (var k = 0; k < s_evidence.Length; k++)
            {
                if (keysA[k][i].Length > 0 && keysB[k][j].Length > 0)
                {
                    known += s_evidence[k].Weight;
                    agree += keysA[k][i] == keysB[k][j] ? s_evidence[k].Weight : 0;
                }
            }

            // The same number speaks for the same snap, and decides between snaps that look alike.
            return known == 0 ? 0 : (agree / known) - 0.5 + (playsA[i] == playsB[j] ? 0.3 : 0);
        }
    }

    private static (int, int)[] ByNumber(PlayLog a, int[] rowsA, PlayLog b, int[] rowsB)
    {
        var numbered = rowsB.Where(row => b.Number(ColumnNames.Play)[row] is not null).GroupBy(row => b.Number(ColumnNames.Play)[row]!.Value).ToDictionary(group => group.Key, group => group.First());
        return [.. rowsA.Where(row => a.Number(ColumnNames.Play)[row] is int play && numbered.ContainsKey(play)).DistinctBy(row => a.Number(ColumnNames.Play)[row])
            .Select(row => (row, numbered[a.Number(ColumnNames.Play)[row]!.Value])).OrderBy(pair => pair.row)];
    }

    private static string[][] Keys(PlayLog log, int[] rows) =>
        [.. s_evidence.Select(evidence => log.Dimension(evidence.Column)).Select(column => rows.Select(row => column[row]).ToArray())];

    private static int?[] Plays(PlayLog log, int[] rows) => [.. rows.Select(row => log.Number(ColumnNames.Play)[row])];
}
