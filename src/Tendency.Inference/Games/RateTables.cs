namespace Tendency.Inference.Games;

/// <summary>The success rates of some options, ready to be drawn; made once for all the mixes the options are ranked against.</summary>
public sealed class RateTables
{
    /// <param name="options">All against the same things; there may be none.</param>
    /// <exception cref="ArgumentException">The options stand against different numbers of things.</exception>
    public RateTables(IReadOnlyList<UncertainOption> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (options.Any(option => option is null || option.A.Count != options[0].A.Count))
        {
            throw new ArgumentException("All options stand against the same things.", nameof(options));
        }

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

    private RateTables(IReadOnlyList<UncertainOption> options, double[][][] rates) => (Options, Rates) = (options, rates);

    /// <summary>The options, in their order.</summary>
    public IReadOnlyList<UncertainOption> Options { get; }

    /// <summary>By option and thing: equally likely rates.</summary>
    internal double[][][] Rates { get; }

    /// <summary>The same options against one thing more, the tables made so far kept.</summary>
    /// <param name="shapes">An option's successes and failures against it, in the options' order.</param>
    /// <exception cref="ArgumentException">Not one pair an option, or a shape outside its range.</exception>
    public RateTables With(IReadOnlyList<(double A, double B)> shapes)
    {
        ArgumentNullException.ThrowIfNull(shapes);
        if (shapes.Count != Options.Count)
        {
            throw new ArgumentException($"Every option needs its shapes: {shapes.Count} for {Options.Count}.", nameof(shapes));
        }

        UncertainOption.CheckShapes(shapes.SelectMany(more => new[] { more.A, more.B }), nameof(shapes));

        return new RateTables(
            [.. Options.Zip(shapes, (option, more) => new UncertainOption([.. option.A, more.A], [.. option.B, more.B]))],
            [.. Rates.Zip(shapes, (tables, more) => (double[][])[.. tables, DrawTable.Beta(more.A, more.B)])]);
    }
}
