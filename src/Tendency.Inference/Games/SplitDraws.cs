namespace Tendency.Inference.Games;

/// <summary>Values of some options against two parts of an uncertain mix, by option and draw; a part nobody shows is worth 0 to all.</summary>
/// <param name="Inside">Against the things inside the split, in their drawn proportions.</param>
/// <param name="Outside">Against the rest.</param>
public sealed record SplitValues(IReadOnlyList<double[]> Inside, IReadOnlyList<double[]> Outside);

/// <summary>
/// Joint draws of a mix and of success rates, cut into two parts: the uncertainty of a break-even share. Source: posterior simulation,
/// Gelman and others, Bayesian Data Analysis, 3rd ed., sec. 10.1 [from memory].
/// </summary>
public static class SplitDraws
{
    /// <param name="tables">The options.</param>
    /// <param name="mixWeights">Dirichlet weights of the mix: counts plus prior, all positive.</param>
    /// <param name="splits">For each split, which things are inside.</param>
    /// <param name="ratesVary">False takes every rate at its mean, so that only the mix is uncertain.</param>
    /// <param name="draws">Draws, the same mix for all options and splits.</param>
    /// <param name="seed">The same seed gives the same draws.</param>
    /// <returns>One result a split, in their order.</returns>
    /// <exception cref="ArgumentException">Lengths do not fit the options, a weight is not positive, or no draw.</exception>
    public static IReadOnlyList<SplitValues> Simulate(
        RateTables tables, IReadOnlyList<double> mixWeights, IReadOnlyList<IReadOnlyList<bool>> splits, bool ratesVary, int draws, int seed)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(splits);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        ArgumentNullException.ThrowIfNull(mixWeights);
        UncertainOption.CheckMix(mixWeights, tables.Options is [var first, ..] ? first.A.Count : mixWeights.Count);
        if (mixWeights.Count == 0 || splits.Any(split => split is null || split.Count != mixWeights.Count))
        {
            throw new ArgumentException($"A split says of each of the {mixWeights.Count} things whether it is inside, and there is at least one.", nameof(splits));
        }

        var random = new RandomBits(seed);
        var mixes = new MixDraws(mixWeights);
        var mix = mixWeights.Select(_ => new double[draws]).ToArray();
        mixes.Fill(mix, ref random);
        var means = tables.Options.Select(o => Enumerable.Range(0, mix.Length).Select(o.Mean).ToArray()).ToArray();
        var (shares, parts) = (new double[mix.Length], new double[mix.Length]);
        var values = splits.Select(_ => new SplitValues(
            [.. tables.Options.Select(_ => new double[draws])], [.. tables.Options.Select(_ => new double[draws])])).ToArray();
        for (var d = 0; d < draws; d++)
        {
            for (var s = 0; s < mix.Length; s++)
            {
                shares[s] = mix[s][d];
            }

            for (var f = 0; f < means.Length; f++)
            {
                for (var s = 0; s < mix.Length; s++)
                {
                    parts[s] = shares[s] * (ratesVary ? tables.Rates[f][s][random.Next()] : means[f][s]);
                }

                for (var i = 0; i < values.Length; i++)
                {
                    (values[i].Inside[f][d], values[i].Outside[f][d]) = Split(shares, parts, splits[i]);
                }
            }
        }

        return values;
    }

    private static (double Inside, double Outside) Split(double[] mix, double[] parts, IReadOnlyList<bool> isInside)
    {
        double inside = 0, insideShare = 0, outside = 0, outsideShare = 0;
        for (var s = 0; s < mix.Length; s++)
        {
            if (isInside[s])
            {
                inside += parts[s];
                insideShare += mix[s];
            }
            else
            {
                outside += parts[s];
                outsideShare += mix[s];
            }
        }

        return (insideShare > 0 ? inside / insideShare : 0, outsideShare > 0 ? outside / outsideShare : 0);
    }
}
