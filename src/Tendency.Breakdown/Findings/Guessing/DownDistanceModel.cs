using Tendency.Inference.Shrinkage;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>The mix of the plays like this one by down, then by down and distance, each leaning on the level above.</summary>
internal static class DownDistanceModel
{
    /// <returns>Probability of each outcome for each play asked about.</returns>
    public static double[][] Forecast(GuessGround ground, int[] learn, int[] ask)
    {
        var known = new Dictionary<string, double[]>(StringComparer.Ordinal);
        return [.. ask.Select(play =>
        {
            var key = string.Join(',', ground.Path.Select(level => level[play]));
            return known.TryGetValue(key, out var mix) ? mix : known[key] = Mix(ground, learn, play);
        })];
    }

    /// <summary>Share of each outcome; where one did not occur, every one with half a play added so that none is impossible.</summary>
    public static double[] BaseRates(GuessGround ground, int[] learn)
    {
        var counts = Counts(ground, learn);
        var added = counts.Contains(0) ? 0.5 : 0;
        return [.. counts.Select(x => (x + added) / (learn.Length + (added * counts.Length)))];
    }

    private static double[] Mix(GuessGround ground, int[] learn, int play)
    {
        var levels = new List<IReadOnlyList<double>> { Counts(ground, learn) };
        var like = learn;
        foreach (var level in ground.Path)
        {
            like = [.. like.Where(other => level[other] == level[play] && level[play] >= 0)];
            levels.Add(Counts(ground, like));
        }

        return BackOff.Mix(levels, [.. ground.Path.Select(_ => BackOff.UsualStrength)])[^1];
    }

    private static double[] Counts(GuessGround ground, int[] plays)
    {
        var counts = new double[ground.Outcomes.Count];
        foreach (var play in plays)
        {
            counts[ground.Outcome[play]]++;
        }

        return counts;
    }
}
