namespace Tendency.Inference.Functions;

/// <summary>
/// Student's t distribution with real degrees of freedom df from 1e-15 to 1e15, through the incomplete beta function (Abramowitz and Stegun
/// 26.7.1 [from memory]); quantiles to 1e-11 relative up to 100,000 degrees. Throws <see cref="ArgumentOutOfRangeException"/> outside.
/// </summary>
public static class StudentT
{
    /// <summary>The t with P(T &lt;= t) = p ; exactly 0 at 1/2; infinite at p = 0 and 1, and where t² leaves the doubles.</summary>
    public static double Quantile(double df, double p)
    {
        Domain.Shape(df);
        Domain.Probability(p);
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

    /// <summary>P(T &gt; t); t may be infinite.</summary>
    public static double Upper(double df, double t)
    {
        Domain.Shape(df);
        Domain.Number(t);
        var total = df + (t * t);
        var tail = IncompleteBeta.Tails(df / 2, 0.5, df / total, t * t / total).Lower / 2;
        return t >= 0 ? tail : 1 - tail;
    }
}
