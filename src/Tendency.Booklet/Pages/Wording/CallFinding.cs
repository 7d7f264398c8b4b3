using Tendency.Booklet.Blocks;
using Tendency.Booklet.Pages.Counting;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Booklet.Pages.Wording;

/// <summary>What a table of situations comes to, in one or two sentences that pass the dots' test.</summary>
internal static class CallFinding
{
    /// <summary>"They run on the first snap of a series and after a pass. They throw more than usual backed up."</summary>
    /// <param name="study">Gives lines and level.</param>
    /// <param name="rows">Only rows with <see cref="Situation.Spoken"/> speak.</param>
    /// <param name="none">What to say when no row leans.</param>
    public static string Of(Study study, IEnumerable<Situation> rows, string none)
    {
        var said = rows.Where(row => row.Spoken.Length > 0)
            .Select(row => (row.Spoken, Verdict: CallVerdict.Of(study, row.Plays), row.Plays))
            .Where(row => row.Verdict.Doing is not null)
            .GroupBy(row => row.Verdict.Doing!)
            .Select(group => (Doing: group.Key, Rows: group.Select(row => (row.Spoken, Moves: Moves(study, row.Verdict, row.Plays))).OrderByDescending(row => row.Moves).ToArray()))
            .OrderByDescending(group => group.Rows.Sum(row => row.Moves))
            .ToArray();
        if (said.Length == 0)
        {
            return none;
        }

        var whole = said.Select(group => $"They {group.Doing} {Words.Join(group.Rows.Select(row => row.Spoken))}.").ToArray();
        var brief = said.Select(group => $"They {group.Doing} {Words.Join(group.Rows.Take(2).Select(row => row.Spoken))}.").ToArray();
        var shortest = $"They {said[0].Doing} {said[0].Rows[0].Spoken}.";
        return Headline.First(string.Join(' ', whole), string.Join(' ', brief), brief[0], shortest);
    }

    /// <summary>One situation's share when nothing leans: "No sure lean on third down: 45% run, likely 38–52%."</summary>
    public static string None(Study study, PlayLog plays, string spoken)
    {
        var run = study.RunShare(plays);
        return run.Plays < Share.FewestPlays
            ? $"Too few plays {spoken} to read a lean: {Figures.CountOf(run)} were runs."
            : $"No sure run or pass lean {spoken}: {Figures.Percent(run)} run, likely {Figures.Range(run)}.";
    }

    // Frequent and clear first; what leans at all the ranges say.
    private static double Moves(Study study, CallVerdict verdict, PlayLog plays) => verdict.DoingRun is not null
        ? study.Moves(plays, ColumnNames.Call, "run", study.Runs.Share)
        : study.Moves(plays, ColumnNames.Call, "pass", study.Passes.Share);
}
