using Tendency.Inference.Functions;

namespace Tendency.Inference.Comparisons;

/// <summary>
/// Does one more set of trials differ from the rest, once strata and the sets taken in before are allowed for? A logistic regression with
/// one intercept a stratum and one effect a set, fitted by maximum likelihood; the next set is judged by its efficient score.
/// Source: Rao 1948, doi:10.1017/S0305004100023987; Cox and Hinkley 1974, Theoretical Statistics, section 9.3 [from memory].
/// </summary>
/// <remarks>
/// Effects add up in log odds, so that sets which overlap share the blame instead of parting the trials into ever smaller strata. Normal
/// in the limit only: good for choosing among sets, where <see cref="StratifiedTest"/> is exact. A set whose trials all have hits gets a
/// large effect, not an infinite one, because the iterations are bounded.
/// </remarks>
public sealed class ConditionalScore
{
    private const int MostIterations = 20;
    private const double SmallestStep = 1e-6;

    /// <summary>Keeps the equations solvable when a stratum or set leaves nothing to estimate; far below one trial's information.</summary>
    private const double Ridge = 1e-6;

    /// <summary>With less variance than this left, the sets before have said all that could be said.</summary>
    private const double LeastVariance = 0.5;

    private readonly bool[] _isHit;
    private readonly int[] _stratum;
    private readonly int _strata;
    private readonly List<int[]> _sets = [];
    private readonly List<double> _effects = [];
    private readonly double[] _intercepts;
    private readonly double[] _fitted;
    private readonly double[] _weight;
    private readonly double[] _stratumWeight;
    private double[][] _centered = [];
    private double[,] _inverse = new double[0, 0];

    /// <param name="isHit">One label a trial.</param>
    /// <param name="stratum">Stratum of each trial, 0 to <paramref name="strata"/> - 1.</param>
    /// <param name="strata">Number of strata.</param>
    /// <exception cref="ArgumentException">Lengths differ, or a stratum is outside.</exception>
    public ConditionalScore(bool[] isHit, int[] stratum, int strata)
    {
        ArgumentNullException.ThrowIfNull(isHit);
        ArgumentNullException.ThrowIfNull(stratum);
        if (isHit.Length != stratum.Length)
        {
            throw new ArgumentException("Every trial needs a stratum.", nameof(stratum));
        }

        ArgumentOutOfRangeException.ThrowIfNegative(strata);
        foreach (var h in stratum)
        {
            Domain.Position(h, strata, nameof(stratum));
        }

        (_isHit, _stratum, _strata) = (isHit, stratum, strata);
        _intercepts = new double[strata];
        _fitted = new double[isHit.Length];
        _weight = new double[isHit.Length];
        _stratumWeight = new double[strata];
        Fit();
    }

    /// <summary>Takes a set in: from now on its trials have an effect of their own.</summary>
    /// <param name="trials">Positions of the set's trials, each once.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such trial.</exception>
    public void Add(int[] trials)
    {
        ArgumentNullException.ThrowIfNull(trials);
        Check(trials);
        _sets.Add(trials);
        _effects.Add(0);
        Fit();
    }

    /// <summary>Signed statistic of a set: hits less those expected, over their standard error; 0 where nothing is left to compare.</summary>
    /// <param name="trials">Positions of the set's trials, each once.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such trial.</exception>
    public double Z(ReadOnlySpan<int> trials)
    {
        Check(trials);
        double score = 0, variance = 0;
        Span<double> shared = stackalloc double[_sets.Count];
        var inStratum = new double[_strata];
        foreach (var i in trials)
        {
            score += (_isHit[i] ? 1 : 0) - _fitted[i];
            variance += _weight[i];
            inStratum[_stratum[i]] += _weight[i];
            for (var s = 0; s < shared.Length; s++)
            {
                shared[s] += _weight[i] * _centered[s][i];
            }
        }

        for (var h = 0; h < _strata; h++)
        {
            variance -= inStratum[h] * inStratum[h] / _stratumWeight[h];
        }

        for (var s = 0; s < shared.Length; s++)
        {
            for (var t = 0; t < shared.Length; t++)
            {
                variance -= shared[s] * _inverse[s, t] * shared[t];
            }
        }

        return variance < LeastVariance ? 0 : score / Math.Sqrt(variance);
    }

