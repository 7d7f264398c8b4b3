using MathNet.Numerics.Distributions;
using Tendency.Inference.Comparisons;

namespace Tendency.Inference.Clusters;

/// <summary>Draws group counts whose mixes vary around common shares with a given within-group correlation.</summary>
internal sealed class RandomMix(double[] shares, double rho, int seed)
{
    private readonly Random random = new(seed);
    private readonly double[] mix = [.. shares];

    /// <summary>Counts of one draw, a row per group of the given sizes, row after row.</summary>
    public void Fill(ReadOnlySpan<int> sizes, Span<int> into)
    {
        into.Clear();
        for (var g = 0; g < sizes.Length; g++)
        {
            Draw();
            for (var i = 0; i < sizes[g]; i++)
            {
                var u = random.NextDouble();
                var k = 0;
                while (k < mix.Length - 1 && u >= mix[k])
                {
                    u -= mix[k];
                    k++;
                }

                into[(g * mix.Length) + k]++;
            }
        }
    }

    public CountTable Counts(int[] sizes)
    {
        var counts = new int[sizes.Length * mix.Length];
        Fill(sizes, counts);
        return new CountTable(sizes.Length, mix.Length, counts);
    }

    // Dirichlet by normalised gammas; if all of them vanish (strength near 0) one category takes everything.
    private void Draw()
    {
        if (rho == 0)
        {
            return;
        }

        var strength = (1 / rho) - 1;
        var total = 0.0;
        for (var k = 0; k < mix.Length; k++)
        {
            mix[k] = shares[k] == 0 ? 0 : Gamma.Sample(random, strength * shares[k], 1);
            total += mix[k];
        }

        for (var k = 0; k < mix.Length; k++)
        {
            mix[k] = total > 0 ? mix[k] / total : shares[k];
        }
    }
}
