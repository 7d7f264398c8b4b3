using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>One play as it stands before the snap; null or empty where not charted.</summary>
internal readonly record struct Snapshot(
    int? Down, int? Distance, int? YardsToGoal, int? Quarter, int? Clock, int? Margin, string BackSet, string Personnel, string Tempo, string Family)
{
    private static readonly string[] s_hurried = ["no huddle", "no-huddle", "nohuddle", "fast", "hurry"];

    /// <summary>Seconds to the end of regulation; the middle of the quarter when the clock is not charted.</summary>
    public double? SecondsLeft => Quarter is not int quarter ? null : quarter >= 5 ? Clock ?? 300 : ((4 - quarter) * 900) + (Clock ?? 450);

    public bool IsNoHuddle
    {
        get
        {
            var tempo = Tempo;
            return Array.Exists(s_hurried, word => tempo.Contains(word, StringComparison.OrdinalIgnoreCase));
        }
    }

    public static Snapshot[] Of(PlayLog plays)
    {
        var down = plays.Category(ColumnNames.Down);
        var (distance, toGoal, quarter) = (plays.Number(ColumnNames.Distance), plays.Number(ColumnNames.YardsToGoal), plays.Number(ColumnNames.Quarter));
        var (clock, margin) = (plays.Number(ColumnNames.Clock), plays.Number(ColumnNames.Margin));
        var (backSet, personnel, tempo) = (plays.Category(ColumnNames.BackSet), plays.Category(ColumnNames.Personnel), plays.Category(ColumnNames.Tempo));
        var family = plays.Category(ColumnNames.FormationFamily);
        return [.. Enumerable.Range(0, plays.Rows).Select(row => new Snapshot(
            down[row] is ['1' or '2' or '3' or '4'] digit ? digit[0] - '0' : null,
            distance[row],
            toGoal[row],
            quarter[row],
            clock[row],
            margin[row],
            backSet[row],
            personnel[row],
            tempo[row],
            family[row]))];
    }
}
