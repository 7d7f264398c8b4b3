using Tendency.Booklet.Blocks;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Intervals;

namespace Tendency.Booklet.Pages.Counting;

/// <summary>Mean gain of some plays with half the width of its range.</summary>
/// <param name="Plays">Plays whose gain is charted.</param>
/// <param name="Mean">Yards a play; 0 without plays.</param>
/// <param name="Half">Yards; null for fewer than five plays. Gains of a game are taken to be as alike as its successes.</param>
internal sealed record Yards(int Plays, double Mean, double? Half)
{
    public static Yards Of(Study study, PlayLog plays)
    {
        var column = plays.Number(ColumnNames.Gain);
        var gains = Enumerable.Range(0, plays.Rows).Select(row => column[row]).OfType<int>().Select(gain => (double)gain).ToArray();
        if (gains.Length < Share.FewestPlays)
        {
            return new Yards(gains.Length, gains.Length == 0 ? 0 : gains.Average(), null);
        }

        return new Yards(gains.Length, gains.Average(), OneMean.Student(gains, study.Level).Width / 2 * Widening(study, plays));
    }

    // What playing in games costs: the square root of plays over effective plays.
    private static double Widening(Study study, PlayLog plays)
    {
        var judged = plays.Dimension(ColumnNames.Success).ChartedCount;
        return judged == 0 ? 1 : Math.Sqrt(judged / study.Ranges.EffectivePlays(plays, ColumnNames.Success, "yes"));
    }

    /// <summary>"4.4 ± 1.4"; "too few" under five plays.</summary>
    public string Printed => Half is { } half ? $"{Figures.Number(Mean)} {Figures.PlusMinus(half)}" : Plays == 0 ? "" : "too few";
}
