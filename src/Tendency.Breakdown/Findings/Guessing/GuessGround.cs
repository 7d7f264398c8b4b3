using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings.Searching;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>The plays guesses are tried on: outcome, game, what was seen.</summary>
/// <param name="Rows">Row in the play log of each play with the outcome charted.</param>
/// <param name="Outcomes">Values that occur; for calls, run before pass.</param>
/// <param name="Outcome">Outcome of each play.</param>
/// <param name="Game">Game of each play, in order of first appearance.</param>
/// <param name="Path">Down and down-and-distance of each play, -1 where not charted; empty where the outcome follows from them.</param>
/// <param name="Snaps">Each play as it stands before the snap.</param>
internal sealed record GuessGround(
    int[] Rows, IReadOnlyList<string> Outcomes, int[] Outcome, int[] Game, int Games, int[][] Path, Snapshot[] Snaps, Features Seen)
{
    // From so many on they are a class of their own, as a staff may ask for.
    private const int FewestOptions = 8;

    /// <summary>Whether it is runs and passes that are guessed, of which something is known beforehand.</summary>
    public bool IsCall { get; init; }

    /// <summary>Options that were neither run nor pass, left out of the guess.</summary>
    public int Undecided { get; private init; }

    public bool IsTwoWay => Outcomes.Count == 2;

    public static GuessGround From(PlayLog plays, string outcomeColumn)
    {
        var column = plays.Dimension(outcomeColumn);

        // The odd run-pass option whose result is not charted was neither: there is nothing to score a guess of run or pass against.
        var option = outcomeColumn == ColumnNames.Call ? column.CodeOf("rpo") : -1;
        var undecided = option > 0 && column.Codes.Count((ushort)option) < FewestOptions ? option : -1;
        var rows = Enumerable.Range(0, plays.Rows).Where(row => column.Codes[row] > 0 && column.Codes[row] != undecided).ToArray();
        var kept = plays.Take(rows);
        var every = Enumerable.Range(0, rows.Length).ToArray();
        var outcome = SearchDimension.From(kept.Dimension(outcomeColumn), every, 1);
        var games = SearchDimension.From(kept.Category(ColumnNames.Game), every, 1);
        int[][] path = TellDimensions.AreNested(outcomeColumn, ColumnNames.DownDistance)
            ? []
            : [.. ((string[])[ColumnNames.Down, ColumnNames.DownDistance]).Select(name => SearchDimension.From(kept.Dimension(name), every, 1).Codes)];
        return new GuessGround(rows, outcome.Values, outcome.Codes, games.Codes, games.Values.Count, path, Snapshot.Of(kept), Features.Of(kept, outcomeColumn))
        {
            IsCall = outcomeColumn == ColumnNames.Call,
            Undecided = column.ChartedCount - rows.Length,
        };
    }

    /// <summary>Two outcomes need one model; of more, each gets its own against the rest, and the probabilities are scaled to one.</summary>
    /// <param name="forecast">From an outcome, and whether each play learned from had it, to its probability for each play asked about.</param>
    /// <returns>Probability of each outcome for each play asked about.</returns>
    public double[][] EachOutcome(int[] learn, Func<int, bool[], double[]> forecast)
    {
        var models = Enumerable.Range(0, IsTwoWay ? 1 : Outcomes.Count)
            .Select(outcome => forecast(outcome, Array.ConvertAll(learn, play => Outcome[play] == outcome)))
            .ToArray();
        return [.. Enumerable.Range(0, models[0].Length).Select(i =>
        {
            if (IsTwoWay)
            {
                return [models[0][i], 1 - models[0][i]];
            }

            var sum = models.Sum(m => m[i]);
            return models.Select(m => m[i] / sum).ToArray();
        })];
    }
}
