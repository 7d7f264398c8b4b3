using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Counts.Scripts;

/// <summary>Picks real plays so that the script keeps the mix also in what the strata do not hold: back's side, down and distance, hash, motion.</summary>
internal sealed class PlayPicks
{
    private static readonly string[] s_balanced = [ColumnNames.BackSide, ColumnNames.DownDistance, ColumnNames.Hash, ColumnNames.Motion];

    private readonly CategoryColumn[] _columns;
    private readonly double[][] _missing;
    private readonly int[] _used;
    private readonly int[] _lot;

    /// <param name="plays">The plays of the period.</param>
    /// <param name="snaps">Snaps of the script.</param>
    /// <param name="chance">Decides between plays that serve the mix alike.</param>
    public PlayPicks(PlayLog plays, int snaps, Random chance)
    {
        _columns = [.. s_balanced.Select(plays.Category)];
        _missing = [.. _columns.Select(column => Quotas(column, snaps))];
        _used = new int[plays.Rows];
        _lot = [.. Enumerable.Range(0, plays.Rows)];
        chance.Shuffle(_lot);
    }

    /// <summary>The least used of the rows; among those the one whose values the script lacks most.</summary>
    public int Pick(IReadOnlyList<int> rows)
    {
        var picked = rows.OrderBy(row => _used[row]).ThenByDescending(Lacking).ThenBy(row => _lot[row]).First();
        _used[picked]++;
        for (var i = 0; i < _columns.Length; i++)
        {
            _missing[i][_columns[i].Codes[picked]]--;
        }

        return picked;
    }

    private static double[] Quotas(CategoryColumn column, int snaps)
    {
        var quotas = new double[column.Levels.Count];
        foreach (var code in column.Codes)
        {
            quotas[code] += (double)snaps / column.Codes.Length;
        }

        return quotas;
    }

    private double Lacking(int row) => _columns.Index().Sum(column => Math.Round(_missing[column.Index][column.Item.Codes[row]], 9));
}
