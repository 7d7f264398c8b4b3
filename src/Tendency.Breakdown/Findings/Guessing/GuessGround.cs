using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings.Searching;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>The plays guesses are tried on: outcome, game, what was seen.</summary>
/// <param name="Rows">Row in the play log of each play with the outcome charted.</param>
/// <param name="Outcomes">Values that occur; for calls, run before pass.</param>
/// <param name="Outcome">Outcome of each play.</param>
/// <param name="Game">Game of each play, in order of first appearance.</param>
/// <param name="Path">Down and down-and-distance of each play, -1 where not charted: the back-off's levels.</param>
internal sealed record GuessGround(
    int[] Rows, IReadOnlyList<string> Outcomes, int[] Outcome, int[] Game, int Games, int[][] Path, Features Seen)
{
    /// <summary>Whether it is runs and passes that are guessed, of which something is known beforehand.</summary>
    public bool IsCall { get; init; }

    public bool IsTwoWay => Outcomes.Count == 2;

    public static GuessGround From(PlayLog plays, string outcomeColumn)
    {
        var column = plays.Dimension(outcomeColumn);
        var rows = Enumerable.Range(0, plays.Rows).Where(row => column.Codes[row] > 0).ToArray();
        var kept = plays.Take(rows);
        var every = Enumerable.Range(0, rows.Length).ToArray();
        var outcome = SearchDimension.From(kept.Dimension(outcomeColumn), every, 1);
        var games = SearchDimension.From(kept.Category(ColumnNames.Game), every, 1);
        int[][] path = TellDimensions.AreNested(outcomeColumn, ColumnNames.DownDistance)
            ? []
            : [.. ((string[])[ColumnNames.Down, ColumnNames.DownDistance]).Select(name => SearchDimension.From(kept.Dimension(name), every, 1).Codes)];
        return new GuessGround(rows, outcome.Values, outcome.Codes, games.Codes, games.Values.Count, path, Features.Of(kept, outcomeColumn))
        {
            IsCall = outcomeColumn == ColumnNames.Call,
        };
    }
}
