using System.Collections.Concurrent;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Inference.Clusters;
using Tendency.Inference.Comparisons;
using Tendency.Inference.Intervals;

namespace Tendency.Breakdown.Counts;

/// <summary>
/// The one place that decides which range stands beside a count on a page. Plays come in games and those of one game are alike, so a count
/// is worth fewer plays than it has: Wilson's interval, of a mix Goodman's, at the effective plays.
/// </summary>
/// <remarks>
/// Rule: two plays of a game correlate in an outcome by as much as the subject's games show (<see cref="GameCorrelation"/>); negative counts as
/// none, and up to four games it is taken to be 0.02 at least. Where there is none the ranges are the plain ones. One game alone can show no difference between games: its
/// ranges are plain, and the page says so. Kish 1965 (from memory); Wilson at an effective size: Franco, Little, Louis and Slud 2019, PMC6690503.
/// Coverage: tests/Tendency.Simulations, coverage pages.
/// </remarks>
public sealed class LikelyRanges
{
    private readonly ConcurrentDictionary<(string Column, string? Outcome), GameCorrelation> _correlations;
    private readonly int _games;

    /// <param name="plays">All counted plays of the subject, with every column that is asked about.</param>
    /// <param name="level">Level of each range, in (0, 1).</param>
    public LikelyRanges(PlayLog plays, double level)
        : this(plays, level, [])
    {
    }

    private LikelyRanges(PlayLog plays, double level, ConcurrentDictionary<(string Column, string? Outcome), GameCorrelation> correlations)
    {
        ArgumentNullException.ThrowIfNull(plays);
        (Plays, Level, _correlations) = (plays, level, correlations);
        _games = plays.Category(ColumnNames.Game).UsedLevels().Length;
    }

    /// <summary>The plays the correlations are read from.</summary>
    public PlayLog Plays { get; }

    public double Level { get; }

    /// <summary>The same ranges at another level.</summary>
    public LikelyRanges At(double level) => new(Plays, level, _correlations);

    /// <summary>Range of how often a column holds an outcome, among the plays in which it is charted.</summary>
    /// <param name="plays">Some of the subject's plays.</param>
    /// <param name="column">Column or dimension.</param>
    /// <param name="outcome">The value.</param>
    public Interval Of(PlayLog plays, string column, string outcome) => Of(CrossTab.Share(plays, column, outcome), plays, column, outcome);

    /// <summary>The same of a count made elsewhere, of the plays in which the column is charted.</summary>
    public Interval Of(Tally tally, PlayLog plays, string column, string? outcome)
    {
        var effective = EffectivePlays(plays, column, outcome);
        return OneProportion.Wilson((tally.Share ?? 0) * effective, effective, Level).ClippedToShare();
    }

    /// <summary>Ranges of a mix that hold all at once.</summary>
    /// <param name="counts">One of each kind there is; together the plays in which the column is charted.</param>
    /// <param name="plays">The plays divided.</param>
    /// <param name="column">The column that divides them, or the one the kinds are made of.</param>
    public IReadOnlyList<Interval> OfMix(IReadOnlyList<int> counts, PlayLog plays, string column)
    {
        double all = counts.Sum();
        var scale = all == 0 ? 0 : Math.Min(1, EffectivePlays(plays, column, null) / all);
        return [.. Simultaneous.Goodman([.. counts.Select(count => count * scale)], Level).Select(range => range.ClippedToShare())];
    }

    /// <summary>Range of the difference of two shares of one outcome (Newcombe), the first less the second; each with its effective plays.</summary>
    public Interval OfDifference(PlayLog one, PlayLog other, string column, string outcome)
    {
        var (first, second) = (CrossTab.Share(one, column, outcome), CrossTab.Share(other, column, outcome));
        var (m, n) = (EffectivePlays(one, column, outcome), EffectivePlays(other, column, outcome));
        return Difference.Newcombe((first.Share ?? 0) * m, m, (second.Share ?? 0) * n, n, Level);
    }

    /// <summary>A share in which some games count more: its range pays for the weights and for games at once.</summary>
    public WeightedShare Weighted(PlayLog plays, string column, string outcome, GameWeights weights)
    {
        var answers = plays.Dimension(column);
        var code = answers.CodeOf(outcome);
        return Weighted(plays, row => answers.Codes[row] == code, column, outcome, weights);
    }

    /// <summary>The same of what a page counts itself.</summary>
    /// <param name="hit">Whether a row counts, among those in which the column is charted.</param>
    public WeightedShare Weighted(PlayLog plays, Func<int, bool> hit, string column, string? outcome, GameWeights weights)
    {
        var (tally, share) = WeightedCount(plays, hit, column, weights);
        var effective = EffectivePlays(plays, column, outcome, weights);
        return new WeightedShare(tally, share, effective, OneProportion.Wilson(share * effective, effective, Level).ClippedToShare());
    }

    /// <summary>A mix in which some games count more, ranges for all kinds at once.</summary>
    /// <param name="kinds">Every value of the column that occurs.</param>
    public IReadOnlyList<WeightedShare> WeightedMix(PlayLog plays, string column, IReadOnlyList<string> kinds, GameWeights weights)
    {
        var answers = plays.Dimension(column);
        var effective = EffectivePlays(plays, column, null, weights);
        var counts = kinds.Select(answers.CodeOf).Select(code => WeightedCount(plays, row => answers.Codes[row] == code, column, weights)).ToArray();
        var ranges = Simultaneous.Goodman([.. counts.Select(count => count.Share * effective)], Level);
        return [.. counts.Zip(ranges, (count, range) => new WeightedShare(count.Tally, count.Share, effective, range.ClippedToShare()))];
    }

    private static (Tally Tally, double Share) WeightedCount(PlayLog plays, Func<int, bool> hit, string column, GameWeights weights)
    {
        var answers = plays.Dimension(column);
        var games = plays.Category(ColumnNames.Game);
        var counted = Enumerable.Range(0, plays.Rows).Where(row => answers.Codes[row] > 0).GroupBy(row => games.Codes[row])
            .Select(game => (Weight: weights.Of(games.Levels[game.Key]), Tally: new Tally(game.Count(hit), game.Count()))).ToArray();
        var all = counted.Sum(game => game.Weight * game.Tally.Plays);
        return (counted.Aggregate(default(Tally), (sum, game) => sum.Plus(game.Tally)), all > 0 ? counted.Sum(game => game.Weight * game.Tally.Count) / all : 0);
    }

    /// <summary>How many independent plays some plays count like, in the question whether they hold an outcome; never more than hold the column.</summary>
    /// <param name="weights">How much each game counts; null = all the same.</param>
    public double EffectivePlays(PlayLog plays, string column, string? outcome, GameWeights? weights = null)
    {
        var answers = plays.Dimension(column);
        var games = plays.Category(ColumnNames.Game);
        var situations = GameCorrelation.SituationOf(plays, column);
        var cells = Enumerable.Range(0, plays.Rows).Where(row => answers.Codes[row] > 0)
            .GroupBy(row => games.Codes[row])
            .Select(game => (game.CountBy(row => situations.Codes[row]).Select(cell => (double)cell.Value), weights?.Of(games.Levels[game.Key]) ?? 1));
        var rho = _games < 2 ? default : _correlations.GetOrAdd((column, outcome), _ => GameCorrelation.Of(Plays, column, outcome));
        return EffectiveSize.OfCells(cells, rho.InSituation, rho.AcrossSituations);
    }
}
