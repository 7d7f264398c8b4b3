using System.Globalization;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Breakdown.Situations;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Findings.Reviews;

/// <summary>What a booklet claimed, kept beside it so that the game can be held against it.</summary>
/// <param name="Subject">Whose plays; empty when the charts do not say.</param>
/// <param name="Unit">"offense" or "defense".</param>
/// <param name="ChartedTo">Day of the last game charted, yyyy-mm-dd; empty = not said.</param>
/// <param name="Level">Level of the ranges.</param>
public sealed record SavedFindings(
    string Subject, string Unit, IReadOnlyList<string> Games, int Plays, string ChartedTo, double Level, IReadOnlyList<SavedClaim> Claims, IReadOnlyList<SavedFront> Fronts)
{
    private const int FewestPlays = 8;
    private const double MoreOftenThanNot = 0.5;

    // The tables every booklet opens with: their rows are claims where the range leaves the usual rate out.
    private static readonly string[] s_tables =
        [ColumnNames.DownDistance, ColumnNames.FieldZone, ColumnNames.Formation, ColumnNames.Personnel, ColumnNames.BackSet, ColumnNames.BackSide, ColumnNames.FirstOfSeries, ColumnNames.Motion];

    /// <summary>The claims of a study: its tells, then the rows of its main tables that stand apart.</summary>
    public static SavedFindings Of(StudiedPlays studied, IReadOnlyList<TellReport> tells, IReadOnlyList<SavedFront> fronts, DateOnly? chartedTo, double level)
    {
        var plays = studied.Plays;
        var ranges = new LikelyRanges(plays, level);
        var claims = tells.SelectMany(report => report.Tells.Select(tell => SavedClaim.Of(tell, report.OutcomeColumn, ranges.Of(plays.Take([.. tell.Rows]), report.OutcomeColumn, tell.Outcome))))
            .Concat(s_tables.SelectMany(column => Table(ranges, column)).DistinctBy(row => row.Plays).Select(row => row.Claim))
            .DistinctBy(claim => claim.Key);
        return new SavedFindings(
            studied.Subject,
            studied.Unit == Situations.Unit.Offense ? "offense" : "defense",
            [.. CrossTab.Count(plays, [], ColumnNames.Game).Select(row => row.Outcome)],
            plays.Rows,
            chartedTo?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
            level,
            [.. claims],
            fronts);
    }

    /// <summary>Claims of one table, each with the plays it speaks of: two columns that set the same plays apart make one claim.</summary>
    private static IEnumerable<(SavedClaim Claim, string Plays)> Table(LikelyRanges ranges, string column)
    {
        var plays = ranges.Plays;
        var words = plays.Category(column);
        foreach (var row in CrossTab.Count(plays, [column], ColumnNames.Call).Where(row => row.Tally.Plays >= FewestPlays && row.Tally.Share > MoreOftenThanNot))
        {
            var usual = CrossTab.Share(plays, ColumnNames.Call, row.Outcome).Share ?? 0;
            var here = plays.Where(column, row.By[0]);
            var likely = ranges.Of(here, ColumnNames.Call, row.Outcome);
            if (likely.Low > usual)
            {
                var expected = Shrunk.Share([plays, here], ColumnNames.Call, row.Outcome, ranges.Level).Share;
                var claim = new SavedClaim(
                    [new TellCondition(column, row.By[0])], ColumnNames.Call, row.Outcome, row.Tally.Plays, row.Tally.Count, likely.Low, likely.High, usual, expected);
                yield return (claim, string.Join(' ', Enumerable.Range(0, plays.Rows).Where(play => words[play] == row.By[0])));
            }
        }
    }
}

/// <summary>One claim: in a situation they do one thing so often.</summary>
/// <param name="Column">Column of the outcome.</param>
/// <param name="Usual">Its share among all plays, then.</param>
/// <param name="Expected">Share expected next time: shrunk towards the usual.</param>
public sealed record SavedClaim(
    IReadOnlyList<TellCondition> Conditions, string Column, string Outcome, int Plays, int Count, double Low, double High, double Usual, double Expected)
{
    public string Situation => string.Join(" & ", Conditions.Select(c => $"{c.Name}={c.Value}"));

    /// <summary>Same for the same claim in another print.</summary>
    public string Key => $"{Situation} -> {Column}={Outcome}";

    public double Share => Plays == 0 ? 0 : (double)Count / Plays;

    /// <summary>"Wing, back strong: run".</summary>
    public string Words => $"{SituationWords.Of(Conditions)}: {SituationWords.Outcome(Column, Outcome)}";

    /// <param name="likely">The range that the pages print.</param>
    public static SavedClaim Of(Tell tell, string column, Interval likely) => new(
        tell.Conditions, column, tell.Outcome, tell.Plays, tell.Count, likely.Low, likely.High, tell.BaseShare, tell.ShrunkShare);
}

/// <summary>What a front of ours was expected to allow.</summary>
/// <param name="SuccessAllowed">Their expected success on runs, with its range.</param>
public sealed record SavedFront(string Front, double SuccessAllowed, double Low, double High);
