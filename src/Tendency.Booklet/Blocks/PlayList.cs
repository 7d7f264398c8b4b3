namespace Tendency.Booklet.Blocks;

/// <summary>One play on film: the chart's game label and play number, and the clip name if charted.</summary>
public readonly record struct PlayRef(string Game, int Play, string Clip = "");

/// <summary>Plays behind a number, in film order. Print shows as many as fit and says how many more; HTML opens to all.</summary>
/// <param name="Plays">In film order.</param>
/// <param name="ShortGames">Short names for print by game label ("Calder Bay" → "G1"); a game without one prints its label.</param>
public sealed record PlayList(IReadOnlyList<PlayRef> Plays, IReadOnlyDictionary<string, string>? ShortGames = null)
{
    /// <summary>"G1 18, 42; G2 13, 36": one item a play so that a line can be cut at a whole one.</summary>
    public IEnumerable<string> Items()
    {
        string? last = null;
        foreach (var play in Plays)
        {
            var lead = play.Game == last ? "" : $"{Short(play.Game)} ";
            last = play.Game;
            yield return $"{lead}{play.Play}";
        }
    }

    public string Short(string game) => ShortGames is not null && ShortGames.TryGetValue(game, out var name) ? name : game;
}

/// <summary>A play list standing by itself: the cut-up index.</summary>
public sealed record PlayListing(string Title, PlayList List) : Block;
