using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Weeks;

namespace Tendency.Breakdown.Situations;

/// <summary>Which side of the ball is studied.</summary>
public enum Unit
{
    Offense,
    Defense,
}

/// <summary>The plays that count, and what became of the others.</summary>
/// <param name="Subject">Whose plays they are; empty when the charts do not say.</param>
/// <param name="Unit">Which side of the ball.</param>
/// <param name="Plays">One row a counted play; derived columns included.</param>
/// <param name="LeftOut">Reason and number of plays left out by it, in the order the rules are tried.</param>
public sealed record StudiedPlays(string Subject, Unit Unit, PlayLog Plays, IReadOnlyList<(string Why, int Plays)> LeftOut)
{
    /// <summary>Chooses the subject's countable plays.</summary>
    /// <param name="log">All readable snaps, with derived columns.</param>
    /// <param name="week">Names the subject and what to leave out.</param>
    /// <param name="only">Conditions of the user; all must hold. One on <c>offense</c> (or <c>defense</c>, for that unit) names the subject.</param>
    /// <param name="unit">Which side of the ball is studied; null = the offense, unless the subject named only ever defends.</param>
    /// <param name="problem">Why there is no subject, when null is returned.</param>
    public static StudiedPlays? Choose(PlayLog log, WeekPlan week, IReadOnlyList<Condition> only, Unit? unit, out string problem)
    {
        var side = unit ?? (OnlyDefends(log, week.Subject) ? Unit.Defense : Unit.Offense);
        var teamColumn = side == Unit.Offense ? ColumnNames.Offense : ColumnNames.Defense;
        var subject = SubjectOf(log, week, only, teamColumn, out problem);
        if (subject is null)
        {
            return null;
        }

        var left = new List<(string, int)>();
        var kept = log;
        Leave("the other team's snaps", row => subject.Length == 0 || string.Equals(kept.Category(teamColumn)[row], subject, StringComparison.OrdinalIgnoreCase));
        Leave("two-point tries", row => kept.Category(ColumnNames.Down)[row] != "try");
        Leave("no play for tendencies", row => kept.Category(ColumnNames.Call)[row] is not ("none" or ""));
        foreach (var rule in week.LeaveOut)
        {
            var leave = rule.Rows(kept);
            Leave(rule.Why, row => !leave[row]);
        }

        foreach (var condition in only.Where(c => c.Name != teamColumn))
        {
            var holds = condition.Rows(kept);
            Leave($"not {condition}", row => holds[row]);
        }

        return new StudiedPlays(subject, side, kept, left);

        void Leave(string why, Func<int, bool> keep)
        {
            var next = kept.Where(keep);
            if (next.Rows < kept.Rows)
            {
                left.Add((why, kept.Rows - next.Rows));
            }

            kept = next;
        }
    }

    private static bool OnlyDefends(PlayLog log, string team) =>
        team.Length > 0 && log.IsCharted(ColumnNames.Offense)
        && !Charted(log, ColumnNames.Offense).Contains(team, StringComparer.OrdinalIgnoreCase)
        && Charted(log, ColumnNames.Defense).Contains(team, StringComparer.OrdinalIgnoreCase);

    private static string[] Charted(PlayLog log, string column) => log.Category(column).UsedLevels();

    private static string? SubjectOf(PlayLog log, WeekPlan week, IReadOnlyList<Condition> only, string teamColumn, out string problem)
    {
        problem = "";
        var present = Charted(log, teamColumn);
        var named = only.FirstOrDefault(c => c.Name == teamColumn)?.Values[0] ?? week.Subject;
        if (named.Length > 0)
        {
            if (present.Length == 0 || present.Contains(named, StringComparer.OrdinalIgnoreCase))
            {
                return named;
            }

            problem = $"'{named}' is not among the {teamColumn}s charted: {string.Join(", ", present)}.";
            return null;
        }

        if (present.Length <= 1)
        {
            return present.FirstOrDefault() ?? "";
        }

        problem = $"The charts hold more than one {teamColumn}: {string.Join(", ", present)}. Name one with subject in week.toml or --only {teamColumn}=NAME.";
        return null;
    }
}
