using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Audits.GameRules;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules about pasted and foreign rows.</summary>
internal static class WholeGameChecks
{
    private const int LeastBlock = 6;
    private const int MostGames = 100;

    public static IEnumerable<Problem> Run(AuditedCharts charts)
    {
        // Down and distance alone repeat by themselves; only with gains do equal blocks mean a paste.
        var pasted = charts.Log.IsCharted(Gain) ? PastedGames(charts).Concat(charts.Games.SelectMany(game => PastedBlocks(charts, game))) : [];
        return pasted.Concat(WrongTeams(charts));
    }

    private static string KeyOf(AuditedCharts charts, int row) =>
        string.Join('|', charts.Log.Category(Down)[row], charts.Log.Number(Distance)[row], charts.Log.Number(YardsToGoal)[row], charts.Log.Number(Gain)[row], charts.Calls[row], charts.Log.Category(Result)[row]);

    private static IEnumerable<Problem> PastedGames(AuditedCharts charts)
    {
        var keys = charts.Games.Select(game => game.Rows.Select(row => KeyOf(charts, row)).ToArray()).ToArray();
        for (var later = 1; later < keys.Length && keys.Length <= MostGames; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                var shorter = Math.Min(keys[later].Length, keys[earlier].Length);
                var same = keys[later].Zip(keys[earlier]).Count(pair => pair.First == pair.Second);
                if (shorter >= 15 && same >= 0.8 * Math.Max(keys[later].Length, keys[earlier].Length))
                {
                    yield return charts.Whole(GamePastedTwice, charts.Games[later].Rows[0], Game, $"{charts.Games[later].Name} and {charts.Games[earlier].Name} are the same snaps: {same} of {keys[later].Length} rows agree.");
                    break;
                }
            }
        }
    }

    private static IEnumerable<Problem> PastedBlocks(AuditedCharts charts, AuditedGame game)
    {
        var keys = game.Rows.Select(row => KeyOf(charts, row)).ToArray();
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var at = 0; at + LeastBlock <= keys.Length; at++)
        {
            var block = string.Join('/', keys.AsSpan(at, LeastBlock).ToArray());
            if (seen.TryGetValue(block, out var first) && at - first >= LeastBlock)
            {
                var length = LeastBlock;
                while (at + length < keys.Length && first + length < at && keys[at + length] == keys[first + length])
                {
                    length++;
                }

                yield return charts.Cell(BlockPastedTwice, game.Rows[at], Play, $"here and on the next {length - 1} rows stand the snaps from play {charts.Log.Number(Play)[game.Rows[first]]} again.", "delete the rows");
                at += length - 1;
            }
            else
            {
                _ = seen.TryAdd(block, at);
            }
        }
    }

    private static IEnumerable<Problem> WrongTeams(AuditedCharts charts)
    {
        var offense = charts.Log.Category(Offense);
        var defense = charts.Log.Category(Defense);
        var teams = charts.Games.Select(game => (Game: game, Attack: Set(game, offense), Defend: Set(game, defense))).Where(g => g.Attack.Count > 0).ToArray();
        if (teams.Length < 2)
        {
            yield break;
        }

        var common = teams.SelectMany(g => g.Attack).GroupBy(team => team, StringComparer.Ordinal).MaxBy(group => group.Count())!;
        var subject = charts.Week.Subject.Length > 0 ? charts.Week.Subject : common.Count() > teams.Length / 2 ? common.Key : "";
        foreach (var (game, attack, defend) in teams)
        {
            if (subject.Length > 0 && !attack.Contains(subject) && defend.Contains(subject) && common.Key == subject && common.Count() > 1)
            {
                yield return charts.Whole(WrongTeam, game.Rows[0], Offense, $"{game.Name}: {subject} only defends here; elsewhere it has the ball.");
            }
        }

        HashSet<string> Set(AuditedGame game, Charts.CategoryColumn column) => [.. game.Rows.Select(row => column[row]).Where(team => team.Length > 0)];
    }
}
