using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings;

/// <summary>Columns whose values are no answers that a call could be guessed among.</summary>
public static class UnguessableColumns
{
    /// <summary>Why a column is not guessed, and what to guess instead; empty where it can be.</summary>
    public static string WhyNot(string column) => column switch
    {
        Game or Play or Series or Clip or Note => $"{column} names the snap; it is nothing they call. Guess {Call}, {RunScheme}, {RunTo} or {PassConcept}.",
        Gain => Number(column, $"{Success} or {Explosive}"),
        Distance => Number(column, DistanceBand),
        BallOn or YardsToGoal => Number(column, FieldZone),
        Margin => Number(column, ScoreState),
        Clock => Number(column, ClockState),
        PenaltyYards => Number(column, PenaltyOn),
        _ => "",
    };

    private static string Number(string column, string instead) => $"{column} is a number, not one of a few answers. Guess {instead}.";
}
