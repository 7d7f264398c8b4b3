using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Games;

/// <summary>One option among others, all facing the same draws of the mix.</summary>
/// <param name="Mean">Exact mean value.</param>
/// <param name="Range">Equal-tailed range of the value, from the draws.</param>
/// <param name="BestChance">Share of draws in which it is the best.</param>
/// <param name="ExpectedLoss">Mean of the best option's value less its own: what choosing it gives up.</param>
/// <param name="LossError">Monte Carlo standard error of ExpectedLoss.</param>
public sealed record RankedOption(double Mean, Interval Range, double BestChance, double ExpectedLoss, double LossError);

/// <summary>
/// Ranks options against one uncertain mix by joint draws: the mix is the same for all options in every draw. Source: expected loss of a
/// choice, DeGroot 1970, Optimal Statistical Decisions, ch. 8 [from memory].
/// </summary>
public static class OptionRanking
{
    private const int MostSorted = 20_000;

    // Draws made together, thing by thing: one table of rates and a row of the mix stay in the processor's nearest memory.
    private const int Block = 512;

    /// <summary>
    /// One result per option, in their order, in the unit of the rates (a fraction); none for no option. Choose the smallest expected loss;
    /// below a chance of 0.6 call no clear winner.
    /// </summary>
    /// <param name="options">All against the same things.</param>
    /// <param name="mixWeights">Dirichlet weights of the mix: counts plus prior, all positive.</param>
    /// <param name="rangeLevel">Level of the range, e.g. 0.8, in (0, 1).</param>
    /// <param name="draws">100,000 for print: a chance is then known to 0.002; at least 1.</param>
    /// <param name="seed">The same seed gives the same ranking.</param>
    /// <exception cref="ArgumentException">Options against different numbers of things, a weight not positive, or a number outside its range.</exception>
    public static IReadOnlyList<RankedOption> Simulate(
        IReadOnlyList<UncertainOption> options, IReadOnlyList<double> mixWeights, double rangeLevel, int draws, int seed) =>
        Simulate(new RateTables(options), mixWeights, rangeLevel, draws, seed);

    /// <inheritdoc cref="Simulate(IReadOnlyList{UncertainOption}, IReadOnlyList{double}, double, int, int)"/>
    public static IReadOnlyList<RankedOption> Simulate(
        RateTables tables, IReadOnlyList<double> mixWeights, double rangeLevel, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(mixWeights);
        Domain.Level(rangeLevel);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        var options = tables.Options;
        foreach (var option in options)
        {
            UncertainOption.CheckMix(mixWeights, option.A.Count);
        }

        var random = new RandomBits(seed);
        var mixes = new MixDraws(mixWeights);
        var values = options.Select(_ => new double[draws]).ToArray();
        var best = new int[options.Count];
        var loss = new double[options.Count];
        var lossSquares = new double[options.Count];
        for (var from = 0; from < draws && options.Count > 0; from += Block)
        {
            var length = Math.Min(Block, draws - from);
            var mix = mixWeights.Select(_ => new double[length]).ToArray();
            mixes.Fill(mix, ref random);
            for (var f = 0; f < values.Length; f++)
            {
                Draw(tables.Rates[f], mix, values[f].AsSpan(from, length), ref random);
            }

            for (var d = from; d < from + length; d++)
            {
                var top = 0;
                for (var f = 1; f < values.Length; f++)
                {
                    top = values[f][d] > values[top][d] ? f : top;
                }

                for (var f = 0; f < values.Length; f++)
                {
                    var gap = values[top][d] - values[f][d];
                    loss[f] += gap;
                    lossSquares[f] += gap * gap;
                }

                best[top]++;
            }
        }

        return [.. options.Select((option, f) => Summary(option, mixWeights, values[f], rangeLevel, best[f], loss[f], lossSquares[f]))];
    }

    private static RankedOption Summary(
        UncertainOption option, IReadOnlyList<double> mixWeights, double[] values, double level, int best, double loss, double lossSquares)
    {
        double n = values.Length, mean = loss / n;

        // A range needs fewer draws than a chance; sorting all of them would take longer than drawing them.
        var sorted = values.AsSpan(0, Math.Min(values.Length, MostSorted)).ToArray();
        Array.Sort(sorted);
        var low = sorted[(int)Math.Floor((1 - level) / 2 * (sorted.Length - 1))];
        var high = sorted[(int)Math.Ceiling((1 + level) / 2 * (sorted.Length - 1))];
        var error = Math.Sqrt(Math.Max(0, (lossSquares / n) - (mean * mean)) / n);
        return new RankedOption(option.Against(mixWeights).Mean, new Interval(low, high), best / n, mean, error);
    }

    private static void Draw(double[][] rates, double[][] mix, Span<double> values, ref RandomBits random)
    {
        Span<ushort> drawn = stackalloc ushort[Block];
        drawn = drawn[..values.Length];
        for (var s = 0; s < mix.Length; s++)
        {
            var (table, shares) = (rates[s], mix[s]);
            random.Fill(drawn);
            for (var d = 0; d < values.Length; d++)
            {
                values[d] += shares[d] * table[drawn[d]];
            }
        }
    }
}
