using Tendency.Inference.Functions;

namespace Tendency.Inference.Games;

/// <summary>
/// Draws from one Beta(a, b) by looking up one of 1,024 equally likely values, the medians of 1,024 equal parts of the distribution. A joint
/// draw of many fronts and schemes needs hundreds of rates; two gamma variates each would take seconds, a table takes a nanosecond. The
/// table's mean is set to a/(a + b) exactly; its variance falls short by under 1 %, far below the error of 100,000 draws.
/// </summary>
internal sealed class BetaDraws
{
    internal const int Bits = 10;
    internal const int Size = 1 << Bits;

    // Beyond these quantiles lies less than a hundredth of the outermost part.
    private const double Tail = 1e-5;
    private const int Steps = 2048;

    private readonly double[] _values = new double[Size];

    public BetaDraws(double a, double b)
    {
        double low = LogOdds(BetaDistribution.Quantile(a, b, Tail)), high = -LogOdds(BetaDistribution.Quantile(b, a, Tail));
        var width = (high - low) / Steps;
        var cumulated = new double[Steps + 1];
        double peak = LogOdds(a / (a + b)), top = LogDensity(a, b, peak), before = Math.Exp(LogDensity(a, b, low) - top);
        for (var i = 1; i <= Steps; i++)
        {
            var here = Math.Exp(LogDensity(a, b, low + (i * width)) - top);
            cumulated[i] = cumulated[i - 1] + ((before + here) / 2);
            before = here;
        }

        var at = 0;
        for (var k = 0; k < Size; k++)
        {
            var wanted = (k + 0.5) / Size * cumulated[Steps];
            while (cumulated[at + 1] < wanted)
            {
                at++;
            }

            var part = (wanted - cumulated[at]) / (cumulated[at + 1] - cumulated[at]);
            _values[k] = 1 / (1 + Math.Exp(-(low + ((at + part) * width))));
        }

        var shift = (a / (a + b)) - _values.Average();
        for (var k = 0; k < Size; k++)
        {
            _values[k] = Math.Clamp(_values[k] + shift, 0, 1);
        }
    }

    /// <summary>The equally likely values, rising; the caller draws one's number below <see cref="Size"/>.</summary>
    public double[] Values => _values;

    // Density of the log-odds: x^a (1 - x)^b, without its constant.
    private static double LogDensity(double a, double b, double t) => -(a * Math.Log(1 + Math.Exp(-t))) - (b * Math.Log(1 + Math.Exp(t)));

    private static double LogOdds(double x)
    {
        var inside = Math.Clamp(x, 1e-300, 1 - 1e-16);
        return Math.Log(inside / (1 - inside));
    }
}
