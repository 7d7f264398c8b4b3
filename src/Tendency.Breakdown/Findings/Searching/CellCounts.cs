using Tendency.Inference.Comparisons;
using Tendency.Inference.Functions;

namespace Tendency.Breakdown.Findings.Searching;

/// <summary>Plays and hits of one set of plays, stratum by stratum, reused from situation to situation.</summary>
/// <remarks>A stratum is a game, or a game's plays of one kind; the strata's own totals are fixed when the counter is made.</remarks>
internal sealed class CellCounts
{
    /// <summary>From this many plays on, the normal limit of the exact distribution is precise to far more than is printed, and instant.</summary>
    private const int ManyPlays = 4000;

    private readonly int[] _stratum;
    private readonly int[] _total;
    private readonly int[] _totalHits;
    private readonly bool[] _isHit;
    private readonly int[] _plays;
    private readonly int[] _hits;
    private readonly int[] _touched;
    private readonly int[] _packed;
    private int _touchedCount;

    /// <param name="stratum">Stratum of every play, 0 to <paramref name="strata"/> - 1; -1 leaves a play out.</param>
    /// <param name="isHit">Whether a play has the outcome.</param>
    public CellCounts(int[] stratum, int strata, bool[] isHit)
    {
        _stratum = stratum;
        _isHit = isHit;
        _total = new int[strata];
        _totalHits = new int[strata];
        _plays = new int[strata];
        _hits = new int[strata];
        _touched = new int[strata];
        _packed = new int[4 * strata];
        for (var i = 0; i < stratum.Length; i++)
        {
            if (stratum[i] >= 0)
            {
                _total[stratum[i]]++;
                _totalHits[stratum[i]] += isHit[i] ? 1 : 0;
            }
        }
    }

    /// <summary>Plays of the set that lie in a stratum.</summary>
    public int Plays { get; private set; }

    public int Hits { get; private set; }

    /// <summary>Strata the set has plays in.</summary>
    public int Strata => _touchedCount;

    /// <summary>Counts a set of plays; the set before is forgotten.</summary>
    public void Count(ReadOnlySpan<int> plays)
    {
        for (var t = 0; t < _touchedCount; t++)
        {
            _plays[_touched[t]] = 0;
            _hits[_touched[t]] = 0;
        }

        (_touchedCount, Plays, Hits) = (0, 0, 0);
        foreach (var play in plays)
        {
            var s = _stratum[play];
            if (s < 0)
            {
                continue;
            }

            if (_plays[s]++ == 0)
            {
                _touched[_touchedCount++] = s;
            }

            Plays++;
            if (_isHit[play])
            {
                _hits[s]++;
                Hits++;
            }
        }

        Array.Sort(_touched, 0, _touchedCount);
    }

    /// <summary>Whether the set counted last could have come out otherwise: some stratum holds both hits and misses, inside and outside the set.</summary>
    public bool CanDiffer
    {
        get
        {
            for (var t = 0; t < _touchedCount; t++)
            {
                var s = _touched[t];
                if (_plays[s] < _total[s] && _totalHits[s] > 0 && _totalHits[s] < _total[s])
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>Cochran, Mantel and Haenszel's signed statistic of the set counted last; 0 when it could not have come out otherwise.</summary>
    public double Z() => Z(out _);

    /// <param name="variance">Variance of the set's hits: what it could tell, whatever was called in it.</param>
    public double Z(out double variance)
    {
        double expected = 0;
        variance = 0;
        for (var t = 0; t < _touchedCount; t++)
        {
            var s = _touched[t];
            double n = _plays[s], x = _totalHits[s], all = _total[s];
            expected += n * x / all;
            if (all > 1)
            {
                variance += n * (all - n) * x * (all - x) / (all * all * (all - 1));
            }
        }

        return variance > 0 ? (Hits - expected) / Math.Sqrt(variance) : 0;
    }

    /// <summary>
    /// Least p-value the set counted last could have, whatever was called in it: the probability of the rarer of all hits and no hits.
    /// Depends on plays and totals only, so choosing by it does not look at the answer.
    /// </summary>
    public double LeastP()
    {
        double all = 0, none = 0;
        for (var t = 0; t < _touchedCount; t++)
        {
            var s = _touched[t];
            int n = _plays[s], x = _totalHits[s], total = _total[s];
            var ways = GammaFunction.LogChoose(total, n);
            all += Extreme(n, x, total) - ways;
            none += Extreme(n, total - x, total) - ways;
        }

        return Math.Exp(Math.Min(all, none));
    }

    // Log of the ways to choose n plays of which as many as can be are among x.
    private static double Extreme(int n, int x, int total) =>
        n <= x ? GammaFunction.LogChoose(x, n) : GammaFunction.LogChoose(total - x, n - x);

    /// <summary>Exact two-sided p-value of the set counted last.</summary>
    public double P()
    {
        if (Plays > ManyPlays)
        {
            return Math.Min(1, 2 * NormalDistribution.Upper(Math.Abs(Z())));
        }

        var count = _touchedCount;
        Span<int> hits = _packed.AsSpan(0, count), cell = _packed.AsSpan(count, count);
        Span<int> totalHits = _packed.AsSpan(2 * count, count), total = _packed.AsSpan(3 * count, count);
        for (var t = 0; t < count; t++)
        {
            var s = _touched[t];
            (hits[t], cell[t], totalHits[t], total[t]) = (_hits[s], _plays[s], _totalHits[s], _total[s]);
        }

        return StratifiedTest.Run(hits, cell, totalHits, total).TwoSided;
    }
}
