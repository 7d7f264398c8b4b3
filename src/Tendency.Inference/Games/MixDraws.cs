namespace Tendency.Inference.Games;

/// <summary>Draws of a Dirichlet mix: gamma variates over their sum.</summary>
internal sealed class MixDraws
{
    private readonly double[][] _gammas;
    private readonly double[]?[] _powers;

    public MixDraws(IReadOnlyList<double> weights)
    {
        _gammas = [.. weights.Select(w => DrawTable.Gamma(w < 1 ? w + 1 : w))];
        _powers = [.. weights.Select(w => w < 1 ? DrawTable.EvenToThe(1 / w) : null)];
    }

    public void Fill(double[] mix, ref RandomBits random)
    {
        var total = 0.0;
        for (var s = 0; s < mix.Length; s++)
        {
            var gamma = _gammas[s][random.Next()];
            mix[s] = _powers[s] is { } powers ? gamma * powers[random.Next()] : gamma;
            total += mix[s];
        }

        for (var s = 0; s < mix.Length; s++)
        {
            mix[s] /= total;
        }
    }
}
