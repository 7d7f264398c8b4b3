using Tendency.Booklet.Blocks;

namespace Tendency.Booklet.Pages.Pictures;

/// <summary>A habit's rate in every game, in order, over the range of all games together.</summary>
internal static class GamePlot
{
    private const double Height = 66;

    /// <param name="study">Names the games.</param>
    /// <param name="all">All games together.</param>
    /// <param name="games">One share a game; fewer than five plays draw no dot, only their count.</param>
    /// <param name="names">Game labels, as many as shares.</param>
    /// <param name="counts">Whether counts fit under the dots; else the games' short names stand there.</param>
    public static Plot Of(Study study, Share all, IReadOnlyList<Share> games, IReadOnlyList<string> names, bool counts)
    {
        var ticks = games.Select((game, i) => new Tick(i + 1, counts ? $"{game.Count}/{game.Plays}" : study.ShortGames[names[i]]));
        var dots = games.Select((game, i) => (Game: game, At: i + 1)).Where(dot => dot.Game.Plays >= Share.FewestPlays)
            .Select(dot => new PlotDot(dot.At, dot.Game.Value!.Value, dot.Game.Likely?.Low, dot.Game.Likely?.High) { Solid = dot.Game.Differs });
        return new Plot(
            new PlotAxis(.5, games.Count + .5, [.. ticks]),
            new PlotAxis(0, 1, [new Tick(0, "0"), new Tick(.5, "50"), new Tick(1, "100%")]),
            Height,
            $"rate by game: {string.Join(", ", games.Select(game => $"{game.Count} of {game.Plays}"))}")
        {
            Bands = all.Likely is { } likely ? [new PlotBand(likely.Low, likely.High, Upright: false)] : [],
            Rules = all.Value is { } rate ? [new PlotRule(rate, Upright: false)] : [],
            Dots = [.. dots],
            NameWidth = 6,
        };
    }
}
