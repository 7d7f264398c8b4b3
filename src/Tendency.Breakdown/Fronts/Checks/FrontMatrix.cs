using Tendency.Breakdown.Fronts.Ledgers;
using Tendency.Inference.Functions;
using Tendency.Inference.Games;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>All cells of the front check: each front against each part of a run mix.</summary>
/// <param name="Cells">By front, then in the mix's order.</param>
public sealed record FrontMatrix(IReadOnlyList<Front> Fronts, RunMix Mix, IReadOnlyList<IReadOnlyList<MatrixCell>> Cells)
{
    private const double Surest = 0.98;

    // Made when first asked for, and once: tables take longer to make than a situation's ranking takes to draw.
    private readonly Lazy<RateTables> _rates = new(() => FrontRanking.Rates(Cells.Select(row => row.Select(cell => cell.Weights))));

    /// <summary>What each front allows against each part, ready to be drawn.</summary>
    public RateTables Rates => _rates.Value;

    /// <param name="runs">All runs of the film, whatever the situation: what a front gave up is too rare to be cut further.</param>
    /// <param name="expected">Their run success whatever the front.</param>
    public static FrontMatrix Of(
        IReadOnlyList<Front> fronts, RunMix mix, IReadOnlyList<ChartedRun> runs, double expected, FrontBook book, FrontOptions options)
    {
        var film = runs.Where(r => r.IsRush && r.Success is not null && r.RunTo is not null).ToLookup(r => (r.Front, r.Scheme.Name, r.RunTo!.Value));
        return new FrontMatrix(
            fronts,
            mix,
            [.. fronts.Select(f => (IReadOnlyList<MatrixCell>)[.. mix.Cells.Select(c => Cell(f, c, [.. film[(f.Name, c.Scheme.Name, c.Side)]], expected, book, options))])]);
    }

    public MatrixCell this[int front, int cell] => Cells[front][cell];

    /// <summary>Success a front allows over some cells of the mix, in their proportion in the mix; null when none of them is charted.</summary>
    /// <param name="front">Index into <see cref="Fronts"/>.</param>
    /// <param name="cells">Indexes into the mix's cells.</param>
    public double? Allowed(int front, IReadOnlyCollection<int> cells) => Mean(cells, cell => this[front, cell].SuccessAllowed);

    /// <summary>The same by the ratings alone, before any film.</summary>
    public double? Expected(int front, IReadOnlyCollection<int> cells) => Mean(cells, cell => this[front, cell].Prior);

    private double? Mean(IReadOnlyCollection<int> cells, Func<int, double> value)
    {
        var total = cells.Sum(cell => Mix.Cells[cell].EffectiveCount);
        return total > 0 ? cells.Sum(cell => Mix.Cells[cell].EffectiveCount / total * value(cell)) : null;
    }

    /// <summary>Expected success of the offense in every cell.</summary>
    internal double[,] Means()
    {
        var means = new double[Fronts.Count, Mix.Cells.Count];
        for (var f = 0; f < Fronts.Count; f++)
        {
            for (var c = 0; c < Mix.Cells.Count; c++)
            {
                means[f, c] = this[f, c].SuccessAllowed;
            }
        }

        return means;
    }

    /// <summary>Expected success before film.</summary>
    internal static double Prior(double expected, double rating, FrontOptions options) => Prior(expected, rating, options.RatingStep);

    /// <param name="step">Success a point of the rating stands for.</param>
    internal static double Prior(double expected, double rating, double step) => Math.Clamp(expected - (step * rating), 1 - Surest, Surest);

    private static MatrixCell Cell(Front front, MixCell cell, ChartedRun[] film, double expected, FrontBook book, FrontOptions options)
    {
        var rating = book.RatingOf(front.Name, cell.Scheme.Name, cell.Side);
        var prior = Prior(expected, rating, options);
        var successes = film.Count(r => r.Success == true);
        var a = (options.PriorPlays * prior) + successes;
        var b = (options.PriorPlays * (1 - prior)) + film.Length - successes;
        var tail = (1 - options.Level) / 2;
        var ledger = cell.Surface is { } surface
            ? GapLedger.Of(front, cell.Scheme, surface with { RunTo = cell.Side }, cell.Tag).Text
            : GapLedger.Unknown;
        return new MatrixCell(
            front.Name,
            cell.Scheme.Name,
            cell.Side,
            film.Length,
            successes,
            rating,
            prior,
            a / (a + b),
            BetaDistribution.Quantile(a, b, tail),
            BetaDistribution.Quantile(a, b, 1 - tail),
            film.Any(r => r.Gain is not null) ? film.Where(r => r.Gain is not null).Average(r => r.Gain!.Value) : null,
            ledger)
        {
            Opinion = book.TryRating(front.Name, cell.Scheme.Name, cell.Side, out var opinion) ? opinion : null,
            Weights = (a, b),
        };
    }
}
