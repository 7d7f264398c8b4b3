using Tendency.Breakdown.Counts;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Findings.SelfScouts;

/// <summary>How many snaps from a look must go the other way before it stops telling.</summary>
/// <remarks>
/// Hidden: the likely range of its share holds our usual rate, and its exact p-value is above the accepted rate of false alarms, so that
/// no search lists it whatever else it looks at; both recounted with the new snaps, each new game a stratum of its own. Thinned: its share
/// is below the one they would sit on. Snaps of the look that are not asked for go on as always; the other plays come as often, and go as
/// they went. Smallest counts by trying all.
/// </remarks>
/// <param name="SnapsAGame">Snaps of the look to expect in a game: its mean, rounded, at least 1.</param>
/// <param name="Calls">Snaps that must go the other way, over <paramref name="Games"/> games, to hide it in all games charted and these; null = not within <see cref="MostGames"/>.</param>
/// <param name="Games">Games that takes; 1 when the next one is enough.</param>
/// <param name="CallsOnFilm">Snaps of the next game that hide it in the games the opponent after that has on film; null = one game is not enough.</param>
/// <param name="CallsToThin">Snaps of the next game that thin it there; null = one game is not enough.</param>
public sealed record BreakCount(int SnapsAGame, int? Calls, int Games, int? CallsOnFilm, int? CallsToThin)
{
    /// <summary>Beyond half a season nobody plans.</summary>
    public const int MostGames = 6;

    /// <summary>Calls to plan for the next game: what hides it on film, else what thins it there, else all.</summary>
    public int NextGame => CallsOnFilm ?? CallsToThin ?? SnapsAGame;

    /// <param name="charted">All games charted, in order.</param>
    /// <param name="onFilm">How many of the last of them stay on film beside the next one.</param>
    public static BreakCount Of(IReadOnlyList<GameCount> charted, int onFilm, BreakLine line)
    {
        var look = charted.Aggregate(default(Tally), (sum, g) => sum.Plus(g.Look));
        var rest = charted.Aggregate(default(Tally), (sum, g) => sum.Plus(g.Rest));
        var snaps = Math.Max(1, Rounded((double)look.Plays / charted.Count));
        var others = Rounded((double)rest.Plays / charted.Count);
        var usual = new Tally(Rounded(others * (rest.Share ?? 0)), others);
        var film = charted.Skip(charted.Count - onFilm).ToArray();
        var hiding = Fewest(film, 1, games => !line.IsPassed(games));
        var thinning = Fewest(film, 1, games => Look(games).Share < line.LeastShare);
        for (var ahead = 1; ahead <= MostGames; ahead++)
        {
            if (Fewest(charted, ahead, games => !line.IsPassed(games)) is int calls)
            {
                return new BreakCount(snaps, calls, ahead, hiding, thinning);
            }
        }

        return new BreakCount(snaps, null, MostGames, hiding, thinning);

        int? Fewest(IReadOnlyList<GameCount> from, int ahead, Func<IReadOnlyList<GameCount>, bool> isThere)
        {
            for (var calls = 0; calls <= ahead * snaps; calls++)
            {
                var after = from.Concat(Enumerable.Range(0, ahead).Select(g => new GameCount(new Tally(snaps - Part(calls, ahead, g), snaps), usual))).ToArray();
                if (isThere(after))
                {
                    return calls;
                }
            }

            return null;
        }
    }

    /// <summary>So many calls dealt to the games, the earlier ones first.</summary>
    public static int Part(int calls, int games, int game) => (calls / games) + (game < calls % games ? 1 : 0);

    private static Tally Look(IEnumerable<GameCount> games) => games.Aggregate(default(Tally), (sum, g) => sum.Plus(g.Look));

    private static int Rounded(double value) => (int)Math.Round(value, MidpointRounding.AwayFromZero);
}

/// <summary>A look and all other plays that answer the same question, in one game.</summary>
/// <param name="Look">Went the usual way, of snaps.</param>
public readonly record struct GameCount(Tally Look, Tally Rest);

/// <summary>When a look counts as telling.</summary>
/// <param name="Level">Level of the likely range.</param>
/// <param name="Fdr">Accepted share of false alarms: an exact p-value above it is listed by no search.</param>
/// <param name="LeastShare">Share from which on they would sit on it.</param>
/// <param name="MinPlays">Fewer snaps are not looked at, so they tell nothing.</param>
/// <param name="IsEven">Held against an even split, not against our usual rate.</param>
public readonly record struct BreakLine(double Level, double Fdr, double LeastShare, int MinPlays, bool IsEven)
{
    private const double Even = 0.5;

    /// <summary>Whether the look still tells.</summary>
    public bool IsPassed(IReadOnlyList<GameCount> games)
    {
        var look = games.Aggregate(default(Tally), (sum, g) => sum.Plus(g.Look));
        if (look.Plays < MinPlays)
        {
            return false;
        }

        var rest = games.Aggregate(default(Tally), (sum, g) => sum.Plus(g.Rest));
        var usual = IsEven ? Even : look.Plus(rest).Share!.Value;
        return look.Share > usual && (OneProportion.Wilson(look.Count, look.Plays, Level).Low > usual || P(look, games) <= Fdr);
    }

    private double P(Tally look, IReadOnlyList<GameCount> games) => IsEven
        ? Math.Min(1, 2 * BetaDistribution.Lower(look.Count, look.Plays - look.Count + 1, Even))
        : StratifiedTest.Run(
            [.. games.Select(g => g.Look.Count)],
            [.. games.Select(g => g.Look.Plays)],
            [.. games.Select(g => g.Look.Count + g.Rest.Count)],
            [.. games.Select(g => g.Look.Plays + g.Rest.Plays)]).TwoSided;
}
