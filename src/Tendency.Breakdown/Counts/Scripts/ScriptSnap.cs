using System.Globalization;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Breakdown.Counts.Scripts;

/// <summary>One snap of a practice script: a real play of theirs to line up in and to show on film.</summary>
/// <param name="Order">From 1, in the order to run them.</param>
/// <param name="Row">Row of the play in the log the script was drawn from.</param>
/// <param name="Game">Label of its game.</param>
/// <param name="Play">Its number there.</param>
/// <param name="Clip">Film reference; empty when not charted.</param>
/// <param name="DownDistance">"2 &amp; 7", "3 &amp; goal".</param>
/// <param name="Spot">"left hash", "right hash", "middle", with "at the 12" inside the opponent's 20; empty when not charted.</param>
/// <param name="Formation">The staff's word.</param>
/// <param name="BackSide">strong, weak, middle, none.</param>
/// <param name="Motion">"jet"; empty when there was none or it is not charted.</param>
/// <param name="Call">run, pass or rpo.</param>
/// <param name="Detail">Run scheme or pass concept.</param>
public sealed record ScriptSnap(
    int Order, int Row, string Game, int Play, string Clip, string DownDistance, string Spot, string Formation, string BackSide, string Motion, string Call, string Detail)
{
    private const int NearGoal = 20;

    /// <summary>"2 &amp; 7, left hash, jet motion".</summary>
    public string Situation => string.Join(", ", ((string[])[DownDistance, Spot, Motion.Length == 0 ? "" : $"{Motion} motion"]).Where(part => part.Length > 0));

    internal static ScriptSnap Of(PlayLog plays, int row, int order)
    {
        string Word(string name) => plays.Category(name)[row];
        var call = Word(ColumnNames.Call);
        return new ScriptSnap(
            order,
            row,
            Word(ColumnNames.Game),
            plays.Number(ColumnNames.Play)[row] ?? 0,
            plays.Text(ColumnNames.Clip, row),
            DownAndDistance(plays, row),
            SpotOf(plays, row),
            Word(ColumnNames.Formation),
            Word(ColumnNames.BackSide),
            Word(ColumnNames.Motion) is "none" ? "" : Word(ColumnNames.Motion),
            call,
            Word(ScriptStratum.DetailColumn(call)));
    }

    private static string DownAndDistance(PlayLog plays, int row)
    {
        var distance = plays.Number(ColumnNames.Distance)[row];
        var toGoal = distance is not null && distance >= plays.Number(ColumnNames.YardsToGoal)[row];
        return distance is null ? plays.Category(ColumnNames.Down)[row]
            : string.Create(CultureInfo.InvariantCulture, $"{plays.Category(ColumnNames.Down)[row]} & {(toGoal ? "goal" : distance.Value)}");
    }

    private static string SpotOf(PlayLog plays, int row)
    {
        var hash = plays.Category(ColumnNames.Hash)[row] switch { "L" => "left hash", "R" => "right hash", "M" => "middle", _ => "" };
        var near = plays.Number(ColumnNames.YardsToGoal)[row] is int yards and <= NearGoal ? string.Create(CultureInfo.InvariantCulture, $"at the {yards}") : "";
        return near.Length == 0 ? hash : hash.Length == 0 ? near : $"{near}, {hash}";
    }
}
