using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Counts.Scripts;

/// <summary>The plays of one call and scheme or concept, and how many snaps of the script they get.</summary>
/// <param name="Call">run, pass or rpo.</param>
/// <param name="Detail">Run scheme or pass concept; empty when none is charted for the call.</param>
/// <param name="Snaps">Snaps of the script.</param>
/// <param name="Rows">Rows by formation; the empty one when none is charted.</param>
internal sealed record ScriptStratum(string Call, string Detail, int Snaps, IReadOnlyDictionary<string, int[]> Rows)
{
    /// <summary>Largest remainders over calls, and within each call over its schemes or concepts. Plays without a charted scheme or formation stand back where others have one.</summary>
    public static IReadOnlyList<ScriptStratum> Of(PlayLog plays, int snaps)
    {
        var calls = CrossTab.Values(plays, ColumnNames.Call);
        var snapsOfCall = LargestRemainder.Of([.. calls.Select(call => call.Count)], snaps);
        return [.. calls.Zip(snapsOfCall).SelectMany(pair => OfCall(plays, pair.First.Value, pair.Second))];
    }

    /// <summary>The word that says what a play of this call is: its pass concept, else its run scheme.</summary>
    public static string DetailColumn(string call) => call == "pass" ? ColumnNames.PassConcept : ColumnNames.RunScheme;

    private static IEnumerable<ScriptStratum> OfCall(PlayLog plays, string call, int snaps)
    {
        var calls = plays.Category(ColumnNames.Call);
        var details = plays.Category(DetailColumn(call));
        var formations = plays.Category(ColumnNames.Formation);
        var rows = Charted(Enumerable.Range(0, plays.Rows).Where(row => calls[row] == call), details);
        var groups = rows.GroupBy(row => details.Codes[row]).OrderByDescending(group => group.Count()).ThenBy(group => group.Key).ToArray();
        var shares = LargestRemainder.Of([.. groups.Select(group => group.Count())], snaps);
        return groups.Zip(shares).Where(pair => pair.Second > 0).Select(pair => new ScriptStratum(
            call,
            details.Levels[pair.First.Key],
            pair.Second,
            Charted(pair.First, formations).GroupBy(row => formations[row], StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.ToArray(), StringComparer.Ordinal)));
    }

    private static int[] Charted(IEnumerable<int> rows, CategoryColumn column)
    {
        var all = rows.ToArray();
        var charted = all.Where(row => column.Codes[row] > 0).ToArray();
        return charted.Length > 0 ? charted : all;
    }
}
