using Tendency.Inference.Functions;

namespace Tendency.Inference.Scores;

/// <summary>
/// How good forecasts p of hits y were. Nothing is clipped: a certain forecast that was wrong costs an infinite log loss. Source: Gneiting
/// and Raftery 2007, doi:10.1198/016214506000001437; Brier 1950; Murphy 1973 [from memory].
/// </summary>
/// <param name="Count">Number of forecasts, at least 1.</param>
/// <param name="LogLoss">-mean ln p(what happened), in nats.</param>
/// <param name="Brier">Mean (p - y)², y 1 for a hit and 0 for a miss: 0 to 1.</param>
/// <param name="BaseRate">Share of hits among these outcomes.</param>
/// <param name="Reliability">Murphy's reliability: weighted squared gap between a forecast value and its hit rate, one group per distinct value.</param>
/// <param name="Resolution">Murphy's resolution: weighted squared gap between the groups' hit rates and the base rate.</param>
/// <param name="Accuracy">Share of right calls, a hit called where p &gt; 1/2 (1/2 itself calls a miss).</param>
public sealed record BinaryScores(
    int Count,
    double LogLoss,
    double Brier,
    double BaseRate,
    double Reliability,
    double Resolution,
    double Accuracy)
{
    /// <summary>Log loss in bits.</summary>
    public double LogLossBits => LogLoss / Math.Log(2);

    /// <summary>Entropy of the base rate in bits: the log loss of knowing the base rate in advance.</summary>
    public double EntropyBits => Bits(BaseRate) + Bits(1 - BaseRate);

    /// <summary>p(1 - p) of the base rate; Brier = Reliability - Resolution + Uncertainty exactly.</summary>
    public double Uncertainty => BaseRate * (1 - BaseRate);

    /// <summary>1 - log loss / entropy of these outcomes' base rate; null when all outcomes are the same.</summary>
    public double? LogSkill => Uncertainty == 0 ? null : 1 - (LogLossBits / EntropyBits);

    /// <summary>1 - Brier / uncertainty; null when all outcomes are the same.</summary>
    public double? BrierSkill => Uncertainty == 0 ? null : 1 - (Brier / Uncertainty);

    /// <param name="hit">What happened, at least one.</param>
    /// <param name="forecast">Probability of a hit for each, in [0, 1].</param>
    /// <exception cref="ArgumentException">Different lengths, no forecast, or a forecast outside [0, 1].</exception>
    public static BinaryScores Of(IReadOnlyList<bool> hit, IReadOnlyList<double> forecast)
    {
        Check(hit, forecast);
        double loss = 0, brier = 0, n = hit.Count;
        int hits = 0, right = 0;
        var groups = new Dictionary<double, (int Count, int Hits)>();
        for (var i = 0; i < hit.Count; i++)
        {
            var p = forecast[i];
            loss -= hit[i] ? Math.Log(p) : GammaFunction.LogOnePlus(-p);
            var gap = p - (hit[i] ? 1 : 0);
            brier += gap * gap;
            hits += hit[i] ? 1 : 0;
            right += p > 0.5 == hit[i] ? 1 : 0;
            var group = groups.GetValueOrDefault(p);
            groups[p] = (group.Count + 1, group.Hits + (hit[i] ? 1 : 0));
        }

        var baseRate = hits / n;
        double reliability = 0, resolution = 0;
        foreach (var (p, (count, groupHits)) in groups)
        {
            var rate = (double)groupHits / count;
            reliability += count / n * (p - rate) * (p - rate);
            resolution += count / n * (rate - baseRate) * (rate - baseRate);
        }

        return new BinaryScores(hit.Count, loss / n, brier / n, baseRate, reliability, resolution, right / n);
    }

    internal static void Check(IReadOnlyList<bool> hit, IReadOnlyList<double> forecast)
    {
        ArgumentNullException.ThrowIfNull(hit);
        ArgumentNullException.ThrowIfNull(forecast);
        if (hit.Count == 0 || hit.Count != forecast.Count)
        {
            throw new ArgumentException($"Scores need one forecast for each outcome, and at least one: {forecast.Count} for {hit.Count}.", nameof(forecast));
        }

        foreach (var p in forecast)
        {
            Domain.Probability(p, nameof(forecast));
        }
    }

    private static double Bits(double share) => share == 0 ? 0 : -share * Math.Log2(share);
}
