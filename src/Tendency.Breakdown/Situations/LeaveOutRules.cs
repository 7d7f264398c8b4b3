using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Situations;

/// <summary>Which plays a staff's rule leaves out.</summary>
internal static class LeaveOutRules
{
    /// <summary>True where every condition the rule sets holds; a cell that is not charted fulfils none, and a rule without conditions leaves nothing out.</summary>
    public static bool[] Rows(this LeaveOut rule, PlayLog log)
    {
        var conditions = rule.Values.Select(pair => new Condition(pair.Key, pair.Value).Rows(log)).ToList();
        if (rule.Game.Length > 0)
        {
            conditions.Add(new Condition(ColumnNames.Game, [rule.Game]).Rows(log));
        }

        if (rule.Quarter is int quarter)
        {
            var quarters = log.Number(ColumnNames.Quarter);
            conditions.Add([.. Enumerable.Range(0, log.Rows).Select(row => quarters[row] == quarter)]);
        }

        if (rule.MarginBeyond is int margin)
        {
            var margins = log.Number(ColumnNames.Margin);
            conditions.Add([.. Enumerable.Range(0, log.Rows).Select(row => margins[row] is int points && Math.Abs(points) > margin)]);
        }

        return [.. Enumerable.Range(0, log.Rows).Select(row => conditions.Count > 0 && conditions.TrueForAll(holds => holds[row]))];
    }
}
