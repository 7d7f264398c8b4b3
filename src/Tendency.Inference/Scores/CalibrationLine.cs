using Tendency.Inference.Functions;

namespace Tendency.Inference.Scores;

/// <summary>
/// Logistic recalibration of forecasts, logit P(hit) = intercept + slope logit p: 0 and 1 for honest forecasts, slope below 1 for
/// overconfident ones. Not for fewer than about 200 forecasts. Source: Cox 1958, doi:10.1093/biomet/45.3-4.562.
/// </summary>
/// <param name="Intercept">Null when the forecasts separate hits from misses, do not vary, or one is 0 or 1.</param>
/// <param name="Slope">Null in the same cases.</param>
/// <param name="InTheLarge">Intercept with the slope held at 1; null when all outcomes are the same or a forecast is 0 or 1.</param>
public sealed record CalibrationLine(double? Intercept, double? Slope, double? InTheLarge)
{
    /// <param name="hit">What happened, at least one.</param>
    /// <param name="forecast">Probability of a hit for each, in [0, 1].</param>
    /// <exception cref="ArgumentException">Different lengths, no forecast, or a forecast outside [0, 1].</exception>
    public static CalibrationLine Of(IReadOnlyList<bool> hit, IReadOnlyList<double> forecast)
    {
        BinaryScores.Check(hit, forecast);
        if (forecast.Any(p => p is 0 or 1) || hit.All(h => h) || !hit.Any(h => h))
        {
            return new CalibrationLine(null, null, null);
        }

        double[] logit = [.. forecast.Select(p => Math.Log(p) - GammaFunction.LogOnePlus(-p))];
        var large = InterceptAtSlopeOne(hit, logit);
        if (Separated(hit, logit))
        {
            return new CalibrationLine(null, null, large);
        }

        var (intercept, slope) = Fit(hit, logit);
        return new CalibrationLine(intercept, slope, large);
    }

    // No finite maximum when some cut of the forecasts has all hits on one side and all misses on the other (touching allowed).
    private static bool Separated(IReadOnlyList<bool> hit, double[] logit)
    {
        double hitLow = double.PositiveInfinity, hitHigh = double.NegativeInfinity, missLow = double.PositiveInfinity, missHigh = double.NegativeInfinity;
        for (var i = 0; i < logit.Length; i++)
        {
            if (hit[i])
            {
                (hitLow, hitHigh) = (Math.Min(hitLow, logit[i]), Math.Max(hitHigh, logit[i]));
            }
            else
            {
                (missLow, missHigh) = (Math.Min(missLow, logit[i]), Math.Max(missHigh, logit[i]));
            }
        }

        return hitLow >= missHigh || missLow >= hitHigh;
    }

    // The expected hits rise with the intercept, and reach the observed ones between these two: bisection.
    private static double InterceptAtSlopeOne(IReadOnlyList<bool> hit, double[] logit)
    {
        var overall = Math.Log(hit.Count(h => h)) - Math.Log(hit.Count(h => !h));
        double low = overall - logit.Max(), high = overall - logit.Min();
        for (var iteration = 0; iteration < 200 && high - low > 1e-14 * Math.Max(1, Math.Abs(low)); iteration++)
        {
            var middle = (low + high) / 2;
            (low, high) = ExcessHits(hit, logit, middle) > 0 ? (low, middle) : (middle, high);
        }

        return (low + high) / 2;
    }

    // Expected less observed hits. What is nearly 1 counts as 1 less a small rest, so that far from every forecast the rests still tell.
    private static double ExcessHits(IReadOnlyList<bool> hit, double[] logit, double intercept)
    {
        double whole = 0, rest = 0;
        for (var i = 0; i < logit.Length; i++)
        {
            var sign = hit[i] ? -1 : 1;
            var missed = sign * (intercept + logit[i]);
            whole += missed > 0 ? sign : 0;
            rest += (missed > 0 ? -sign : sign) / (1 + Math.Exp(Math.Abs(missed)));
        }

        return whole + rest;
    }

    // Newton's method from slope 0, halving steps that do not improve the (concave) log likelihood. In logits of size 1, so that certain
    // forecasts neither overflow nor leave the first step without weight.
    private static (double Intercept, double Slope) Fit(IReadOnlyList<bool> hit, double[] rawLogit)
    {
        var scale = rawLogit.Max(Math.Abs);
        double[] logit = [.. rawLogit.Select(t => t / scale)];
        double a = 0, b = 0;
        var best = LogLikelihood(hit, logit, a, b);
        for (var iteration = 0; iteration < 200; iteration++)
        {
            double ga = 0, gb = 0, haa = 0, hab = 0, hbb = 0;
            for (var i = 0; i < logit.Length; i++)
            {
                var p = 1 / (1 + Math.Exp(-(a + (b * logit[i]))));
                double gap = (hit[i] ? 1 : 0) - p, w = p * (1 - p);
                ga += gap;
                gb += gap * logit[i];
                haa += w;
                hab += w * logit[i];
                hbb += w * logit[i] * logit[i];
            }

            var determinant = (haa * hbb) - (hab * hab);
            if (!(determinant > 0))
            {
                break;
            }

            double da = ((hbb * ga) - (hab * gb)) / determinant, db = ((haa * gb) - (hab * ga)) / determinant;
            var next = LogLikelihood(hit, logit, a + da, b + db);
            while (!(next >= best - 1e-9) && Math.Abs(da) + Math.Abs(db) > 1e-12)
            {
                (da, db) = (da / 2, db / 2);
                next = LogLikelihood(hit, logit, a + da, b + db);
            }

            (a, b, best) = (a + da, b + db, next);
            if (Math.Abs(da) + Math.Abs(db) < 1e-12)
            {
                break;
            }
        }

        return (a, b / scale);
    }

    private static double LogLikelihood(IReadOnlyList<bool> hit, double[] logit, double a, double b)
    {
        var sum = 0.0;
        for (var i = 0; i < logit.Length; i++)
        {
            var t = (hit[i] ? -1 : 1) * (a + (b * logit[i]));
            sum -= t > 30 ? t : Math.Log(1 + Math.Exp(t));
        }

        return sum;
    }
}
