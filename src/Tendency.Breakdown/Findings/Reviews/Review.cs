using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Counts;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Findings.Reviews;

/// <summary>What became of a claim in the game.</summary>
public enum Verdict
{
    TooFewSnaps,

    /// <summary>The game fits the claim better than it fits their usual rate.</summary>
    Held,

    /// <summary>The game fits their usual rate better.</summary>
    Broke,
}

/// <summary>One claim against the game.</summary>
/// <param name="Game">Count of the outcome in the situation, in the game.</param>
public sealed record ReviewedClaim(SavedClaim Claim, Tally Game)
{
    /// <summary>Fewer snaps decide nothing.</summary>
    public const int FewestSnaps = 5;

    private const double Sure = 1e-3;

    /// <summary>Compares the likelihoods of the game under the share claimed and under the usual one.</summary>
    public Verdict Verdict => Game.Plays < FewestSnaps ? Verdict.TooFewSnaps : LogRatio >= 0 ? Verdict.Held : Verdict.Broke;

    private double LogRatio
    {
        get
        {
            double said = Math.Clamp(Claim.Expected, Sure, 1 - Sure), usual = Math.Clamp(Claim.Usual, Sure, 1 - Sure);
            return (Game.Count * Math.Log(said / usual)) + ((Game.Plays - Game.Count) * Math.Log((1 - said) / (1 - usual)));
        }
    }
}

/// <summary>Claims of about the same strength: did what we gave so many percent happen so often?</summary>
/// <param name="Low">Lower end of the band of claimed shares; the upper is a tenth above.</param>
/// <param name="Said">Mean share claimed, by snaps.</param>
/// <param name="Range">Wilson's of what happened. Snaps of several claims overlap, so it is if anything too narrow.</param>
public sealed record ReviewBand(double Low, int Claims, double Said, Tally Game, Interval Range)
{
    public bool IsAsSaid => Range.Contains(Said);
}

/// <summary>A front of ours in the game against what was expected of it.</summary>
public sealed record ReviewedFront(SavedFront Saved, Tally Game, Interval Range)
{
    public bool IsAsSaid => Range.Low <= Saved.High && Saved.Low <= Range.High;
}

/// <summary>A booklet's claims against the game then played.</summary>
public sealed record Review(IReadOnlyList<ReviewedClaim> Claims, IReadOnlyList<ReviewBand> Bands, IReadOnlyList<ReviewedFront> Fronts)
{
    public int Held => Claims.Count(c => c.Verdict == Verdict.Held);

    public int Broke => Claims.Count(c => c.Verdict == Verdict.Broke);

    public int TooFew => Claims.Count(c => c.Verdict == Verdict.TooFewSnaps);

    /// <param name="plays">The game's counted plays, or its first half's.</param>
    /// <param name="fronts">Runs of the game by our front: their successes.</param>
    public static Review Of(SavedFindings saved, PlayLog plays, IReadOnlyList<(string Front, Tally Runs)> fronts)
    {
        var claims = saved.Claims.Select(claim => new ReviewedClaim(claim, Count(plays, claim))).ToArray();
        var met = from front in saved.Fronts
                  join real in fronts on front.Front equals real.Front
                  select new ReviewedFront(front, real.Runs, OneProportion.Wilson(real.Runs.Count, real.Runs.Plays, saved.Level));
        return new Review(claims, BandsOf(claims, saved.Level), [.. met]);
    }

    /// <summary>Several games together: the season's bands, claims and fronts in the order of the games.</summary>
    public static Review Of(IReadOnlyList<Review> games, double level)
    {
        ReviewedClaim[] claims = [.. games.SelectMany(g => g.Claims)];
        return new Review(claims, BandsOf(claims, level), [.. games.SelectMany(g => g.Fronts)]);
    }

    private static Tally Count(PlayLog plays, SavedClaim claim) =>
        CrossTab.Share(plays.Take(TellCondition.RowsOf(claim.Conditions, plays)), claim.Column, claim.Outcome);

    private static ReviewBand[] BandsOf(IReadOnlyList<ReviewedClaim> claims, double level) =>
    [
        .. claims.Where(c => c.Game.Plays > 0).GroupBy(c => Math.Floor((c.Claim.Expected * 10) + 1e-9) / 10).OrderBy(g => g.Key).Select(band =>
        {
            var game = band.Aggregate(default(Tally), (sum, c) => sum.Plus(c.Game));
            return new ReviewBand(
                band.Key, band.Count(), band.Sum(c => c.Claim.Expected * c.Game.Plays) / game.Plays, game, OneProportion.Wilson(game.Count, game.Plays, level));
        }),
    ];
}
