using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>Since when a tell can be read, and whether the next opponent has it on film.</summary>
/// <param name="Since">Label of the game it began with; empty when it was there from the first game.</param>
/// <param name="Faded">Label of the game since which it is weaker; empty when it is not.</param>
/// <param name="SeenPlays">Snaps of the look in the games the next opponent has on film.</param>
/// <param name="SeenCount">Those that went the usual way.</param>
/// <param name="IsSeen">Whether those games alone still lean the way of the tell, on at least four snaps; else it is old.</param>
public sealed record TellHistory(string Since, string Faded, int SeenPlays, int SeenCount, bool IsSeen)
{
    /// <summary>A change is told only when ordinary variation brings it in fewer than one case in ten.</summary>
    private const double LikelyChance = 0.10;

    private const double LeastCorrelation = 0.02;
    private const int FewestPlaysOfAGame = 3;
    private const int FewestGames = 4;
    private const int FewestSeen = 4;

    /// <param name="games">All games, in order.</param>
    internal static TellHistory Of(Tell tell, IReadOnlyList<string> games, SelfScoutOptions options)
    {
        var film = games.TakeLast(options.GamesSeen).ToHashSet(StringComparer.Ordinal);
        var seen = tell.ByGame.Where(g => film.Contains(g.Game)).ToArray();
        int plays = seen.Sum(g => g.Plays), count = seen.Sum(g => g.Count);
        var leans = plays >= FewestSeen && Math.Sign(((double)count / plays) - tell.BaseShare) == Math.Sign(tell.Difference);
        var (since, faded) = Change(tell, options);
        return new TellHistory(since, faded, plays, count, leans);
    }

    private static (string Since, string Faded) Change(Tell tell, SelfScoutOptions options)
    {
        var games = tell.ByGame.Where(g => g.Plays >= FewestPlaysOfAGame).ToArray();
        if (games.Length < FewestGames)
        {
            return ("", "");
        }

        var counts = new CountTable(games.Length, 2, games.SelectMany(g => (int[])[g.Count, g.Plays - g.Count]));
        var rho = Math.Max(LeastCorrelation, WithinGroupCorrelation.OfOneCell(games.Select(g => new GroupCount(g.Count, g.Plays))).Usable);
        if (ChangePoint.Find(counts) is not { } change || Drift.Bootstrap(counts, rho, options.Draws, options.Seed).ChangeP > LikelyChance)
        {
            return ("", "");
        }

        double Share(IEnumerable<TellGame> part) => (double)part.Sum(g => g.Count) / part.Sum(g => g.Plays);
        var grew = (Share(games.Skip(change.After)) - Share(games.Take(change.After))) * Math.Sign(tell.Difference) > 0;
        return grew ? (games[change.After].Game, "") : ("", games[change.After].Game);
    }
}
