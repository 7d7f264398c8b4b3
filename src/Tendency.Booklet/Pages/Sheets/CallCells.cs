using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;

namespace Tendency.Booklet.Pages.Sheets;

/// <summary>Run or pass in a cell read at a glance. Sure means against an even split here: on the sideline the question is which of the two comes.</summary>
internal static class CallCells
{
    // From here on both counts and the range are wider than a cell.
    private const int MostCounted = 1000;

    private static readonly (string Value, string Head)[] s_backs = [("weak", "Back weak"), ("middle", "Behind"), ("strong", "Back strong")];

    /// <summary>Where the back was seen on at least as many plays as a percentage needs; empty when his side is not charted.</summary>
    public static IReadOnlyList<(string Value, string Head)> Backs(Study study) =>
        [.. s_backs.Where(back => study.Plays.Where(ColumnNames.BackSide, back.Value).Rows >= Share.FewestPlays)];

    /// <summary>A cell for all plays and one for each of the back's sides.</summary>
    public static IEnumerable<Cell> Of(Study study, PlayLog plays, IReadOnlyList<(string Value, string Head)> backs) =>
        backs.Select(back => Of(study, plays.Where(ColumnNames.BackSide, back.Value))).Prepend(Of(study, plays));

    public static CallCell Of(Study study, PlayLog plays)
    {
        var runs = CrossTab.Share(plays, ColumnNames.Call, "run").Count;
        var passes = CrossTab.Share(plays, ColumnNames.Call, "pass").Count;
        var both = runs + passes;
        if (both < Share.FewestPlays)
        {
            return new CallCell(both == 0 ? "none" : runs >= passes ? $"run {Figures.CountOf(runs, both)}" : $"pass {Figures.CountOf(passes, both)}", "", CallTone.TooFew);
        }

        var share = study.Of(new Tally(Math.Max(runs, passes), both), .5);
        var word = runs > passes ? "run" : passes > runs ? "pass" : "even";
        var tone = !share.Differs ? CallTone.Even : runs > passes ? CallTone.SureRun : CallTone.SurePass;
        var counted = share.Plays < MostCounted ? $"{share.Count}/{share.Plays}" : $"of {Figures.Count(share.Plays)}";
        return new CallCell($"{word} {Figures.Percent(share).TrimEnd('%')}", $"{counted}, {Figures.Range(share).TrimEnd('%')}", tone);
    }
}
