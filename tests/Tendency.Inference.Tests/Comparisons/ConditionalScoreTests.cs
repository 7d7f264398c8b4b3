using Tendency.Inference.Comparisons;

namespace Tendency.Inference.Tests.Comparisons;

public sealed class ConditionalScoreTests
{
    // Three strata of unequal size; hits and sets by fixed rules, so that sets overlap and cut across the strata.
    private static readonly int[] s_stratum = [.. Enumerable.Range(0, 120).Select(i => i < 30 ? 0 : i < 75 ? 1 : 2)];
    private static readonly bool[] s_isHit = [.. Enumerable.Range(0, 120).Select(i => ((i * 7) + (i / 11)) % 5 < 2 || (i % 3 == 0 && i % 4 < 2))];
    private static readonly int[] s_first = [.. Enumerable.Range(0, 120).Where(i => i % 3 == 0)];
    private static readonly int[] s_second = [.. Enumerable.Range(0, 120).Where(i => i % 4 < 2)];

    [Fact]
    public void Z_NothingTakenIn_IsSumOfBinomialScores()
    {
        // By hand: with an intercept a stratum only, U = x - n X / N and V = n (N - n) X (N - X) / N^3 in each stratum.
        double score = 0, variance = 0;
        for (var h = 0; h < 3; h++)
        {
            double all = s_stratum.Count(s => s == h), hits = Enumerable.Range(0, 120).Count(i => s_stratum[i] == h && s_isHit[i]);
            double n = s_first.Count(i => s_stratum[i] == h), x = s_first.Count(i => s_stratum[i] == h && s_isHit[i]);
            score += x - (n * hits / all);
            variance += n * (all - n) * hits * (all - hits) / (all * all * all);
        }

        Assert.Equal(score / Math.Sqrt(variance), new ConditionalScore(s_isHit, s_stratum, 3).Z(s_first), 6);
    }

    [Fact]
    public void Z_SetTakenInWithinOneStratum_IsThatOfTheStratumParted()
    {
        // An intercept and one effect fit two groups exactly, so they are the same as two strata.
        var one = new ConditionalScore(s_isHit, new int[120], 1);
        one.Add(s_first);
        var parted = new ConditionalScore(s_isHit, [.. Enumerable.Range(0, 120).Select(i => s_first.Contains(i) ? 1 : 0)], 2);

        Assert.Equal(parted.Z(s_second), one.Z(s_second), 5);
    }

    [Fact]
    public void Z_OfASetTakenIn_IsZero()
    {
        var score = new ConditionalScore(s_isHit, s_stratum, 3);
        score.Add(s_first);
        score.Add(s_second);

        Assert.Equal(0, score.Z(s_first));
        Assert.Equal(0, score.Z(s_second));
    }

    [Fact]
    public void Z_ShadowOfAHabit_FadesOnceItIsTakenIn()
    {
        // All of the first twenty are hits, of the others every fourth; the shadow shares fifteen plays with the twenty.
        bool[] isHit = [.. Enumerable.Range(0, 100).Select(i => i < 20 || i % 4 == 0)];
        int[] habit = [.. Enumerable.Range(0, 20)], shadow = [.. Enumerable.Range(5, 27)];
        var score = new ConditionalScore(isHit, new int[100], 1);

        Assert.True(score.Z(shadow) > 3);
        score.Add(habit);
        Assert.InRange(score.Z(shadow), -1, 1);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Z_OneOutcomeOnly_IsZero(bool hit)
    {
        var score = new ConditionalScore([.. Enumerable.Repeat(hit, 120)], s_stratum, 3);
        score.Add(s_second);

        Assert.Equal(0, score.Z(s_first));
    }

    [Fact]
    public void Constructor_LengthsDiffer_Refused() =>
        Assert.Throws<ArgumentException>(() => new ConditionalScore([true], [0, 0], 1));
}
