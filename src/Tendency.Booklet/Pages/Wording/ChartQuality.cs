using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Problems;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>How far the charts can be trusted, in words that follow from counts.</summary>
internal static class ChartQuality
{
    // Rows with an error or a warning, as a share of the rows read: up to the first they carry a meeting, up to the second with care.
    private const double Good = .02;
    private const double Fair = .10;

    public static RichText Of(Study study)
    {
        var read = study.Charts.RowsRead;
        var touched = study.Charts.Problems.Where(problem => problem.Rule.Severity != Severity.Note).Select(problem => problem.Place.Line > 0 ? (problem.Place.File, problem.Place.Line) : default).Distinct().Count();
        var share = read == 0 ? 1 : (double)touched / read;
        var verdict = share <= Good ? "Good enough to act on." : share <= Fair ? "Usable, with care." : "Weak: mend the charts first.";
        return RichText.Strong(verdict) + " " + Words.Sentences(
            $"{Words.Figured(study.Plays.Rows, "play")} counted of {Words.Figured(read, "row")} read.",
            touched == 0 ? "No row has a cell that could not be read." : $"{Words.Figured(touched, "row")} {(touched == 1 ? "has" : "have")} a cell that could not be read or a warning.",
            study.Charts.RowsSetAside == 0 ? "" : $"{Words.Figured(study.Charts.RowsSetAside, "row")} set aside.",
            Weakest(study)) + Link(study);
    }

    private static string Weakest(Study study)
    {
        var charted = Filled.Columns.Where(study.Plays.IsCharted).Select(column => (Column: column, Filled: Filled.Of(study, column)))
            .Where(column => column.Filled.Plays >= Share.FewestPlays && column.Filled.Count < column.Filled.Plays)
            .OrderBy(column => column.Filled.Share).ThenBy(column => column.Column, StringComparer.Ordinal).ToArray();
        return charted.Length == 0 ? "Every charted column is full." : $"Least filled: {charted[0].Column.Replace('_', ' ')}, {charted[0].Filled} {Filled.Among(charted[0].Column)}.";
    }

    private static RichText Link(Study study) => study.Anchors.Contains("reading") ? " " + RichText.PageOf("reading") + "." : RichText.Empty;
}
