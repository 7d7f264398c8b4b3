namespace Tendency.Inference.Games;

/// <summary>The success rates of some options, ready to be drawn; made once for all the mixes the options are ranked against.</summary>
public sealed class RateTables
{
    /// <param name="options">All against the same things.</param>
    public RateTables(IReadOnlyList<UncertainOption> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Options = options;

        // Options often share shapes: without film all that have the same rating do.
        var known = new Dictionary<(double A, double B), double[]>();
        Rates = [.. options.Select(o => o.A.Zip(o.B, Table).ToArray())];

        double[] Table(double a, double b)
        {
            if (!known.TryGetValue((a, b), out var values))
            {
                values = DrawTable.Beta(a, b);
                known.Add((a, b), values);
            }

            return values;
        }
    }

    public IReadOnlyList<UncertainOption> Options { get; }

    /// <summary>By option and thing: equally likely rates.</summary>
    internal double[][][] Rates { get; }
}