    private void Check(ReadOnlySpan<int> trials)
    {
        foreach (var i in trials)
        {
            Domain.Position(i, _isHit.Length, nameof(trials));
        }
    }

    // Newton's method; the intercepts' block is diagonal, so only the sets' effects need a matrix.
    private void Fit()
    {
        for (var iteration = 0; ; iteration++)
        {
            Predict();
            Center();
            if (iteration == MostIterations || Step() < SmallestStep)
            {
                return;
            }
        }
    }

    private void Predict()
    {
        for (var i = 0; i < _fitted.Length; i++)
        {
            _fitted[i] = _intercepts[_stratum[i]];
        }

        foreach (var (s, trials) in _sets.Index())
        {
            foreach (var i in trials)
            {
                _fitted[i] += _effects[s];
            }
        }

        Array.Fill(_stratumWeight, Ridge);
        for (var i = 0; i < _fitted.Length; i++)
        {
            _fitted[i] = 1 / (1 + Math.Exp(-_fitted[i]));
            _weight[i] = _fitted[i] * (1 - _fitted[i]);
            _stratumWeight[_stratum[i]] += _weight[i];
        }
    }

    // Each set's indicator less its weighted mean within every stratum, and the inverse of their cross products.
    private void Center()
    {
        var products = new double[_sets.Count, _sets.Count];
        _centered = [.. _sets.Select(Centered)];
        for (var s = 0; s < _sets.Count; s++)
        {
            products[s, s] = Ridge;
            for (var t = 0; t < _sets.Count; t++)
            {
                foreach (var i in _sets[s])
                {
                    products[s, t] += _weight[i] * _centered[t][i];
                }
            }
        }

        _inverse = Inverse(products);
    }

    private double[] Centered(int[] trials)
    {
        var mean = new double[_strata];
        foreach (var i in trials)
        {
            mean[_stratum[i]] += _weight[i] / _stratumWeight[_stratum[i]];
        }

        var centered = Array.ConvertAll(_stratum, h => -mean[h]);
        foreach (var i in trials)
        {
            centered[i]++;
        }

        return centered;
    }

    private double Step()
    {
        var scores = new double[_sets.Count];
        var rest = new double[_strata];
        for (var i = 0; i < _fitted.Length; i++)
        {
            var residual = (_isHit[i] ? 1 : 0) - _fitted[i];
            rest[_stratum[i]] += residual;
            for (var s = 0; s < scores.Length; s++)
            {
                scores[s] += residual * _centered[s][i];
            }
        }

        var largest = 0.0;
        for (var s = 0; s < scores.Length; s++)
        {
            var step = 0.0;
            for (var t = 0; t < scores.Length; t++)
            {
                step += _inverse[s, t] * scores[t];
            }

            _effects[s] += step;
            largest = Math.Max(largest, Math.Abs(step));
            foreach (var i in _sets[s])
            {
                rest[_stratum[i]] -= _weight[i] * step;
            }
        }

        for (var h = 0; h < _strata; h++)
        {
            var step = rest[h] / _stratumWeight[h];
            _intercepts[h] += step;
            largest = Math.Max(largest, Math.Abs(step));
        }

        return largest;
    }

    private static double[,] Inverse(double[,] matrix)
    {
        var size = matrix.GetLength(0);
        var inverse = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            inverse[i, i] = 1;
        }

        // Gauss and Jordan without pivoting: the matrix is positive definite.
        for (var i = 0; i < size; i++)
        {
            var pivot = matrix[i, i];
            for (var j = 0; j < size; j++)
            {
                (matrix[i, j], inverse[i, j]) = (matrix[i, j] / pivot, inverse[i, j] / pivot);
            }

            for (var k = 0; k < size; k++)
            {
                var factor = matrix[k, i];
                for (var j = 0; k != i && j < size; j++)
                {
                    matrix[k, j] -= factor * matrix[i, j];
                    inverse[k, j] -= factor * inverse[i, j];
                }
            }
        }

        return inverse;
    }
}
