using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Functions;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>How large a part of the accepted rate of false alarms a pair of situation and outcome may spend, before its calls are looked at.</summary>
/// <remarks>
/// Benjamini and Hochberg's rule holds for any weights that do not depend on the outcome in the situation (Genovese, Roeder and Wasserman
/// 2006, doi:10.1093/biomet/93.3.509). Two things are known beforehand: whether a habit of ordinary size could show on so few plays at all,
/// and that a look gives a call away more often than the hash or the score does (common practice, no source).
/// </remarks>
internal static class PairWeight
{
    /// <summary>Below this many pairs there is nothing worth saving: all weigh alike.</summary>
    private const int FewPairs = 30;

    /// <summary>Log odds of an ordinary habit: from half of the plays to nearly four in five.</summary>
    private const double HabitLogOdds = 1.25;

    /// <summary>A situation with this chance to pass by itself, if there is a habit, weighs as much as any.</summary>
    private const double EvenChance = 0.5;

    /// <summary>What each of these costs a situation that it is part of.</summary>
    private const double CircumstanceFactor = 0.5;

    private static readonly string[] s_circumstances =
        [ColumnNames.Hash, ColumnNames.FieldZone, ColumnNames.ScoreState, ColumnNames.FirstOfSeries, ColumnNames.PreviousCall];

    /// <summary>Whether the dimension says where and when the ball is snapped, not how they line up.</summary>
    public static bool IsCircumstance(string dimension) => s_circumstances.Contains(dimension);

    /// <summary>Factor for what a situation is made of; 1 for every dimension that the staff named itself.</summary>
    public static double Prior(ReadOnlySpan<int> dimensions, SearchGround ground, TellOptions options)
    {
        var prior = 1.0;
        foreach (var d in dimensions)
        {
            prior *= options.Dimensions.Count == 0 && IsCircumstance(ground.Dimensions[d].Name) ? CircumstanceFactor : 1;
        }

        return prior;
    }

    /// <param name="variance">Variance of the situation's hits when calls are exchanged within games: depends on plays and totals only.</param>
    /// <param name="prior">See <see cref="Prior"/>.</param>
    /// <param name="pairs">Pairs searched.</param>
    public static double Of(double variance, double prior, int pairs, TellOptions options)
    {
        if (pairs <= FewPairs || options.Dimensions.Count > 0)
        {
            return 1;
        }

        var bar = -NormalDistribution.Quantile(options.Fdr / pairs / 2);
        return prior * Math.Min(1, NormalDistribution.Upper(bar - (HabitLogOdds * Math.Sqrt(variance))) / EvenChance);
    }
}
