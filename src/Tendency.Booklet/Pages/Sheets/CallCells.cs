using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Situations;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>
/// Run or pass in a cell read at a glance: the call to expect, few plays leaning on the row and the row on all plays, over the plain count. Sure
/// means against an even split here: on the sideline the question is which of the two comes.
/// </summary>
internal static class CallCells
{
    // From here on both counts and the range are wider than a cell.
    private const int MostCounted = 1000;

    private static readonly (string Value, string Head)[] s_backs = [("weak", "Back weak"), ("middle", "Behind"), ("strong", "Back strong")];

    /// <summary>Where the back was seen on at least as many plays as a percentage needs; empty when his side is not charted.</summary>
    public static IReadOnlyList<(string Value, string Head)> Backs(Study study) =>
        [.. s_backs.Where(back => study.Plays.Where(ColumnNames.BackSide, back.Value).Rows >= Share.FewestPlays)];

    /// <summary>A cell for all plays of a situation and one for each of the back's sides in it.</summary>
    public static IEnumerable<CallCell> Of(Study study, Condition situation, IReadOnlyList<(string Value, string Head)> backs) =>
        backs.Select(back => Of(study, situation, new Condition(ColumnNames.BackSide, [back.Value]))).Prepend(Of(study, situation));

    /// <param name="study">The plays.</param>
    /// <param name="path">Conditions, the widest first; none = all plays.</param>
    internal static CallCell Of(Study study, params Condition[] path)
    {
        var called = study.Plays.Where(ColumnNames.Call, "run", "pass");
        var expected = Shrunk.Share(called, ColumnNames.Call, "run", path, study.Level);
        var (runs, plays) = (expected.Tally.Count, expected.Tally.Plays);
        if (plays < Share.FewestPlays)
        {
            return new CallCell(plays == 0 ? "none" : runs * 2 >= plays ? $"run {Figures.CountOf(runs, plays)}" : $"pass {Figures.CountOf(plays - runs, plays)}", "", CallTone.TooFew);
        }

        var call = expected.Share >= .5 ? "run" : "pass";
        var share = study.Of(path.Aggregate(called, (within, condition) => Holding(within, condition)), ColumnNames.Call, call, .5);
        var tone = !share.Differs || share.Likely!.Value.Low < .5 ? CallTone.Even : call == "run" ? CallTone.SureRun : CallTone.SurePass;
        var counted = plays < MostCounted ? $"{share.Count}/{plays}" : $"of {Figures.Count(plays)}";
        var percent = Figures.Percent(Math.Max(expected.Share, 1 - expected.Share)).Replace("over ", ">", StringComparison.Ordinal).TrimEnd('%');
        return new CallCell($"{(percent == "50" ? "even" : call)} {percent}", $"{counted}, {Figures.Range(share).TrimEnd('%')}", tone);
    }

    private static PlayLog Holding(PlayLog plays, Condition condition)
    {
        var holds = condition.Rows(plays);
        return plays.Where(row => holds[row]);
    }
}
