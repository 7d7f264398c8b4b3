using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Clusters;

namespace Tendency.Breakdown.Counts;

/// <summary>How alike the plays of one game are in an outcome, 0 to 1: those of the same down and distance, and those of different ones.</summary>
/// <param name="InSituation">Pooled over the disjoint down-and-distance cells: a single cell of three to five games can not show its own.</param>
/// <param name="AcrossSituations">Of whole games, down and distance taken out.</param>
/// <remarks>Each at least 0.02 with four games or fewer, which can not show that there is none (<see cref="WithinGroupCorrelation.Usable"/>).</remarks>
internal readonly record struct GameCorrelation(double InSituation, double AcrossSituations)
{
    /// <summary>Of one outcome against all others; null = of all outcomes of the column at once, what a mix rests on.</summary>
    public static GameCorrelation Of(PlayLog plays, string column, string? outcome)
    {
        var answers = plays.Dimension(column);
        var cells = SituationOf(plays, column);
        var games = plays.Category(ColumnNames.Game);
        var rows = Enumerable.Range(0, plays.Rows).Where(row => answers.Codes[row] > 0).ToArray();
        var asked = outcome is null ? Enumerable.Range(1, answers.Levels.Count - 1).ToArray() : [answers.CodeOf(outcome)];
        var counted = rows.GroupBy(row => cells.Codes[row]).Select(cell => cell.ToLookup(row => games.Codes[row])).ToArray();
        var played = rows.Select(row => games.Codes[row]).Distinct().ToArray();
        GroupCount[][][] tables = [.. asked.Select(code => counted.Select(cell => played.Select(game =>
            new GroupCount(cell[game].Count(row => answers.Codes[row] == code), cell[game].Count())).ToArray()).ToArray())];
        return new GameCorrelation(
            WithinGroupCorrelation.Pooled(tables.SelectMany(table => table)).Usable,
            WithinGroupCorrelation.AcrossCells(tables).Usable);
    }

    /// <summary>Down and distance of every play, the plays of a game that lie closest; nameless and empty where it is not charted or is itself what is asked.</summary>
    public static CategoryColumn SituationOf(PlayLog plays, string column) => plays.Category(column == ColumnNames.DownDistance ? "" : ColumnNames.DownDistance);
}
