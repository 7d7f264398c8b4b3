namespace Tendency.Breakdown.Findings.Reviews;

/// <summary>A claim in two prints.</summary>
/// <param name="Before">Null = new since.</param>
/// <param name="Now">Null = no longer stands.</param>
public sealed record ChangedClaim(SavedClaim? Before, SavedClaim? Now)
{
    public SavedClaim Claim => Now ?? Before!;
}

/// <summary>What changed between two prints of a booklet.</summary>
/// <param name="NewGames">Games charted since.</param>
/// <param name="Moved">Claims of both whose share moved by at least <see cref="Least"/>, farthest first.</param>
/// <param name="FrontBefore">The front that allowed least, then; empty without fronts.</param>
public sealed record Changes(
    IReadOnlyList<string> NewGames,
    int NewPlays,
    IReadOnlyList<ChangedClaim> New,
    IReadOnlyList<ChangedClaim> Gone,
    IReadOnlyList<ChangedClaim> Moved,
    string FrontBefore,
    string FrontNow)
{
    /// <summary>Smaller moves are not worth a meeting.</summary>
    public const double Least = 0.05;

    public static Changes Between(SavedFindings before, SavedFindings now)
    {
        var old = before.Claims.DistinctBy(c => c.Key).ToDictionary(c => c.Key, StringComparer.Ordinal);
        var current = now.Claims.DistinctBy(c => c.Key).ToDictionary(c => c.Key, StringComparer.Ordinal);
        var both = now.Claims.Where(c => old.ContainsKey(c.Key)).Select(c => new ChangedClaim(old[c.Key], c));
        return new Changes(
            [.. now.Games.Except(before.Games, StringComparer.Ordinal)],
            now.Plays - before.Plays,
            [.. now.Claims.Where(c => !old.ContainsKey(c.Key)).Select(c => new ChangedClaim(null, c))],
            [.. before.Claims.Where(c => !current.ContainsKey(c.Key)).Select(c => new ChangedClaim(c, null))],
            [.. both.Where(c => Math.Abs(c.Now!.Share - c.Before!.Share) >= Least).OrderByDescending(c => Math.Abs(c.Now!.Share - c.Before!.Share))],
            Best(before),
            Best(now));
    }

    private static string Best(SavedFindings findings) => findings.Fronts.MinBy(f => f.SuccessAllowed)?.Front ?? "";
}
