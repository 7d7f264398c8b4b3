using CsCheck;
using Tendency.Inference.Games;
using Tendency.Tests.Shared;

namespace Tendency.Inference.Tests.Games;

public sealed class GameLawTests
{
    // Small whole payoffs make ties and degenerate games.
    private static readonly Gen<double[,]> Game =
        from rows in Gen.Int[1, 6]
        from columns in Gen.Int[1, 6]
        from payoffs in Gen.Int[-2, 2].Array[rows * columns]
        select Filled(rows, columns, (r, c) => payoffs[(r * columns) + c]);

    [Fact]
    public void MatrixGame_AnyGame_BothGuaranteeTheValue() => Law.Holds(
        Game,
        300,
        payoff =>
        {
            var game = MatrixGame.Solve(payoff);
            int rows = payoff.GetLength(0), columns = payoff.GetLength(1);
            var guaranteed = Enumerable.Range(0, columns).Min(c => Enumerable.Range(0, rows).Sum(r => game.RowShares[r] * payoff[r, c]));
            var conceded = Enumerable.Range(0, rows).Max(r => Enumerable.Range(0, columns).Sum(c => game.ColumnShares[c] * payoff[r, c]));
            Assert.Equal(game.Value, guaranteed, 1e-9);
            Assert.Equal(game.Value, conceded, 1e-9);
            Assert.InRange(game.Value, game.Maximin - 1e-9, game.Minimax + 1e-9);
        });

    [Fact]
    public void MatrixGame_MovedScaledOrTurned_ValueFollows() => Law.Holds(
        Game,
        200,
        payoff =>
        {
            int rows = payoff.GetLength(0), columns = payoff.GetLength(1);
            var value = MatrixGame.Solve(payoff).Value;
            Assert.Equal((3 * value) + 7, MatrixGame.Solve(Filled(rows, columns, (r, c) => (3 * payoff[r, c]) + 7)).Value, 1e-9);
            Assert.Equal(-value, MatrixGame.Solve(Filled(columns, rows, (c, r) => -payoff[r, c])).Value, 1e-9);
        });

    [Fact]
    public void BreakEven_AtTheShare_BothAreWorthTheSame() => Law.Holds(
        Gen.Double[0, 1].Array[4],
        300,
        v =>
        {
            var even = BreakEven.Of(v[0], v[1], v[2], v[3]);
            var turned = BreakEven.Of(v[2], v[3], v[0], v[1]);
            Assert.Equal(even.Share is null, turned.Share is null);
            if (even.Share is { } share)
            {
                Assert.InRange(share, 0, 1);
                Assert.Equal((share * v[0]) + ((1 - share) * v[1]), (share * v[2]) + ((1 - share) * v[3]), 1e-12);
                Assert.Equal(even.FirstLeadsAbove, v[0] > v[2]);
                Assert.NotEqual(even.FirstLeadsAbove, turned.FirstLeadsAbove);
            }
            else
            {
                Assert.Equal(even.Better is Better.First or Better.Equal, v[0] >= v[2] && v[1] >= v[3]);
            }
        });

    [Fact]
    public void BestOfBetas_AnyShapes_SumToOneAndFollowTheirOrder() => Law.Holds(
        Gen.Select(Gen.Double[0.3, 60], Gen.Double[0.3, 60]).Array[2, 6],
        60,
        shapes =>
        {
            var chances = BestOfBetas.Chances(shapes);
            var reversed = BestOfBetas.Chances([.. shapes.Reverse()]);
            Assert.Equal(1, chances.Sum(), 1e-8);
            Assert.All(chances.Zip(reversed.Reverse()), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
            var twins = BestOfBetas.Chances([.. shapes, shapes[0]]);
            Assert.Equal(twins[0], twins[^1], 1e-9);
        });

    // Against one thing only the option is its rate: mean and spread of a beta. A mix known for sure averages independent rates.
    [Fact]
    public void UncertainOption_OneThingOrAKnownMix_AsByHand() => Law.Holds(
        Gen.Double[0.2, 40].Array[4],
        200,
        v =>
        {
            static double Variance(double a, double b) => a * b / ((a + b) * (a + b) * (a + b + 1));
            var (mean, deviation) = new UncertainOption([v[0]], [v[1]]).Against([v[2]]);
            Assert.Equal(v[0] / (v[0] + v[1]), mean, 1e-12);
            Assert.Equal(Math.Sqrt(Variance(v[0], v[1])), deviation, 1e-12);
            var known = new UncertainOption([v[0], v[2]], [v[1], v[3]]).Against([2.5e8, 7.5e8]);
            Assert.Equal(Math.Sqrt((Variance(v[0], v[1]) / 16) + (Variance(v[2], v[3]) * 9 / 16)), known.StandardDeviation, 1e-6);
        });

    [Fact]
    public void OptionRanking_AnyOptions_ShareTheChancesAndSomeoneLosesNothing() => Law.Holds(
        Gen.Select(Gen.Double[0.5, 30].Array[2], Gen.Double[0.5, 30].Array[2]).Array[2, 4],
        40,
        shapes =>
        {
            var ranked = OptionRanking.Simulate([.. shapes.Select(s => new UncertainOption(s.Item1, s.Item2))], [4, 2], 0.8, 2_000, 1);
            Assert.Equal(1, ranked.Sum(option => option.BestChance), 1e-9);
            Assert.All(ranked, option => Assert.True(option.ExpectedLoss >= 0 && option.Range.Contains(option.Mean)));

            // What two options give up differs by what they are worth, up to the error of 2,000 draws.
            Assert.Equal(ranked[1].Mean - ranked[0].Mean, ranked[0].ExpectedLoss - ranked[1].ExpectedLoss, 0.05);
        });

    private static double[,] Filled(int rows, int columns, Func<int, int, double> value)
    {
        var filled = new double[rows, columns];
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                filled[r, c] = value(r, c);
            }
        }

        return filled;
    }
}
