namespace Tendency.Inference.Games;

/// <summary>Draws of a Dirichlet mix: gamma variates over their sum.</summary>
internal sealed class MixDraws
{
    private readonly Tables[] _tables;

    public MixDraws(IReadOnlyList<double> weights)
    {
        // Things never seen share the prior's weight, and its tables.
        var known = new Dictionary<double, Tables>();
        _tables = [.. weights.Select(Of)];

        Tables Of(double weight)
        {
            if (!known.TryGetValue(weight, out var tables))
            {
                tables = weight < 1 ? new Tables(DrawTable.Gamma(weight + 1), DrawTable.EvenToThe(1 / weight)) : new Tables(DrawTable.Gamma(weight), null);
                known.Add(weight, tables);
            }

            return tables;
        }
    }

    /// <summary>As many draws as the rows of <paramref name="mix"/> are long: a row a thing, so that one table at a time is looked up in.</summary>
    public void Fill(double[][] mix, ref RandomBits random)
    {
        var totals = new double[mix[0].Length];
        var drawn = new ushort[totals.Length];
        for (var s = 0; s < mix.Length; s++)
        {
            var (shares, (gammas, powers)) = (mix[s], _tables[s]);
            random.Fill(drawn);
            for (var d = 0; d < shares.Length; d++)
            {
                shares[d] = gammas[drawn[d]];
            }

            if (powers is not null)
            {
                random.Fill(drawn);
                for (var d = 0; d < shares.Length; d++)
                {
                    shares[d] *= powers[drawn[d]];
                }
            }

            for (var d = 0; d < shares.Length; d++)
            {
                totals[d] += shares[d];
            }
        }

        foreach (var shares in mix)
        {
            for (var d = 0; d < shares.Length; d++)
            {
                shares[d] /= totals[d];
            }
        }
    }

    /// <summary>A gamma variate of a shape under 1 is one of the shape + 1 times a power of an even one.</summary>
    private sealed record Tables(double[] Gammas, double[]? Powers);
}
