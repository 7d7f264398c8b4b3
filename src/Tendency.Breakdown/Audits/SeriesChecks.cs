using System.Globalization;
using Tendency.Breakdown.Audits.Drives;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Audits.PairRules;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules about what stays the same from snap to snap of a series: hash, margin, team.</summary>
internal static class SeriesChecks
{
    private const double HabitShare = 0.1;
    private const int OneScore = 8;

    public static IEnumerable<Problem> Run(AuditedCharts charts, DriveAudit walk) =>
        charts.Games.SelectMany(game => Hashes(charts, game, walk, HashAfterIncomplete, snap => snap.Result == "incomplete" && snap.Effect is "" or "declined")
            .Concat(Hashes(charts, game, walk, HashAfterReplay, snap => snap.Effect is "replay" or "offset"))
            .Concat(Margins(charts, game, walk)).Concat(Teams(charts, game)).Concat(Seconds(charts, game, walk)));

    private static IEnumerable<Problem> Hashes(AuditedCharts charts, AuditedGame game, DriveAudit walk, Rule rule, Func<WalkedSnap, bool> keeps)
    {
        var hash = charts.Log.Category(Hash);
        var steps = Steps(charts, game, walk).Where(step => keeps(walk.Snaps[step.From]) && hash.Codes[step.From] != 0 && hash.Codes[step.To] != 0).ToArray();
        var broken = steps.Where(step => hash.Codes[step.From] != hash.Codes[step.To]).ToArray();
        if (broken.Length > Math.Max(2, HabitShare * steps.Length))
        {
            yield break;
        }

        var held = steps.Where(step => hash.Codes[step.From] == hash.Codes[step.To]).ToArray();
        var (heldTo, heldFrom) = (held.Select(step => step.To).ToHashSet(), held.Select(step => step.From).ToHashSet());
        var (brokenTo, brokenFrom) = (broken.ToDictionary(step => step.To, step => step.From), broken.ToDictionary(step => step.From, step => step.To));
        foreach (var (from, to) in broken)
        {
            // A row that stands against both its neighbours, which agree, is the slip; it is reported once, at the first step.
            if (brokenFrom.TryGetValue(to, out var after) && hash.Codes[after] == hash.Codes[from])
            {
                yield return charts.Cell(rule, to, Hash, $"the hash is {hash[to]}, before and after it is {hash[from]}.", hash[from]);
                continue;
            }

            if (brokenTo.TryGetValue(from, out var before) && hash.Codes[before] == hash.Codes[to])
            {
                continue;
            }

            // A snap that agrees with the step before it is right; else the later row is the slip unless the step after it agrees.
            var later = !brokenTo.ContainsKey(from) && (heldTo.Contains(from) || !heldFrom.Contains(to));
            yield return later
                ? charts.Cell(rule, to, Hash, $"the hash is {hash[to]}, though play {walk.Snaps[from].Play} left the ball on {hash[from]}.", hash[from])
                : charts.Cell(rule, from, Hash, $"the hash is {hash[from]}, though the ball stays for play {walk.Snaps[to].Play} on {hash[to]}.", hash[to]);
        }
    }

    private static IEnumerable<Problem> Margins(AuditedCharts charts, AuditedGame game, DriveAudit walk)
    {
        var margin = charts.Log.Number(Margin);
        foreach (var row in OtherBench(charts, game))
        {
            yield return charts.Cell(MarginInSeries, row, Margin, $"the margin is {margin[row]}, before and after it is near {-margin[row]}.", $"{-margin[row]}");
        }

        foreach (var rows in walk.Drives[game.Name].Select(series => series.Where(row => margin[row] is not null && charts.Log.Category(Down)[row] != "try").ToArray()).Where(rows => rows.Length >= 3))
        {
            var common = rows.GroupBy(row => margin[row]!.Value).OrderByDescending(group => group.Count()).ToArray();
            if (common.Length == 2 && common[1].Count() == 1)
            {
                var row = common[1].Single();
                yield return charts.Cell(MarginInSeries, row, Margin, $"the margin is {margin[row]}, in the rest of the series {common[0].Key}.", common[0].Key.ToString(CultureInfo.InvariantCulture));
            }
        }
    }

    // One snap whose margin has the wrong sign: turned round it is within one score of the snaps on both sides, as it stands of neither.
    private static IEnumerable<int> OtherBench(AuditedCharts charts, AuditedGame game)
    {
        var margin = charts.Log.Number(Margin);
        var offense = charts.Log.Category(Offense);
        foreach (var team in game.Rows.Where(row => margin[row] is not null).GroupBy(row => offense.Codes[row]))
        {
            var rows = team.ToArray();
            for (var at = 0; at < rows.Length; at++)
            {
                int[] around = [.. new[] { at - 1, at + 1 }.Where(i => i >= 0 && i < rows.Length).Select(i => margin[rows[i]]!.Value)];
                var here = margin[rows[at]]!.Value;
                if (around.Length > 0 && around.All(other => Math.Abs(here - other) > OneScore && Math.Abs(-here - other) <= OneScore) && around.Any(other => other == -here))
                {
                    yield return rows[at];
                }
            }
        }
    }

    private static IEnumerable<Problem> Teams(AuditedCharts charts, AuditedGame game)
    {
        var offense = charts.Log.Category(Offense);
        var series = charts.Log.Number(Series);
        var rows = game.Rows;
        for (var at = 1; at + 1 < rows.Count; at++)
        {
            var (before, row, after) = (rows[at - 1], rows[at], rows[at + 1]);
            if (offense.Codes[row] != 0 && offense.Codes[before] == offense.Codes[after] && offense.Codes[before] != 0 && offense.Codes[row] != offense.Codes[before]
                && series[row] is not null && series[row] == series[before] && series[row] == series[after])
            {
                yield return charts.Cell(OffenseInSeries, row, Offense, $"{offense[row]} has the ball in the middle of a series of {offense[before]}.", offense[before]);
            }
        }
    }

    private static IEnumerable<Problem> Seconds(AuditedCharts charts, AuditedGame game, DriveAudit walk)
    {
        foreach (var (from, to) in Steps(charts, game, walk))
        {
            var (snap, next) = (walk.Snaps[from], walk.Snaps[to]);
            if (snap.Result is "rush" or "complete" && snap.Effect.Length == 0 && next.Result != "penalty" && next.Effect.Length == 0 && snap.Quarter == next.Quarter
                && snap.Clock - next.Clock is >= 0 and < 4 && snap.Play + 1 == next.Play && !(snap.Clock == next.Clock && snap.Clock % 60 == 0))
            {
                yield return charts.Cell(TooSoon, to, Clock, $"{snap.Clock - next.Clock} seconds after play {snap.Play}.");
            }
        }
    }

    private static IEnumerable<(int From, int To)> Steps(AuditedCharts charts, AuditedGame game, DriveAudit walk) =>
        walk.Drives[game.Name].SelectMany(rows => rows.Zip(rows.Skip(1)))
            .Where(step => walk.Snaps[step.First].Down is not null && walk.Snaps[step.Second].Down is not null && walk.Follows(step.First, step.Second))
            .Select(step => (step.First, step.Second));
}
