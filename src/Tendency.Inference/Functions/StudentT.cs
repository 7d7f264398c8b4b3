namespace Tendency.Inference.Functions;

/// <summary>Student's t distribution; quantiles to 1e-11 relative through the incomplete beta function (Abramowitz and Stegun 26.7.1).</summary>
public static class StudentT
{
    /// <summary>The t with P(T &lt;= t) = p for <paramref name="df"/> &gt; 0 (real); exactly 0 at 1/2; infinite at p = 0 and 1, and where t² leaves the doubles.</summary>
    public static double Quantile(double df, double p)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(df);
        if (!(p >= 0 && p <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "A probability lies between 0 and 1.");
        }

        if (p == 0.5)
        {
            return 0;
        }

        if (p > 0.5)
        {
            return -Quantile(df, 1 - p);
        }

        // P(|T| > t) = I_x(df/2, 1/2) with x = df / (df + t^2).
        var (x, oneMinusX) = BetaDistribution.Quantiles(df / 2, 0.5, 2 * p);
        return -Math.Sqrt(df * oneMinusX / x);
    }

    /// <summary>P(T &gt; t).</summary>
    public static double Upper(double df, double t)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(df);
        var total = df + (t * t);
        var tail = IncompleteBeta.Tails(df / 2, 0.5, df / total, t * t / total).Lower / 2;
        return t >= 0 ? tail : 1 - tail;
    }
}
