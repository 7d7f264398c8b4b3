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
    private const int LeastRows = 20;

    public static IEnumerable<Problem> Run(AuditedCharts charts)
    {
        var pairs = Pairs(charts.Log, charts).ToArray();
        int[] every = [.. Enumerable.Range(0, charts.Log.Rows)];
        Agreed[] totals = [.. pairs.Select(pair => Agree(every, pair.Agrees))];
        var runs = Left(charts, every);
        return charts.Games.Where(game => game.Rows.Count >= LeastRows).SelectMany(game => Hashes(charts, game).Concat(Runs(charts, game, runs)).Concat(Mirrors(charts, game, pairs, totals)));
    }

    private static IEnumerable<Problem> Hashes(AuditedCharts charts, AuditedGame game)
    {
        var hash = charts.Log.Category(Hash);
        var rows = game.Rows.Where(row => hash.Codes[row] != 0).ToArray();
        foreach (var side in rows.Length >= 40 ? new[] { "L", "M", "R" } : [])
        {
            var share = (double)rows.Count(row => hash[row] == side) / rows.Length;
            if (share is < 0.05 or > 0.65)
            {
                yield return charts.Whole(HashShares, rows[0], Hash, $"{game.Name}: {share:0%} of {rows.Length} snaps on hash {side}.");
            }
        }
    }

    private static IEnumerable<Problem> Runs(AuditedCharts charts, AuditedGame game, Agreed all)
    {
        var here = Left(charts, game.Rows);
        var there = all - here;
        if (here.Count >= 25 && there.Count >= 25 && here.Share is < 0.15 or > 0.85 && there.Share is >= 0.3 and <= 0.7)
        {
            yield return charts.Whole(OneSided, game.Rows[0], RunSide, $"{game.Name}: {here.Share:0%} of {here.Count} runs go left, elsewhere {there.Share:0%}.");
        }
    }

    private static Agreed Left(AuditedCharts charts, IReadOnlyList<int> rows) =>
        Agree(rows, row => charts.Log.Category(RunSide)[row] is { Length: > 0 } side ? side == "L" : null);

    private static IEnumerable<Problem> Mirrors(AuditedCharts charts, AuditedGame game, (string Name, Func<int, bool?> Agrees)[] pairs, Agreed[] totals)
    {
        Agreed[] here = [.. pairs.Select(pair => Agree(game.Rows, pair.Agrees))];
        Agreed[] there = [.. totals.Zip(here, (all, own) => all - own)];
        if (HashEvidence(here, there) > ThousandToOne)
        {
            yield return charts.Whole(Mirrored, game.Rows[0], Hash, $"{game.Name}: hash and sides go together the other way round than in the other games; one of them seems charted from behind the defense.");
            yield break;
        }

        // A pair of columns that usually agree, or usually differ, does the opposite in one game when one of them is mirrored.
        for (var at = 0; at < pairs.Length; at++)
        {
            var (own, others) = (here[at], there[at]);
            if (own.Count < LeastRows || others.Count < LeastRows || own.Share > 0.5 == others.Share > 0.5)
            {
                continue;
            }

            var pooled = (double)(own.Same + others.Same) / (own.Count + others.Count);
            var z = Math.Abs(own.Share - others.Share) / Math.Sqrt(pooled * (1 - pooled) * ((1.0 / own.Count) + (1.0 / others.Count)));
            if (z > Beyond)
            {
                yield return charts.Whole(Mirrored, game.Rows[0], Hash, $"{game.Name}: {pairs[at].Name} agree on {own.Share:0%} of {own.Count} snaps, elsewhere on {others.Share:0%} of {others.Count}; one of them seems charted from behind the defense.");
                yield break;
            }
        }
    }

    // Log odds that the hash is mirrored against the sides: where the ball lies after a run tells most, habits of strength and side vary from game to game.
    private static double HashEvidence(Agreed[] here, Agreed[] there)
    {
        var evidence = 0.0;
        foreach (var (own, others, weight) in here.Zip(there, [1.0, 0.5, 0.5]))
        {
            var share = (others.Same + 2.0) / (others.Count + 4);
            evidence += others.Count < LeastRows ? 0 : weight * (own.Count - (2 * own.Same)) * Math.Log(share / (1 - share));
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

    private static Agreed Agree(IEnumerable<int> rows, Func<int, bool?> agrees)
    {
        var (same, count) = (0, 0);
        foreach (var known in rows.Select(agrees).OfType<bool>())
        {
            count++;
            same += known ? 1 : 0;
        }

        return new Agreed(same, count);
    }

    private readonly record struct Agreed(int Same, int Count)
    {
        public double Share => Count == 0 ? 0 : (double)Same / Count;

        public static Agreed operator -(Agreed all, Agreed part) => new(all.Same - part.Same, all.Count - part.Count);
    }
}
