using Tendency.Inference.Agreement;

namespace Tendency.Breakdown.Fronts.Ledgers;

/// <summary>A cell where men counted and angles judged point in opposite ways.</summary>
/// <param name="PlayNow">Spare men at the point of attack at the snap, averaged over the surfaces counted.</param>
public sealed record LedgerParting(Rating Rating, double PlayNow, double PlayLate, double AllLate);

/// <summary>How far the ledger's count and the experts' rating agree in rank. They answer different questions and are never added.</summary>
/// <param name="Cells">Front, scheme and side: one each.</param>
/// <param name="KendallNow">Kendall's tau-b of the rating against spare men at the point of attack at the snap.</param>
/// <param name="KendallLate">The same once the safeties have come.</param>
/// <param name="SpearmanNow">Spearman's rho of the same pairs.</param>
/// <param name="WithinNow">Mean of Kendall's tau-b over the schemes and sides, each ranking the fronts against one run only.</param>
/// <param name="Partings">A good rating with too few men even late, or a bad one with a man to spare at once; the widest first.</param>
public sealed record LedgerAgreement(
    int Cells, double KendallNow, double KendallLate, double SpearmanNow, double SpearmanLate, double WithinNow, double WithinLate, IReadOnlyList<LedgerParting> Partings)
{
    /// <summary>Every rated cell, counted with one attached tight end to the play and with him away from it, and averaged.</summary>
    public static LedgerAgreement Of(FrontBook book, Func<Rating, bool> which)
    {
        var cells = book.Ratings.Where(which).Select(r => Counted(book, r)).ToArray();
        var ratings = cells.Select(c => c.Rating.Value).ToArray();
        var now = cells.Select(c => c.PlayNow).ToArray();
        var late = cells.Select(c => c.PlayLate).ToArray();
        return new LedgerAgreement(
            cells.Length,
            RankCorrelation.KendallTauB(ratings, now),
            RankCorrelation.KendallTauB(ratings, late),
            RankCorrelation.Spearman(ratings, now),
            RankCorrelation.Spearman(ratings, late),
            Within(cells, c => c.PlayNow),
            Within(cells, c => c.PlayLate),
            [.. cells.Where(Part).OrderByDescending(c => Math.Abs(c.Rating.Value - c.PlayLate))]);
    }

    private static double Within(LedgerParting[] cells, Func<LedgerParting, double> spare) =>
        cells.GroupBy(c => (c.Rating.Scheme, c.Rating.RunTo))
            .Select(run => RankCorrelation.KendallTauB([.. run.Select(c => c.Rating.Value)], [.. run.Select(spare)]))
            .Where(tau => !double.IsNaN(tau))
            .Average();

    private static bool Part(LedgerParting cell) =>
        (cell.Rating.Value >= 1 && cell.PlayLate < 0) || (cell.Rating.Value <= -1 && cell.PlayNow > 0);

    private static LedgerParting Counted(FrontBook book, Rating rating)
    {
        Surface[] surfaces = [new() { AttachedPlay = 1 }, new() { AttachedBack = 1, Strength = Flank.Back }];
        var ledgers = surfaces
            .Select(s => GapLedger.Of(book.Front(rating.Front)!, book.Scheme(rating.Scheme)!, s with { RunTo = rating.RunTo }))
            .ToArray();
        return new LedgerParting(
            rating, ledgers.Average(l => l.Play.SpareNow), ledgers.Average(l => l.Play.SpareLate), ledgers.Average(l => l.All.SpareLate));
    }
}
