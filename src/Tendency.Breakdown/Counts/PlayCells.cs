using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Counts;

/// <summary>Gives every play the number of its cell: the combination of its codes in several columns.</summary>
/// <remarks>
/// Codes are combined column by column over the frame's buffers (cell = cell so far × levels + code). Where that would leave far more
/// cells than plays, the cells in use are numbered afresh, so memory follows the plays and not the product of the levels.
/// </remarks>
internal sealed class PlayCells
{
    private const int DenseLimit = 1 << 20;

    private readonly ushort[][] _codesOfCell;

    private PlayCells(int[] cellOfPlay, ushort[][] codesOfCell) => (CellOfPlay, _codesOfCell) = (cellOfPlay, codesOfCell);

    /// <summary>Cell number of each play.</summary>
    public int[] CellOfPlay { get; }

    /// <summary>How many cells there are; some may be empty.</summary>
    public int Count => _codesOfCell.Length;

    /// <summary>Codes of a cell, one a column.</summary>
    public ReadOnlySpan<ushort> CodesOf(int cell) => _codesOfCell[cell];

    public static PlayCells Of(PlayLog log, IEnumerable<CategoryColumn> columns) =>
        columns.Aggregate(new PlayCells(new int[log.Rows], [[]]), (cells, column) => cells.SplitBy(column));

    /// <summary>Number of plays in each cell.</summary>
    public int[] Tallies()
    {
        var tallies = new int[Count];
        foreach (var cell in CellOfPlay)
        {
            tallies[cell]++;
        }

        return tallies;
    }

    /// <summary>The same cells, each split by the values of one more column.</summary>
    public PlayCells SplitBy(CategoryColumn column) =>
        (long)Count * column.Levels.Count <= DenseLimit ? SplitEvenly(column) : SplitAsNeeded(column);

    private PlayCells SplitEvenly(CategoryColumn column)
    {
        var levels = column.Levels.Count;
        var codes = column.Codes;
        var cellOfPlay = new int[CellOfPlay.Length];
        for (var play = 0; play < cellOfPlay.Length; play++)
        {
            cellOfPlay[play] = (CellOfPlay[play] * levels) + codes[play];
        }

        return new PlayCells(cellOfPlay, [.. _codesOfCell.SelectMany(outer => Enumerable.Range(0, levels).Select(code => (ushort[])[.. outer, (ushort)code]))]);
    }

    private PlayCells SplitAsNeeded(CategoryColumn column)
    {
        var codes = column.Codes;
        var numbers = new Dictionary<(int, ushort), int>();
        var codesOfCell = new List<ushort[]>();
        var cellOfPlay = new int[CellOfPlay.Length];
        for (var play = 0; play < cellOfPlay.Length; play++)
        {
            var key = (CellOfPlay[play], codes[play]);
            if (!numbers.TryGetValue(key, out var number))
            {
                number = numbers.Count;
                numbers.Add(key, number);
                codesOfCell.Add([.. _codesOfCell[key.Item1], codes[play]]);
            }

            cellOfPlay[play] = number;
        }

        return new PlayCells(cellOfPlay, [.. codesOfCell]);
    }
}
