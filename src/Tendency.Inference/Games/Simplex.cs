namespace Tendency.Inference.Games;

/// <summary>
/// The linear programme of a game with positive payoffs A: largest sum of y with A y &lt;= 1, y &gt;= 0 (column player); the dual is the row
/// player's. Bland's rule, so that degenerate games do not cycle (Bland 1977, doi:10.1287/moor.2.2.103).
/// </summary>
internal sealed class Simplex
{
    private const double Zero = 1e-12;
    private readonly int rows;
    private readonly int columns;

    // Tableau: constraints, then the objective; columns: the y, the slacks, the right-hand side.
    private readonly double[,] tableau;
    private readonly int[] basis;

    public Simplex(double[,] payoff, double least, double range)
    {
        (rows, columns) = (payoff.GetLength(0), payoff.GetLength(1));
        tableau = new double[rows + 1, columns + rows + 1];
        basis = new int[rows];
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                tableau[r, c] = ((payoff[r, c] - least) / range) + 1;
            }

            tableau[r, columns + r] = 1;
            tableau[r, columns + rows] = 1;
            basis[r] = columns + r;
        }

        for (var c = 0; c < columns; c++)
        {
            tableau[rows, c] = -1;
        }
    }

    /// <summary>Optimal weights of rows and columns, not yet summing to 1.</summary>
    public (double[] Rows, double[] Columns) Solve()
    {
        while (Entering() is var entering && entering >= 0)
        {
            Pivot(Leaving(entering), entering);
        }

        var columnWeights = new double[columns];
        for (var r = 0; r < rows; r++)
        {
            if (basis[r] < columns)
            {
                columnWeights[basis[r]] = tableau[r, columns + rows];
            }
        }

        return ([.. Enumerable.Range(0, rows).Select(r => tableau[rows, columns + r])], columnWeights);
    }

    private int Entering()
    {
        for (var c = 0; c < columns + rows; c++)
        {
            if (tableau[rows, c] < -Zero)
            {
                return c;
            }
        }

        return -1;
    }

    private int Leaving(int entering)
    {
        var leaving = -1;
        var least = double.PositiveInfinity;
        for (var r = 0; r < rows; r++)
        {
            if (tableau[r, entering] <= Zero)
            {
                continue;
            }

            var ratio = tableau[r, columns + rows] / tableau[r, entering];
            if (ratio < least - Zero || (ratio < least + Zero && basis[r] < basis[leaving]))
            {
                (leaving, least) = (r, ratio);
            }
        }

        return leaving >= 0 ? leaving : throw new InvalidOperationException("A game with positive payoffs is bounded.");
    }

    private void Pivot(int row, int column)
    {
        var width = columns + rows + 1;
        var pivot = tableau[row, column];
        for (var c = 0; c < width; c++)
        {
            tableau[row, c] /= pivot;
        }

        for (var r = 0; r <= rows; r++)
        {
            var factor = tableau[r, column];
            if (r == row || factor == 0)
            {
                continue;
            }

            for (var c = 0; c < width; c++)
            {
                tableau[r, c] -= factor * tableau[row, c];
            }
        }

        basis[row] = column;
    }
}
