using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Counts;

/// <summary>One outcome in one combination.</summary>
/// <param name="By">Value of each dimension counted by, in the order asked for.</param>
/// <param name="Outcome">The outcome.</param>
/// <param name="Tally">Plays with the outcome among those of the combination in which an outcome is charted.</param>
public sealed record CrossTabRow(IReadOnlyList<string> By, string Outcome, Tally Tally);

/// <summary>How often each outcome occurs in each combination of situations.</summary>
public static class CrossTab
{
    /// <summary>Counts plays. A play with a blank in any of the dimensions belongs to no combination; one without an outcome is not counted.</summary>
    /// <param name="plays">The counted plays.</param>
    /// <param name="by">Columns or derived dimensions; none = all plays together.</param>
    /// <param name="of">The outcome's column or dimension.</param>
    /// <returns>One row for each combination and outcome that occurs, in the order of the levels.</returns>
    public static IReadOnlyList<CrossTabRow> Count(PlayLog plays, IReadOnlyList<string> by, string of)
    {
        var columns = by.Select(plays.Dimension).ToArray();
        var outcome = plays.Dimension(of);
        var combinations = PlayCells.Of(plays, columns);
        var cells = combinations.SplitBy(outcome);
        var counts = cells.Tallies();

        var combinationOfCell = new int[cells.Count];
        for (var play = 0; play < plays.Rows; play++)
        {
            combinationOfCell[cells.CellOfPlay[play]] = combinations.CellOfPlay[play];
        }

        // Cells in use whose every code is charted: those of a combination and an outcome.
        var charted = Enumerable.Range(0, cells.Count).Where(cell => counts[cell] > 0 && !cells.CodesOf(cell).Contains((ushort)0)).ToArray();
        var playsInCombination = new int[combinations.Count];
        foreach (var cell in charted)
        {
            playsInCombination[combinationOfCell[cell]] += counts[cell];
        }

        Array.Sort(charted, (a, b) => cells.CodesOf(a).SequenceCompareTo(cells.CodesOf(b)));
        return [.. charted.Select(cell => Row(cell))];

        CrossTabRow Row(int cell)
        {
            var words = columns.Append(outcome).Select((column, i) => column.Levels[cells.CodesOf(cell)[i]]).ToArray();
            return new CrossTabRow(words[..^1], words[^1], new Tally(counts[cell], playsInCombination[combinationOfCell[cell]]));
        }
    }

    /// <summary>Tally of one value of a column among the plays in which the column is charted.</summary>
    public static Tally Share(PlayLog plays, string of, string value)
    {
        var column = plays.Dimension(of);
        var code = column.CodeOf(value);
        return new Tally(code > 0 ? column.Codes.Count((ushort)code) : 0, column.ChartedCount);
    }

    /// <summary>Values of a column with their counts, most frequent first; ties keep the order of the levels.</summary>
    public static IReadOnlyList<(string Value, int Count)> Values(PlayLog plays, string of)
    {
        var column = plays.Dimension(of);
        var counts = new int[column.Levels.Count];
        foreach (var code in column.Codes)
        {
            counts[code]++;
        }

        return [.. counts.Index().Skip(1).Where(pair => pair.Item > 0).OrderByDescending(pair => pair.Item).Select(pair => (column.Levels[pair.Index], pair.Item))];
    }
}
