using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>The front check of one opponent: which front against this run game, how sure, and when the answer turns.</summary>
public sealed record FrontCheck(
    RunSample Sample, FrontMatrix Matrix, FrontRanking Ranking, IReadOnlyList<FrontBreakEven> BreakEvens, SchemeGame? IfTheyAdjust, IReadOnlyList<FilmRow> Film)
{
    /// <summary>Success of their runs whatever the front; the usual one under 20 runs.</summary>
    public double Expected => Sample.Base.Share;

    /// <summary>Plays of film a rating is worth.</summary>
    public double PriorPlays { get; init; }

    /// <summary>What each front allows against their passes, in the matrix's order.</summary>
    public IReadOnlyList<PassCell> Passes { get; init; } = [];

    /// <param name="log">Studied plays with their derived dimensions.</param>
    /// <param name="fronts">The plan's fronts, or all.</param>
    /// <param name="ownFilm">Plays our own defense faced: what our fronts gave up there counts beside the subject's film; null = none.</param>
    public static FrontCheck Of(PlayLog log, FrontBook book, IReadOnlyList<Front> fronts, FrontOptions options, PlayLog? ownFilm = null)
    {
        var sample = RunSample.Of(log, book);
        var mix = RunMix.Of(sample.Runs, sample.Runs, options.MixPriorPlays, weights: options.Weights);
        var matrix = FrontMatrix.Of(fronts, mix, ownFilm is null ? sample.Runs : [.. sample.Runs, .. RunSample.Of(ownFilm, book).Runs], sample.Base.Share, book, options);
        return new FrontCheck(
            sample,
            matrix,
            FrontRanking.Of(matrix, options, options.Draws),
            FrontBreakEven.Of(matrix, book, sample.Base.Share, options),
            SchemeGame.Of(matrix),
            FilmRow.Of(sample, options.Level))
        {
            PriorPlays = options.PriorPlays,
            Passes = [.. fronts.Select(f => PassCell.Of(f, sample, options))],
        };
    }

    /// <summary>The break-even of two fronts in one family, whichever was named first; null when they are not both compared.</summary>
    public FrontBreakEven? BreakEven(string one, string other, string family) =>
        BreakEvens.FirstOrDefault(b => b.Family == family && ((b.FrontA == one && b.FrontB == other) || (b.FrontA == other && b.FrontB == one)));
}
