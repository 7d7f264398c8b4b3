using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>Score and clock: what the offense needs.</summary>
internal static class GameState
{
    public static CategoryColumn[] Columns(PlayLog log, Boundaries boundaries)
    {
        var margins = log.Number(Margin);
        var quarters = log.Number(Quarter);
        var clocks = log.Number(Clock);
        var two = boundaries.TwoScores;
        string[] scores = [$"behind {two}+", $"behind 1–{two - 1}", "tied", $"ahead 1–{two - 1}", $"ahead {two}+"];
        string Score(int row) => margins[row] is not int margin ? ""
            : margin <= -two ? scores[0]
            : margin < 0 ? scores[1]
            : margin == 0 ? scores[2]
            : margin < two ? scores[3] : scores[4];
        return
        [
            DimensionColumn.Create(ScoreState, log.Rows, scores, Score),
            DimensionColumn.Create(
                ClockState,
                log.Rows,
                ["normal", "two minute", "four minute"],
                row => State(quarters[row], clocks[row], margins[row], boundaries)),
        ];
    }

    /// <summary>
    /// Two minute: the last two minutes of a half, in the second half only when not leading. Four minute: the last four minutes of the game
    /// with a lead the clock can protect. Common practice, no source. Empty when quarter or clock, or a margin that decides, is not charted.
    /// </summary>
    private static string State(int? quarter, int? clock, int? margin, Boundaries boundaries)
    {
        if (quarter is null || (quarter is 2 or 4 && clock is null))
        {
            return "";
        }

        if (quarter == 2)
        {
            return clock <= boundaries.TwoMinuteSeconds ? "two minute" : "normal";
        }

        if (quarter != 4 || clock > Math.Max(boundaries.TwoMinuteSeconds, boundaries.FourMinuteSeconds))
        {
            return "normal";
        }

        return margin is not int lead ? ""
            : lead <= 0 ? (clock <= boundaries.TwoMinuteSeconds ? "two minute" : "normal")
            : lead <= boundaries.FourMinuteLead && clock <= boundaries.FourMinuteSeconds ? "four minute" : "normal";
    }
}
