using Tendency.Inference.Functions;
using Tendency.Inference.Intervals;

namespace Tendency.Inference.Scores;

/// <summary>One bin of forecasts: what was said and what came.</summary>
/// <param name="From">Lower edge, inside the bin.</param>
/// <param name="To">Upper edge, outside the bin, except 1 in the last.</param>
/// <param name="Count">Forecasts in the bin.</param>
/// <param name="Hits">Hits among them.</param>
/// <param name="MeanForecast">Mean of the forecasts; null for an empty bin.</param>
/// <param name="Likely">Wilson's interval of the hit rate; [0, 1] for an empty bin.</param>
public sealed record CalibrationBin(double From, double To, int Count, int Hits, double? MeanForecast, Interval Likely);

/// <summary>
/// Forecasts in bins of equal width: for samples too small for <see cref="CalibrationLine"/>. Source: reliability diagram, Murphy 1973,
/// doi:10.1175/1520-0450(1973)012&lt;0595:ANVPOT&gt;2.0.CO;2 [from memory].
/// </summary>
public static class CalibrationTable
{
    /// <param name="hit">What happened, at least one.</param>
    /// <param name="forecast">Probability of a hit for each, in [0, 1].</param>
    /// <param name="bins">Number of bins, at least 1; as many come back, from 0 upwards.</param>
    /// <param name="level">Level of the bins' intervals, in (0, 1).</param>
    /// <exception cref="ArgumentException">Different lengths, no forecast, a value outside its range, or no bin.</exception>
    public static IReadOnlyList<CalibrationBin> Of(IReadOnlyList<bool> hit, IReadOnlyList<double> forecast, int bins, double level)
    {
        BinaryScores.Check(hit, forecast);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bins);
        Domain.Level(level);
        var counts = new int[bins];
        var hits = new int[bins];
        var sums = new double[bins];
        for (var i = 0; i < hit.Count; i++)
        {
            var bin = Math.Min(bins - 1, (int)(forecast[i] * bins));
            counts[bin]++;
            hits[bin] += hit[i] ? 1 : 0;
            sums[bin] += forecast[i];
        }

        return
        [
            .. Enumerable.Range(0, bins).Select(b => new CalibrationBin(
                (double)b / bins,
                (b + 1.0) / bins,
                counts[b],
                hits[b],
                counts[b] == 0 ? null : sums[b] / counts[b],
                OneProportion.Wilson(hits[b], counts[b], level))),
        ];
    }
}
