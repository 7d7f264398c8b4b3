using Tendency.Inference.Forecasts;
using Tendency.Inference.Shrinkage;

namespace Tendency.Breakdown.Findings.Guessing;

/// <summary>
/// Down and distance alone, from nothing but the games learned from: half a regression on the yards, half the mix of the plays of the same
/// down and distance, each level leaning on the one above. The regression knows that third and 8 is like third and 9, the mix what is a
/// habit on third and long only.
/// </summary>
internal static class DownDistanceModel
{
    // Half a log odds is nothing unusual between downs, or for a distance halved.
    private const double Precision = 1;
    private const double ConstantPrecision = 0.05;

    // How many plays the level above counts for: downs differ more than most situations do.
    private const double Strength = 4;

    /// <returns>Probability of each outcome for each play asked about.</returns>
    public static double[][] Forecast(GuessGround ground, int[] learn, int[] ask)
    {
        if (ground.Path.Length == 0)
        {
            var rates = BaseRates(ground, learn);
            return [.. ask.Select(_ => rates)];
        }

        var known = new Dictionary<string, double[]>(StringComparer.Ordinal);
        var byYards = Regression(ground, learn, ask);
        return [.. ask.Select((play, i) =>
        {
            var key = string.Join(',', ground.Path.Select(level => level[play]));
            var mix = known.TryGetValue(key, out var old) ? old : known[key] = Mix(ground, learn, play);
            return mix.Zip(byYards[i], (a, b) => (a + b) / 2).ToArray();
        })];
    }

    /// <summary>Share of each outcome; where one did not occur, every one with half a play added so that none is impossible.</summary>
    public static double[] BaseRates(GuessGround ground, int[] learn)
    {
        var counts = Counts(ground, learn);
        var added = counts.Contains(0) ? 0.5 : 0;
        return [.. counts.Select(x => (x + added) / (learn.Length + (added * counts.Length)))];
    }

    private static double[][] Regression(GuessGround ground, int[] learn, int[] ask)
    {
        var features = Array.ConvertAll(ground.Snaps, snap => Numbers(snap));
        var rows = Array.ConvertAll(learn, play => features[play]);
        var precision = Enumerable.Repeat(Precision, features[0].Length).ToArray();
        precision[0] = ConstantPrecision;
        return ground.EachOutcome(learn, (_, hit) =>
        {
            var expected = new double[precision.Length];
            var rate = (hit.Count(h => h) + 0.5) / (hit.Length + 1);
            expected[0] = Math.Log(rate / (1 - rate));
            var model = PenalizedLogistic.Fit(rows, hit, expected, precision);
            return Array.ConvertAll(ask, play => model.Probability(features[play]));
        });
    }

    /// <summary>A constant; each down; yards, doubling by doubling, on each; the short yardage of the last two downs.</summary>
    private static double[] Numbers(in Snapshot snap)
    {
        var yards = snap.Distance ?? 7;
        var doublings = Math.Log(yards / 7.0);
        var (first, second, late) = (snap.Down == 1 ? 1.0 : 0, snap.Down == 2 ? 1.0 : 0, snap.Down >= 3 ? 1.0 : 0);
        return
        [
            1, second, late, snap.Down == 4 ? 1 : 0, doublings, doublings * first, doublings * second, doublings * late, yards <= 1 ? late : 0, yards <= 2 ? late : 0,
        ];
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

        return BackOff.Mix(levels, [.. ground.Path.Select(_ => Strength)])[^1];
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
