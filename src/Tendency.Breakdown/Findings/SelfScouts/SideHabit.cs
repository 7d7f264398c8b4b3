using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;
using Tendency.Inference.Multiplicity;
using Tendency.Inference.Shrinkage;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>A side we go to whatever the look, or on third and long: nothing else to compare with, so it is held against an even split.</summary>
internal static class SideHabit
{
    private const double Even = 0.5;

    /// <summary>Plays the even split is worth.</summary>
    private const double Shrink = BackOff.UsualStrength;

    private sealed record Counted(IReadOnlyList<TellCondition> Conditions, int[] Rows, string Value, int Count, double P);

    /// <returns>Habits whose exact binomial test passes, paid for by Benjamini and Hochberg over the situations tried.</returns>
    public static IEnumerable<Tell> Of(PlayLog plays, ScoutQuestion question, SelfScoutOptions options)
    {
        var values = question.IsSide ? CrossTab.Values(plays, question.Outcome) : [];
        if (values.Count is 0 or > 2)
        {
            return [];
        }

        var column = plays.Dimension(question.Outcome);
        var longYardage = plays.Category(ScoutColumns.LongYardage);
        var all = Enumerable.Range(0, plays.Rows).Where(row => column.Codes[row] > 0).ToArray();
        Counted[] tried =
        [
            .. Try([], all),
            .. Try([new TellCondition(ScoutColumns.LongYardage, "yes")], [.. all.Where(row => longYardage[row] == "yes")]),
        ];
        var q = AdjustedP.BenjaminiHochberg([.. tried.Select(t => t.P)]);
        return tried.Index()
            .Where(t => q[t.Index] <= options.Fdr && t.Item.Count >= question.LeastShare * t.Item.Rows.Length)
            .Select(t => Write(plays, column, t.Item, q[t.Index], options.Level));

        // The two tails of an even split are alike; P(X >= x) is the beta distribution's lower tail.
        IEnumerable<Counted> Try(IReadOnlyList<TellCondition> conditions, int[] rows)
        {
            if (rows.Length >= options.MinPlays)
            {
                var most = rows.GroupBy(row => column[row]).MaxBy(g => g.Count())!;
                var tail = BetaDistribution.Lower(most.Count(), rows.Length - most.Count() + 1, Even);
                yield return new Counted(conditions, rows, most.Key, most.Count(), Math.Min(1, 2 * tail));
            }
        }
    }

    private static Tell Write(PlayLog plays, CategoryColumn column, Counted found, double q, double level)
    {
        var games = plays.Category(ColumnNames.Game);
        var range = OneProportion.Wilson(found.Count, found.Rows.Length, level);
        return new Tell
        {
            Rank = 0,
            Conditions = found.Conditions,
            Outcome = found.Value,
            Plays = found.Rows.Length,
            Count = found.Count,
            Range = range,
            BaseShare = Even,
            DifferenceRange = new Interval(range.Low - Even, range.High - Even),
            PValue = found.P,
            QValue = q,
            ShrunkShare = (found.Count + (Even * Shrink)) / (found.Rows.Length + Shrink),
            CorrectedDifference = ((double)found.Count / found.Rows.Length) - Even,
            HoldsWithinDownAndDistance = null,
            ByGame = [.. found.Rows.GroupBy(row => games.Codes[row]).OrderBy(g => g.Key).Select(g =>
                new TellGame(games.Levels[g.Key], g.Count(), g.Count(row => column[row] == found.Value), Even, false))],
            Rows = found.Rows,
            PlaysList = [.. found.Rows.Select(row => $"{games[row]}:{plays.Number(ColumnNames.Play)[row]}")],
        };
    }
}
