namespace Tendency.Inference.Multiplicity;

/// <summary>Counts over arrangements how often each cell's statistic is reached: by itself, by the largest, by the largest not above it in rank.</summary>
internal sealed class MaxTTally
{
    private readonly double[] threshold;
    private readonly int[] ascending;
    private readonly long[] raw;
    private readonly long[] single;
    private readonly long[] stepDown;

    public MaxTTally(double[] observed, double tolerance)
    {
        threshold = [.. observed.Select(t => t - (tolerance * Math.Max(1, t)))];
        ascending = [.. Enumerable.Range(0, observed.Length).OrderBy(i => observed[i])];
        raw = new long[observed.Length];
        single = new long[observed.Length];
        stepDown = new long[observed.Length];
    }

    public void Add(double[] statistics)
    {
        var largest = double.NegativeInfinity;
        foreach (var i in ascending)
        {
            largest = Math.Max(largest, statistics[i]);
            raw[i] += statistics[i] >= threshold[i] ? 1 : 0;
            stepDown[i] += largest >= threshold[i] ? 1 : 0;
        }

        for (var i = 0; i < single.Length; i++)
        {
            single[i] += largest >= threshold[i] ? 1 : 0;
        }
    }

    /// <summary>With shuffles the observed arrangement counts as one more; enumerated, it is among them already.</summary>
    public MaxTResult Result(double[] observed, double arrangements, bool observedCounts)
    {
        var extra = observedCounts ? 1 : 0;
        double P(long reached) => (reached + extra) / (arrangements + extra);
        var monotone = new double[observed.Length];
        var running = 0.0;
        foreach (var i in ascending.Reverse())
        {
            running = Math.Max(running, P(stepDown[i]));
            monotone[i] = running;
        }

        return new MaxTResult(observed, [.. raw.Select(P)], [.. single.Select(P)], monotone, arrangements, !observedCounts);
    }
}
