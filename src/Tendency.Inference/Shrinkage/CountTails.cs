namespace Tendency.Inference.Shrinkage;

/// <summary>
/// The likelihood of rows of counts through "how many rows have more than j": every difference of log-gammas at integer distance is a
/// sum of logarithms, and derivatives are sums of reciprocals, so nothing cancels even at very large strengths.
/// </summary>
internal sealed class CountTails
{
    private readonly double[][] perCategory;
    private readonly double[] perRow;

    public CountTails(IReadOnlyList<int>[] rows)
    {
        perCategory = [.. Enumerable.Range(0, rows[0].Count).Select(k => Tail(rows.Select(row => row[k])))];
        perRow = Tail(rows.Select(row => row.Sum()));
    }

    /// <summary>
    /// M times the derivative of the log likelihood in M, at the best mean for that M; <paramref name="mean"/> is the start of the search
    /// for it and receives it.
    /// </summary>
    public double Slope(double strength, double[] mean)
    {
        ImproveMean(strength, mean);

        // sum m_k/(M m_k + j) - sum 1/(M + j): the terms 1/M cancel exactly and are left out.
        var slope = 0.0;
        for (var j = 1; j < perRow.Length; j++)
        {
            slope += perRow[j] * (j / (strength + j));
        }

        for (var k = 0; k < mean.Length; k++)
        {
            for (var j = 1; j < perCategory[k].Length; j++)
            {
                slope -= perCategory[k][j] * (j / ((strength * mean[k]) + j));
            }
        }

        return slope;
    }

    public double LogLikelihood(double strength, double[] mean)
    {
        var sum = 0.0;
        for (var j = 0; j < perRow.Length; j++)
        {
            sum -= perRow[j] * Math.Log(strength + j);
        }

        for (var k = 0; k < mean.Length; k++)
        {
            for (var j = 0; j < perCategory[k].Length; j++)
            {
                sum += perCategory[k][j] * Math.Log((strength * mean[k]) + j);
            }
        }

        return sum;
    }

    // Minka's fixed point for the mean at a fixed strength: m_k in proportion to sum over j of a_k / (a_k + j).
    private void ImproveMean(double strength, double[] mean)
    {
        for (var i = 0; i < 10_000; i++)
        {
            var total = 0.0;
            var change = 0.0;
            var next = new double[mean.Length];
            for (var k = 0; k < mean.Length; k++)
            {
                var alpha = strength * mean[k];
                for (var j = 0; j < perCategory[k].Length; j++)
                {
                    next[k] += perCategory[k][j] * (j == 0 ? 1 : alpha / (alpha + j));
                }

                total += next[k];
            }

            for (var k = 0; k < mean.Length; k++)
            {
                next[k] /= total;
                change = Math.Max(change, Math.Abs(next[k] - mean[k]));
                mean[k] = next[k];
            }

            if (change < 1e-13)
            {
                return;
            }
        }
    }

    private static double[] Tail(IEnumerable<int> counts)
    {
        int[] sorted = [.. counts];
        var tail = new double[sorted.Max()];
        foreach (var count in sorted)
        {
            for (var j = 0; j < count; j++)
            {
                tail[j]++;
            }
        }

        return tail;
    }
}
