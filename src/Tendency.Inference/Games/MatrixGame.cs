namespace Tendency.Inference.Games;

/// <summary>
/// A solved zero-sum game: the row player, to whom the payoff goes, maximises and the column player minimises. Source: von Neumann 1928,
/// doi:10.1007/BF01448847; Shapley and Snow 1950.
/// </summary>
/// <param name="Value">What both can guarantee.</param>
/// <param name="RowShares">An optimal mix of the rows, sum 1; not the only one in degenerate games.</param>
/// <param name="ColumnShares">An optimal mix of the columns, sum 1.</param>
/// <param name="Maximin">Best the row player can guarantee without mixing.</param>
/// <param name="Minimax">Best the column player can guarantee without mixing; equal to Maximin at a saddle point.</param>
public sealed record MatrixGame(
    double Value,
    IReadOnlyList<double> RowShares,
    IReadOnlyList<double> ColumnShares,
    double Maximin,
    double Minimax)
{
    // Products of two payoffs stay in the doubles.
    private const double LargestPayoff = 1e100;

    /// <summary>Whether pure strategies are optimal.</summary>
    public bool HasSaddle => Maximin == Minimax;

    /// <summary>Saddle point first; then the closed form of the 2 x 2 game; else linear programming.</summary>
    /// <param name="payoff">To the row player, a row per choice of his; of at most 1e100 in size.</param>
    /// <exception cref="ArgumentException">No row or column, or a payoff that is not a number of that size.</exception>
    public static MatrixGame Solve(double[,] payoff)
    {
        ArgumentNullException.ThrowIfNull(payoff);
        int rows = payoff.GetLength(0), columns = payoff.GetLength(1);
        if (rows == 0 || columns == 0 || payoff.Cast<double>().Any(value => !(Math.Abs(value) <= LargestPayoff)))
        {
            throw new ArgumentException($"A game needs at least one row and column of payoffs, none beyond {LargestPayoff}.", nameof(payoff));
        }

        double[] worst = [.. Enumerable.Range(0, rows).Select(r => Enumerable.Range(0, columns).Min(c => payoff[r, c]))];
        double[] best = [.. Enumerable.Range(0, columns).Select(c => Enumerable.Range(0, rows).Max(r => payoff[r, c]))];
        double maximin = worst.Max(), minimax = best.Min();
        if (maximin == minimax)
        {
            return new MatrixGame(maximin, Pure(rows, Array.IndexOf(worst, maximin)), Pure(columns, Array.IndexOf(best, minimax)), maximin, minimax);
        }

        if (rows == 2 && columns == 2)
        {
            double a = payoff[0, 0], b = payoff[0, 1], c = payoff[1, 0], d = payoff[1, 1], scale = a + d - b - c;
            double row = (d - c) / scale, column = (d - b) / scale;
            return new MatrixGame(((a * d) - (b * c)) / scale, [row, 1 - row], [column, 1 - column], maximin, minimax);
        }

        // Moved and scaled to [1, 2]: the value is then positive, as the linear programme needs.
        double least = payoff.Cast<double>().Min(), range = payoff.Cast<double>().Max() - least;
        var (rowWeights, columnWeights) = new Simplex(payoff, least, range).Solve();
        double[] rowShares = Normalised(rowWeights), columnShares = Normalised(columnWeights);

        // Both guarantees agree up to rounding; their mean is the value.
        var low = Enumerable.Range(0, columns).Min(c => Enumerable.Range(0, rows).Sum(r => rowShares[r] * payoff[r, c]));
        var high = Enumerable.Range(0, rows).Max(r => Enumerable.Range(0, columns).Sum(c => columnShares[c] * payoff[r, c]));
        return new MatrixGame((low + high) / 2, rowShares, columnShares, maximin, minimax);
    }

    private static double[] Pure(int count, int chosen)
    {
        var shares = new double[count];
        shares[chosen] = 1;
        return shares;
    }

    private static double[] Normalised(double[] weights)
    {
        double[] positive = [.. weights.Select(weight => Math.Max(0, weight))];
        var total = positive.Sum();
        return [.. positive.Select(weight => weight / total)];
    }
}
