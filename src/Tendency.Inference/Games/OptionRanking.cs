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
        var mix = new double[things];
        var values = options.Select(_ => new double[draws]).ToArray();
        var best = new int[options.Count];
        var loss = new double[options.Count];
        var lossSquares = new double[options.Count];
        for (var d = 0; d < draws; d++)
        {
            DrawMix(random, mixWeights, mix);
            var top = 0;
            for (var f = 0; f < options.Count; f++)
            {
                values[f][d] = Draw(random, options[f], mix);
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

    private static double Draw(Random random, UncertainOption option, double[] mix)
    {
        var value = 0.0;
        for (var s = 0; s < mix.Length; s++)
        {
            double a = Gamma.Sample(random, option.A[s], 1), b = Gamma.Sample(random, option.B[s], 1);
            value += mix[s] * a / (a + b);
        }

        return value;
    }
}
