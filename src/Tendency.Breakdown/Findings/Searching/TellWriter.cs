using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;
using Tendency.Inference.Multiplicity;
using Tendency.Inference.Shrinkage;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>Works out all figures of one tell.</summary>
internal static class TellWriter
{
    /// <param name="foundWithout">By game: whether the search found it on the other games.</param>
    /// <param name="threshold">Largest p-value on the list.</param>
    public static Tell Write(SearchGround ground, PlayLog plays, Candidate candidate, bool[] foundWithout, double threshold, TellOptions options)
    {
        var outcome = candidate.OutcomeIn(ground);
        var cell = candidate.PlaysIn(ground);
        int n = cell.Length, all = ground.Rows.Length;
        int x = cell.Count(play => ground.Outcome[play] == outcome), hits = ground.Hits[outcome].Sum();
        var rest = Difference.Newcombe(x, n, hits - x, all - n, options.Level);
        var part = 1 - ((double)n / all);
        var rows = cell.Select(play => ground.Rows[play]).ToArray();
        return new Tell
        {
            Rank = 0,
            Conditions = Conditions(ground, candidate),
            Outcome = ground.Outcomes[outcome],
            Plays = n,
            Count = x,
            Range = OneProportion.Wilson(x, n, options.Level),
            BaseShare = (double)hits / all,
            DifferenceRange = new Interval(part * rest.Low, part * rest.High),
            PValue = candidate.P,
            QValue = candidate.Q,
            ShrunkShare = Shrunk(ground, candidate, outcome),
            CorrectedDifference = (((double)x / n) - ((double)hits / all)) * Kept(candidate, threshold),
            HoldsWithinDownAndDistance = WithinDownAndDistance(ground, plays, candidate, cell),
            ByGame = ByGame(ground, cell, outcome, foundWithout),
            Otherwise = Otherwise(ground, plays, candidate, outcome),
            Parent = Parent(ground, candidate, outcome),
            Rows = rows,
            PlaysList = [.. rows.Select(row => $"{plays.Category(ColumnNames.Game)[row]}:{plays.Number(ColumnNames.Play)[row]}")],
        };
    }

    /// <summary>The part of the effect that remains once it is known that only statistics past the list's threshold are reported.</summary>
    private static double Kept(Candidate candidate, double threshold)
    {
        var size = Math.Abs(candidate.Z);
        var limit = Math.Min(size, -NormalDistribution.Quantile(Math.Max(threshold, double.Epsilon) / 2));
        return size == 0 ? 0 : SelectionCorrection.ConditionalMean(size, limit) / size;
    }

    private static TellGame[] ByGame(SearchGround ground, int[] cell, int outcome, bool[] foundWithout) =>
        [.. cell.GroupBy(play => ground.Game[play]).OrderBy(g => g.Key).Select(g => new TellGame(
            ground.GameNames[g.Key],
            g.Count(),
            g.Count(play => ground.Outcome[play] == outcome),
            (double)ground.Hits[outcome][g.Key] / ground.GamePlays[g.Key],
            foundWithout[g.Key]))];

    // "Under center: run" is "gun: pass" over again where there is nothing else, and a coach wants to hear both.
    private static TellOtherHalf? Otherwise(SearchGround ground, PlayLog plays, Candidate candidate, int outcome)
    {
        if (candidate.Dimensions.Length > 1)
        {
            return null;
        }

        var all = SearchDimension.From(plays.Dimension(ground.Dimensions[candidate.Dimensions[0]].Name), ground.Rows, 1);
        if (all.Values.Count != 2)
        {
            return null;
        }

        var value = all.Values[0] == ground.Dimensions[candidate.Dimensions[0]].Values[candidate.Values[0]] ? 1 : 0;
        var told = ground.IsTwoWay ? 1 - outcome : outcome;
        var there = Enumerable.Range(0, all.Codes.Length).Where(play => all.Codes[play] == value).ToArray();
        return new TellOtherHalf(
            new TellCondition(all.Name, all.Values[value]), ground.Outcomes[told], there.Length, there.Count(play => ground.Outcome[play] == told));
    }

    private static TellCondition[] Conditions(SearchGround ground, Candidate candidate) =>
        [.. candidate.Dimensions.Zip(candidate.Values, (d, v) => new TellCondition(ground.Dimensions[d].Name, ground.Dimensions[d].Values[v]))];

    private static TellParent? Parent(SearchGround ground, Candidate candidate, int outcome) => candidate.Parents()
        .Select(parent => (parent, plays: parent.PlaysIn(ground)))
        .Select(p => new TellParent(Conditions(ground, p.parent), p.plays.Length, p.plays.Count(play => ground.Outcome[play] == outcome)))
        .MaxBy(parent => (parent.Conditions.Count, ground.IsTwoWay || candidate.Z > 0 ? parent.Share : -parent.Share));

    /// <summary>Every order of adding the conditions is a path from all plays to the situation; the mean over them favors none.</summary>
    private static double Shrunk(SearchGround ground, Candidate candidate, int outcome)
    {
        var orders = Orders(candidate.Dimensions.Length);
        return orders.Average(order =>
        {
            var hits = new double[order.Length + 1];
            var trials = new double[order.Length + 1];
            for (var play = 0; play < ground.Rows.Length; play++)
            {
                var hit = ground.Outcome[play] == outcome ? 1 : 0;
                for (var level = 0; ; level++)
                {
                    trials[level]++;
                    hits[level] += hit;
                    if (level == order.Length || ground.Dimensions[candidate.Dimensions[order[level]]].Codes[play] != candidate.Values[order[level]])
                    {
                        break;
                    }
                }
            }

            return BackOff.Share(hits, trials, [.. order.Select(_ => BackOff.UsualStrength)]).Mean;
        });
    }

    private static int[][] Orders(int conditions) => conditions switch
    {
        1 => [[0]],
        2 => [[0, 1], [1, 0]],
        _ => [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]],
    };

    private static bool? WithinDownAndDistance(SearchGround ground, PlayLog plays, Candidate candidate, int[] cell)
    {
        var classes = SearchDimension.From(plays.Dimension(ColumnNames.DownDistance), ground.Rows, 1);
        var stratum = ground.Game.Select((game, play) => classes.Codes[play] < 0 ? -1 : (game * classes.Values.Count) + classes.Codes[play]).ToArray();
        var counter = new CellCounts(
            stratum,
            ground.GameNames.Count * classes.Values.Count,
            [.. ground.Outcome.Select(o => o == candidate.Outcome)]);
        counter.Count(cell);
        return !counter.CanDiffer ? null : Math.Sign(counter.Z()) == Math.Sign(candidate.Z) && counter.P() <= 0.05;
    }
}
