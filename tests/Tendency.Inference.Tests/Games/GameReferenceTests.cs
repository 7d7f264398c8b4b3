using Tendency.Inference.Games;
using Tendency.Inference.Tests.References;

namespace Tendency.Inference.Tests.Games;

public sealed class GameReferenceTests
{
    [Fact]
    public void MatrixGame_ReferenceGrid_Within1e9()
    {
        foreach (var row in Grid.Read("grid_matrix_games"))
        {
            int rows = row.Integer("rows"), columns = row.Integer("cols");
            var flat = row.Numbers("payoff");
            var payoff = new double[rows, columns];
            Buffer.BlockCopy(flat, 0, payoff, 0, flat.Length * sizeof(double));
            var game = MatrixGame.Solve(payoff);
            row.Absolute("value", game.Value, 1e-9);
            row.Absolute("maximin_pure", game.Maximin, 1e-12);
            row.Absolute("minimax_pure", game.Minimax, 1e-12);
            AssertOptimal(payoff, game);
            if (row["unique"] == "1")
            {
                Assert.All(row.Numbers("row_strategy").Zip(game.RowShares), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
                Assert.All(row.Numbers("col_strategy").Zip(game.ColumnShares), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
            }
        }
    }

    // Ferguson, Game Theory, "Odd or Even": value 1/12, row share 7/12.
    [Fact]
    public void MatrixGame_OddOrEven_GivesPublishedValue()
    {
        var game = MatrixGame.Solve(new double[,] { { -2, 3 }, { 3, -4 } });
        Assert.Equal(1 / 12.0, game.Value, 1e-12);
        Assert.Equal(7 / 12.0, game.RowShares[0], 1e-12);
    }

    [Fact]
    public void BreakEven_ReferenceGrid_Within1e13()
    {
        foreach (var row in Grid.Read("grid_breakeven"))
        {
            var even = BreakEven.Of(row.Number("A_s1"), row.Number("A_s2"), row.Number("B_s1"), row.Number("B_s2"));
            row.Absolute("breakeven", even.Share ?? double.NaN, 1e-13);
            var expected = row["dominates"] switch { "A" => Better.First, "B" => Better.Second, _ => Better.Depends };
            Assert.Equal(expected, even.Better);
        }
    }

    [Fact]
    public void UncertainOption_ReferenceGrid_Within1e12()
    {
        foreach (var row in Grid.Read("grid_front_value"))
        {
            var (mean, sd) = new UncertainOption(row.Numbers("a"), row.Numbers("b")).Against(row.Numbers("mix_alpha"));
            row.Absolute("mean", mean, 1e-12);
            row.Absolute("sd", sd, 1e-12);
        }
    }

    [Fact]
    public void BestOfBetas_ReferenceGrid_Within1e8()
    {
        foreach (var rows in Grid.ReadCases("grid_best_of_betas"))
        {
            var chances = BestOfBetas.Chances([.. rows.Select(row => (row.Number("a"), row.Number("b")))]);
            for (var j = 0; j < rows.Count; j++)
            {
                rows[j].Absolute("p_best", chances[j], 1e-8);
            }

            Assert.Equal(1, chances.Sum(), 1e-8);
        }
    }

    // Both sides are Monte Carlo: five combined standard errors.
    [Fact]
    public void OptionRanking_ReferenceGrid_WithinFiveErrors()
    {
        const int Draws = 20_000;
        foreach (var rows in Grid.ReadCases("grid_front_rank"))
        {
            List<UncertainOption> options = [.. rows.Select(row => new UncertainOption(row.Numbers("a"), row.Numbers("b")))];
            var ranked = OptionRanking.Simulate(options, rows[0].Numbers("mix_alpha"), 0.8, Draws, 17);
            for (var f = 0; f < rows.Count; f++)
            {
                var p = rows[f].Number("p_best");
                var error = Math.Sqrt((p * (1 - p) / Draws) + Math.Pow(rows[f].Number("p_best_mcse"), 2));
                rows[f].Absolute("p_best", ranked[f].BestChance, 5 * error);
                error = Math.Sqrt(Math.Pow(ranked[f].LossError, 2) + Math.Pow(rows[f].Number("expected_loss_mcse"), 2));
                rows[f].Absolute("expected_loss", ranked[f].ExpectedLoss, 5 * error);
            }
        }
    }

    private static void AssertOptimal(double[,] payoff, MatrixGame game)
    {
        Assert.Equal(1, game.RowShares.Sum(), 1e-12);
        Assert.Equal(1, game.ColumnShares.Sum(), 1e-12);
        Assert.All(game.RowShares.Concat(game.ColumnShares), share => Assert.InRange(share, 0, 1));
        var guaranteed = Enumerable.Range(0, payoff.GetLength(1)).Min(c => game.RowShares.Select((p, r) => p * payoff[r, c]).Sum());
        var conceded = Enumerable.Range(0, payoff.GetLength(0)).Max(r => game.ColumnShares.Select((q, c) => q * payoff[r, c]).Sum());
        Assert.Equal(game.Value, guaranteed, 1e-9);
        Assert.Equal(game.Value, conceded, 1e-9);
    }
}
