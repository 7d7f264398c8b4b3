using MathNet.Numerics.Distributions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Games;

/// <summary>One option among others, all facing the same draws of the mix.</summary>
/// <param name="Mean">Exact mean value.</param>
/// <param name="Range">Equal-tailed range of the value, from the draws.</param>
/// <param name="BestChance">Share of draws in which it is the best.</param>
/// <param name="ExpectedLoss">Mean of the best option's value less its own: what choosing it gives up.</param>
/// <param name="LossError">Monte Carlo standard error of ExpectedLoss.</param>
public sealed record RankedOption(double Mean, Interval Range, double BestChance, double ExpectedLoss, double LossError);

/// <summary>Ranks options against one uncertain mix by joint draws: the mix is the same for all options in every draw.</summary>
public static class OptionRanking
{
    /// <summary>
    /// One result per option, in their order. Choose the smallest expected loss; below a chance of 0.6 call no clear winner.
    /// </summary>
    /// <param name="options">All against the same things.</param>
    /// <param name="mixWeights">Dirichlet weights of the mix: counts plus prior, all positive.</param>
    /// <param name="rangeLevel">Level of the range, e.g. 0.8.</param>
    /// <param name="draws">100,000 for print: a chance is then known to 0.002.</param>
    /// <param name="seed">The same seed gives the same ranking.</param>
    public static IReadOnlyList<RankedOption> Simulate(
        IReadOnlyList<UncertainOption> options, IReadOnlyList<double> mixWeights, double rangeLevel, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        var things = mixWeights.Count;
        foreach (var option in options)
        {
            UncertainOption.CheckMix(mixWeights, option.A.Count);
        }

        var random = new Random(seed);
        var state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL);
        var rates = Tables(options);
        var mix = new double[things];
        var values = options.Select(_ => new double[draws]).ToArray();
        var best = new int[options.Count];
        var loss = new double[options.Count];
        var lossSquares = new double[options.Count];
        for (var d = 0; d < draws; d++)
        {
            DrawMix(random, mixWeights, mix);
            var top = 0;
            for (var f = 0; f < rates.Length; f++)
            {
                values[f][d] = Draw(ref state, rates[f], mix);
                top = values[f][d] > values[top][d] ? f : top;
            }

            for (var f = 0; f < options.Count; f++)
            {
                var gap = values[top][d] - values[f][d];
                loss[f] += gap;
                lossSquares[f] += gap * gap;
            }

            if (options.Count > 0)
            {
                best[top]++;
            }
        }

        return [.. options.Select((option, f) => Summary(option, mixWeights, values[f], rangeLevel, best[f], loss[f], lossSquares[f]))];
    }

    // Options often share shapes: without film all that have the same rating do.
    private static double[][][] Tables(IReadOnlyList<UncertainOption> options)
    {
        var known = new Dictionary<(double A, double B), double[]>();
        return [.. options.Select(o => o.A.Zip(o.B, Table).ToArray())];

        double[] Table(double a, double b)
        {
            if (!known.TryGetValue((a, b), out var values))
            {
                values = new BetaDraws(a, b).Values;
                known.Add((a, b), values);
            }

            return values;
        }
    }

    private static RankedOption Summary(
        UncertainOption option, IReadOnlyList<double> mixWeights, double[] values, double level, int best, double loss, double lossSquares)
    {
        Array.Sort(values);
        double n = values.Length, mean = loss / n;
        var low = values[(int)Math.Floor((1 - level) / 2 * (n - 1))];
        var high = values[(int)Math.Ceiling((1 + level) / 2 * (n - 1))];
        var error = Math.Sqrt(Math.Max(0, (lossSquares / n) - (mean * mean)) / n);
        return new RankedOption(option.Against(mixWeights).Mean, new Interval(low, high), best / n, mean, error);
    }

    private static void DrawMix(Random random, IReadOnlyList<double> weights, double[] mix)
    {
        var total = 0.0;
        for (var s = 0; s < mix.Length; s++)
        {
            mix[s] = Gamma.Sample(random, weights[s], 1);
            total += mix[s];
        }

        for (var s = 0; s < mix.Length; s++)
        {
            mix[s] /= total;
        }
    }

    private static double Draw(ref ulong state, double[][] rates, double[] mix)
    {
        var value = 0.0;
        ulong bits = 0;
        var left = 0;
        for (var s = 0; s < mix.Length; s++)
        {
            if (left < BetaDraws.Bits)
            {
                bits = Next(ref state);
                left = 64;
            }

            value += mix[s] * rates[s][(int)(bits & (BetaDraws.Size - 1))];
            bits >>= BetaDraws.Bits;
            left -= BetaDraws.Bits;
        }

        return value;
    }

    // SplitMix64: Steele, Lea and Flood 2014, doi:10.1145/2660193.2660195. Passes the usual batteries and is the same everywhere.
    private static ulong Next(ref ulong state)
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
