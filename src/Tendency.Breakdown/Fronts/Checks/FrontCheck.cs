using Tendency.Breakdown.Charts;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>The fronts against the runs of one situation.</summary>
/// <param name="Runs">Charted runs of the situation.</param>
public sealed record SituationRanking(string Situation, int Runs, FrontRanking Ranking);

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

    /// <summary>The ranking against the runs of each situation alone; a thin one leans on the whole mix by eight plays.</summary>
    public IReadOnlyList<SituationRanking> BySituation(PlayLog log, FrontOptions options)
    {
        var names = Matrix.Fronts.Select(f => f.Name).ToArray();
        var rankings = new List<SituationRanking>();
        foreach (var situation in CardSituation.Of(log))
        {
            var here = Sample.Runs.Where(r => situation.Holds(r.Row)).ToArray();
            if (here.Length > 0)
            {
                var mix = RunMix.Of(here, Sample.Runs, CardSituation.PriorPlays, Matrix.Mix, options.Weights);
                rankings.Add(new SituationRanking(situation.Name, here.Length, FrontRanking.Of(names, Matrix.Rates, mix.Posterior.Weights, options, options.CardDraws)));
            }
        }

        return rankings;
    }

    /// <summary>The turn most likely to matter: where the first front would lose its place, at the share nearest to theirs; null when nothing turns it.</summary>
    public FrontBreakEven? NearestTurn =>
        Ranking.Ranks.Count == 0 ? null
        : BreakEvens
            .Where(b => b.BreakEvenShare is not null && b.BetterNow == Ranking.Ranks[0].Front)
            .MinBy(b => Math.Abs(b.BreakEvenShare!.Value - b.ShareNow));

    /// <summary>The break-even of two fronts in one family, whichever was named first; null when they are not both compared.</summary>
    public FrontBreakEven? BreakEven(string one, string other, string family) =>
        BreakEvens.FirstOrDefault(b => b.Family == family && ((b.FrontA == one && b.FrontB == other) || (b.FrontA == other && b.FrontB == one)));
}
