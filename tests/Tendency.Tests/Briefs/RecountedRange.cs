namespace Tendency.Tests.Briefs;

/// <summary>
/// The range of a printed share, made here without any of the program's own code: Wilson's at the effective plays, two plays of a game being
/// alike by as much as all games show, in the same down and distance and in different ones (one-way analyses of variance from their definitions).
/// </summary>
internal static class RecountedRange
{
    private const double Z95 = 1.959963984540054;
    private const int FewGames = 4;
    private const double LeastOfFewGames = .02;

    /// <param name="of">The plays of the share.</param>
    /// <param name="all">All plays with the answer charted: what shows how alike games are.</param>
    public static (double Low, double High) Of(RecountedPlay[] of, RecountedPlay[] all, Func<RecountedPlay, bool> done, double z = Z95)
    {
        var count = of.Count(done);
        var (same, other) = (InSituation(all, done), AcrossSituations(all, done));

        // The variance of a sum, pair by pair.
        double pairs = 0;
        for (var i = 0; i < of.Length; i++)
        {
            for (var j = 0; j < of.Length; j++)
            {
                pairs += i == j || of[i]["game"] != of[j]["game"] ? 0 : of[i].Situation == of[j].Situation ? same : other;
            }
        }

        var n = Math.Min(of.Length, of.Length / (1 + (pairs / of.Length)));
        return Wilson((double)count / of.Length, n, z);
    }

    private static double InSituation(RecountedPlay[] all, Func<RecountedPlay, bool> done)
    {
        double between = 0, within = 0, betweenFreedom = 0, withinFreedom = 0, size = 0;
        var games = 0;
        foreach (var cell in all.GroupBy(play => play.Situation).Select(cell => cell.ToArray()))
        {
            var rate = cell.Average(Y);
            var byGame = cell.GroupBy(play => play["game"]).Select(game => game.ToArray()).ToArray();
            games = Math.Max(games, byGame.Length);
            if (byGame.Length < 2)
            {
                continue;
            }

            between += byGame.Sum(game => game.Length * Math.Pow(game.Average(Y) - rate, 2));
            within += byGame.Sum(game => game.Sum(play => Math.Pow(Y(play) - game.Average(Y), 2)));
            betweenFreedom += byGame.Length - 1;
            withinFreedom += cell.Length - byGame.Length;
            size += cell.Length - (byGame.Sum(game => Math.Pow(game.Length, 2)) / cell.Length);
        }

        return Correlation(between / betweenFreedom, within / withinFreedom, size / betweenFreedom, games);

        double Y(RecountedPlay play) => done(play) ? 1 : 0;
    }

    private static double AcrossSituations(RecountedPlay[] all, Func<RecountedPlay, bool> done)
    {
        var cells = all.GroupBy(play => play.Situation).ToArray();
        var left = cells.SelectMany(cell =>
        {
            var rate = cell.Average(play => done(play) ? 1.0 : 0);
            return cell.Select(play => (Game: play["game"], Left: (done(play) ? 1 : 0) - rate));
        }).GroupBy(play => play.Game).Select(game => game.Select(play => play.Left).ToArray()).ToArray();
        var between = left.Sum(game => game.Length * Math.Pow(game.Average(), 2)) / (left.Length - 1);
        var within = left.Sum(game => game.Sum(y => Math.Pow(y - game.Average(), 2))) / (all.Length - left.Length - (cells.Length - 1));
        var size = (all.Length - (left.Sum(game => Math.Pow(game.Length, 2)) / all.Length)) / (left.Length - 1);
        return Correlation(between, within, size, left.Length);
    }

    private static double Correlation(double between, double within, double size, int games)
    {
        var rho = (between - within) / (between + ((size - 1) * within));
        return Math.Max(double.IsNaN(rho) ? 0 : rho, games <= FewGames ? LeastOfFewGames : 0);
    }

    /// <summary>Wilson's score interval (Wilson 1927, doi:10.1080/01621459.1927.10502953).</summary>
    private static (double Low, double High) Wilson(double p, double of, double z)
    {
        var middle = (p + (z * z / (2 * of))) / (1 + (z * z / of));
        var half = z * Math.Sqrt((p * (1 - p) / of) + (z * z / (4.0 * of * of))) / (1 + (z * z / of));
        return (p == 0 ? 0 : middle - half, p == 1 ? 1 : middle + half);
    }
}
