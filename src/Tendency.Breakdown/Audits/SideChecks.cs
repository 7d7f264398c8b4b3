using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Problems;
using static Tendency.Breakdown.Audits.GameRules;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Breakdown.Audits;

/// <summary>Runs the rules that find a game charted from behind the defense.</summary>
internal static class SideChecks
{
    private const double Beyond = 4.5;
    private const double ThousandToOne = 6.9;

    public static IEnumerable<Problem> Run(AuditedCharts charts) =>
        charts.Games.SelectMany(game => Hashes(charts, game).Concat(Runs(charts, game)).Concat(Mirrors(charts, game)));

    private static IEnumerable<Problem> Hashes(AuditedCharts charts, AuditedGame game)
    {
        var hash = charts.Log.Category(Hash);
        var rows = game.Rows.Where(row => hash.Codes[row] != 0).ToArray();
        foreach (var side in rows.Length >= 40 ? new[] { "L", "M", "R" } : [])
        {
            var share = (double)rows.Count(row => hash[row] == side) / rows.Length;
            if (share is < 0.05 or > 0.65)
            {
                yield return charts.Whole(HashShares, rows[0], Hash, $"{game.Name}: {share:P0} of {rows.Length} snaps on hash {side}.");
            }
        }
    }

    private static IEnumerable<Problem> Runs(AuditedCharts charts, AuditedGame game)
    {
        var side = charts.Log.Category(RunSide);
        var (here, n) = Left(game.Rows);
        var (there, m) = Left(charts.Games.Where(other => other.Name != game.Name).SelectMany(other => other.Rows));
        if (n >= 25 && m >= 25 && here is < 0.15 or > 0.85 && there is >= 0.3 and <= 0.7)
        {
            yield return charts.Whole(OneSided, game.Rows[0], RunSide, $"{game.Name}: {here:P0} of {n} runs go left, elsewhere {there:P0}.");
        }

        (double Share, int Count) Left(IEnumerable<int> rows)
        {
            var charted = rows.Where(row => side.Codes[row] != 0).ToArray();
            return (charted.Length == 0 ? 0 : (double)charted.Count(row => side[row] == "L") / charted.Length, charted.Length);
        }
    }

    // A pair of columns that usually agree, or usually differ, does the opposite in one game when one of them is mirrored.
    private static IEnumerable<Problem> Mirrors(AuditedCharts charts, AuditedGame game)
    {
        var log = charts.Log;
        var others = charts.Games.Where(other => other.Name != game.Name).SelectMany(other => other.Rows).ToArray();
        var against = HashEvidence(charts, game.Rows, others);
        if (against > ThousandToOne)
        {
            yield return charts.Whole(Mirrored, game.Rows[0], Hash, $"{game.Name}: hash and sides go together the other way round than in the other games; one of them seems charted from behind the defense.");
            yield break;
        }

        foreach (var (name, pairs) in Pairs(log, charts))
        {
            var (here, n) = Agree(game.Rows, pairs);
            var (there, m) = Agree(others, pairs);
            if (n < 20 || m < 20 || here > 0.5 == there > 0.5)
            {
                continue;
            }

            var pooled = ((here * n) + (there * m)) / (n + m);
            var z = Math.Abs(here - there) / Math.Sqrt(pooled * (1 - pooled) * ((1.0 / n) + (1.0 / m)));
            if (z > Beyond)
            {
                yield return charts.Whole(Mirrored, game.Rows[0], Hash, $"{game.Name}: {name} agree on {here:P0} of {n} snaps, elsewhere on {there:P0} of {m}; one of them seems charted from behind the defense.");
                yield break;
            }
        }
    }

    // Log odds that the hash is mirrored against the sides: where the ball lies after a run tells most, habits of strength and side vary from game to game.
    private static double HashEvidence(AuditedCharts charts, IReadOnlyList<int> rows, IReadOnlyList<int> others)
    {
        var evidence = 0.0;
        foreach (var ((_, agrees), weight) in Pairs(charts.Log, charts).Zip([1.0, 0.5, 0.5]))
        {
            var (here, n) = Agree(rows, agrees);
            var (there, m) = Agree(others, agrees);
            var share = ((there * m) + 2) / (m + 4);
            evidence += n == 0 || m < 20 ? 0 : weight * n * (1 - (2 * here)) * Math.Log(share / (1 - share));
        }

        return evidence;
    }

    private static IEnumerable<(string Name, Func<int, bool?> Agrees)> Pairs(PlayLog log, AuditedCharts charts)
    {
        bool? Same(string a, string b) => a is "L" or "R" && b is "L" or "R" ? a == b : null;
        var next = NextHash(charts);
        yield return ("run_side and the next hash", row => Same(log.Category(RunSide)[row], next.GetValueOrDefault(row, "")));
        yield return ("hash and strength", row => Same(log.Category(Hash)[row], log.Category(Strength)[row]));
        yield return ("hash and run_side", row => Same(log.Category(Hash)[row], log.Category(RunSide)[row]));
        yield return ("strength and attached", row => Same(log.Category(Strength)[row], log.Category(Attached)[row]));
        yield return ("strength and run_side", row => Same(log.Category(Strength)[row], log.Category(RunSide)[row]));
    }

    private static Dictionary<int, string> NextHash(AuditedCharts charts)
    {
        var series = charts.Log.Number(Series);
        var hash = charts.Log.Category(Hash);
        return charts.Games.SelectMany(game => game.Rows.Zip(game.Rows.Skip(1)))
            .Where(pair => series[pair.First] is not null && series[pair.First] == series[pair.Second])
            .ToDictionary(pair => pair.First, pair => hash[pair.Second]);
    }

    private static (double Share, int Count) Agree(IEnumerable<int> rows, Func<int, bool?> agrees)
    {
        var known = rows.Select(agrees).OfType<bool>().ToArray();
        return (known.Length == 0 ? 0 : (double)known.Count(same => same) / known.Length, known.Length);
    }
}
