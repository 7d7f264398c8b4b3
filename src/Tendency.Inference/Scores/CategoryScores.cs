namespace Tendency.Inference.Scores;

/// <summary>
/// How good forecasts of one of J calls were. Source: Gneiting and Raftery 2007, doi:10.1198/016214506000001437; Brier 1950 [from memory].
/// </summary>
/// <param name="Count">Number of forecasts, at least 1.</param>
/// <param name="LogLossBits">-mean log2 p(what happened); infinite if something held impossible happened.</param>
/// <param name="Brier">Mean over forecasts of sum_j (p_j - y_j)², 0 to 2.</param>
/// <param name="Top1">Share of forecasts whose largest probability was right (the first of equals).</param>
public sealed record CategoryScores(int Count, double LogLossBits, double Brier, double Top1)
{
    /// <summary>Number of equally likely calls that would be as hard to guess, 2^LogLossBits.</summary>
    public double Perplexity => Math.Pow(2, LogLossBits);

    /// <param name="happened">Index of what happened, 0 to J - 1.</param>
    /// <param name="forecast">J probabilities for each, in [0, 1] and adding up to 1 within 1e-6.</param>
    /// <exception cref="ArgumentException">Different lengths, no forecast, an index outside, or a row that holds no probabilities.</exception>
    public static CategoryScores Of(IReadOnlyList<int> happened, IReadOnlyList<IReadOnlyList<double>> forecast)
    {
        ArgumentNullException.ThrowIfNull(happened);
        ArgumentNullException.ThrowIfNull(forecast);
        if (happened.Count == 0 || happened.Count != forecast.Count)
        {
            throw new ArgumentException("Scores need one forecast for each outcome, and at least one.", nameof(forecast));
        }

        double loss = 0, brier = 0, right = 0;
        for (var i = 0; i < happened.Count; i++)
        {
            var p = forecast[i];
            ArgumentNullException.ThrowIfNull(p, nameof(forecast));
            if (happened[i] < 0 || happened[i] >= p.Count || p.Any(share => !(share >= 0 && share <= 1)) || Math.Abs(p.Sum() - 1) > 1e-6)
            {
                throw new ArgumentException($"Forecast {i} does not fit its outcome {happened[i]} or holds no probabilities.", nameof(forecast));
            }

            loss -= Math.Log2(p[happened[i]]);
            var top = 0;
            for (var j = 0; j < p.Count; j++)
            {
                var gap = p[j] - (j == happened[i] ? 1 : 0);
                brier += gap * gap;
                top = p[j] > p[top] ? j : top;
            }

            right += top == happened[i] ? 1 : 0;
        }

        return new CategoryScores(happened.Count, loss / happened.Count, brier / happened.Count, right / happened.Count);
    }
}
