using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Situations;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Intervals;
using Tendency.Inference.Multiplicity;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>One share in two sets of plays.</summary>
/// <param name="Conditions">The situation; empty = all plays.</param>
/// <param name="Range">Newcombe's, of ours less theirs. Plays of one game are alike, so it is if anything too narrow.</param>
/// <param name="PValue">Fisher's exact, two-sided.</param>
/// <param name="QValue">Benjamini and Hochberg's, over all rows.</param>
public sealed record ComparedShare(
    IReadOnlyList<TellCondition> Conditions, string Column, string Outcome, Tally Ours, Tally Theirs, Interval Range, double PValue, double QValue)
{
    public double Difference => Ours.Share!.Value - Theirs.Share!.Value;
}

/// <summary>Two sets of plays side by side: us and an opponent, this month and last, two play-callers.</summary>
public static class ScoutComparison
{
    private static readonly string[] s_situations = [DownDistance, FieldZone, Formation, Personnel, BackSet, ScoutColumns.BackOffset, Motion, Hash, ScoreState];

    /// <returns>Every situation and outcome with enough plays in both sets, surest difference first.</returns>
    public static IReadOnlyList<ComparedShare> Of(PlayLog ours, PlayLog theirs, Unit unit, SelfScoutOptions options)
    {
        PlayLog[] both = [ScoutColumns.AddTo(ours), ScoutColumns.AddTo(theirs)];
        var rows = new List<ComparedShare>();
        foreach (var question in ScoutQuestion.For(unit).DistinctBy(q => q.Outcome).Where(q => both.All(p => p.IsCharted(q.Outcome))))
        {
            var asked = both.Select(question.Within).ToArray();
            rows.AddRange(Compare([], question, CrossTab.Count(asked[0], [], question.Outcome), CrossTab.Count(asked[1], [], question.Outcome), options));
            foreach (var column in s_situations.Where(column => column != question.Outcome))
            {
                var here = CrossTab.Count(asked[0], [column], question.Outcome).ToLookup(row => row.By[0], StringComparer.Ordinal);
                var there = CrossTab.Count(asked[1], [column], question.Outcome).ToLookup(row => row.By[0], StringComparer.Ordinal);
                foreach (var value in here.Where(value => there.Contains(value.Key)))
                {
                    rows.AddRange(Compare([new TellCondition(column, value.Key)], question, [.. value], [.. there[value.Key]], options));
                }
            }
        }

        var q = AdjustedP.BenjaminiHochberg([.. rows.Select(row => row.PValue)]);
        return [.. rows.Select((row, i) => row with { QValue = q[i] }).OrderBy(row => row.PValue).ThenByDescending(row => Math.Abs(row.Difference))];
    }

    private static IEnumerable<ComparedShare> Compare(
        IReadOnlyList<TellCondition> conditions, ScoutQuestion question, IReadOnlyList<CrossTabRow> ours, IReadOnlyList<CrossTabRow> theirs, SelfScoutOptions options)
    {
        if (ours.Count == 0 || theirs.Count == 0 || ours[0].Tally.Plays < options.MinPlays || theirs[0].Tally.Plays < options.MinPlays)
        {
            yield break;
        }

        // Of two outcomes more of one is less of the other: one row.
        var outcomes = ours.Concat(theirs).Select(row => row.Outcome).Distinct(StringComparer.Ordinal).ToArray();
        foreach (var outcome in outcomes.Length == 2 ? outcomes[..1] : outcomes)
        {
            Tally a = Of(ours, outcome), b = Of(theirs, outcome);
            yield return new ComparedShare(
                conditions,
                question.Outcome,
                outcome,
                a,
                b,
                Difference.Newcombe(a.Count, a.Plays, b.Count, b.Plays, options.Level),
                FisherTest.Run(a.Count, a.Plays - a.Count, b.Count, b.Plays - b.Count).TwoSided,
                1);
        }
    }

    private static Tally Of(IReadOnlyList<CrossTabRow> rows, string outcome) =>
        new(rows.FirstOrDefault(row => row.Outcome == outcome)?.Tally.Count ?? 0, rows[0].Tally.Plays);
}
