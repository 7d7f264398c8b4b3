using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Weeks;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Situations;

/// <summary>What came before a snap: its place in the series and in the game.</summary>
internal static class Sequence
{
    public static CategoryColumn[] Columns(PlayLog log, Boundaries boundaries)
    {
        var first = new string[log.Rows];
        var previous = new string[log.Rows];
        var opener = new string[log.Rows];
        var sudden = new string[log.Rows];
        Array.Fill(first, "");
        Array.Fill(previous, "");
        Array.Fill(opener, "");
        Array.Fill(sudden, "");
        foreach (var game in InFilmOrder(log).GroupBy(row => log.Category(Game)[row], StringComparer.Ordinal))
        {
            var rows = game.ToArray();
            MarkSeries(log, rows, first, previous);
            MarkOpeners(log, rows, opener, boundaries.OpenerPlays);
            MarkSuddenChange(log, rows, sudden);
        }

        return
        [
            DimensionColumn.Create(FirstOfSeries, log.Rows, ["yes", "no"], row => first[row]),
            DimensionColumn.Create(PreviousCall, log.Rows, ["run", "pass", "rpo"], row => previous[row]),
            DimensionColumn.Create(Opener, log.Rows, ["yes", "no"], row => opener[row]),
            DimensionColumn.Create(SuddenChange, log.Rows, ["yes", "no"], row => sudden[row]),
        ];
    }

    /// <summary>Whether a snap counts for tendencies: a called play that is no two-point try.</summary>
    public static bool IsCountable(PlayLog log, int row) => log.Category(Call)[row] is not ("none" or "") && log.Category(Down)[row] != "try";

    /// <summary>Rows by game in order of first appearance, then by play number; equal numbers keep their order in the chart.</summary>
    public static int[] InFilmOrder(PlayLog log)
    {
        var games = log.Category(Game);
        var plays = log.Number(Play);
        return [.. Enumerable.Range(0, log.Rows).OrderBy(row => games.Codes[row]).ThenBy(row => plays[row])];
    }

    private static void MarkSeries(PlayLog log, int[] rows, string[] first, string[] previous)
    {
        var series = log.Number(Series);
        var offense = log.Category(Offense);
        var last = new Dictionary<(string, int), string>();
        foreach (var row in rows)
        {
            if (series[row] is not int number || !IsCountable(log, row))
            {
                continue;
            }

            var key = (offense[row], number);
            first[row] = last.ContainsKey(key) ? "no" : "yes";
            previous[row] = last.GetValueOrDefault(key, "");
            last[key] = log.Category(Call)[row];
        }
    }

    private static void MarkOpeners(PlayLog log, int[] rows, string[] opener, int plays)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var row in rows.Where(row => IsCountable(log, row)))
        {
            var team = log.Category(Offense)[row];
            var before = seen.GetValueOrDefault(team);
            opener[row] = before < plays ? "yes" : "no";
            seen[team] = before + 1;
        }
    }

    /// <summary>
    /// The first series after a takeaway or a failed fourth down. Only the other team's snaps can say so: where a game's chart holds one
    /// offense alone, or no series numbers, the dimension stays uncharted.
    /// </summary>
    private static void MarkSuddenChange(PlayLog log, int[] rows, string[] sudden)
    {
        var offense = log.Category(Offense);
        var series = log.Number(Series);
        if (rows.Select(row => offense[row]).Where(team => team.Length > 0).Distinct(StringComparer.Ordinal).Count() < 2)
        {
            return;
        }

        (string Team, int Series)? current = null;
        int? lastOfBefore = null;
        var last = -1;
        foreach (var row in rows.Where(row => series[row] is not null && offense[row].Length > 0 && log.Category(Down)[row] != "try"))
        {
            var now = (offense[row], series[row]!.Value);
            if (now != current)
            {
                lastOfBefore = current is not null && last >= 0 && offense[last] != offense[row] ? last : null;
                current = now;
            }

            sudden[row] = lastOfBefore is int before && GaveTheBallAway(log, before) ? "yes" : "no";
            last = row;
        }
    }

    private static bool GaveTheBallAway(PlayLog log, int row) =>
        log.Category(Touchdown)[row] != "yes"
        && (log.Category(Result)[row] is "interception" or "fumble"
            || (log.Category(Down)[row] == "4" && log.Category(Call)[row] != "none" && log.Number(Gain)[row] < log.Number(Distance)[row]));
}
