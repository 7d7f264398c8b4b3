using Tendency.Inference.Games;

namespace Tendency.Breakdown.Fronts.Checks;

/// <summary>What is left when they adjust: the zero-sum game of the runs they have shown at least three times against the fronts in our plan.</summary>
/// <param name="Value">Success they can force, and we can hold them to, when both mix their best.</param>
/// <param name="Ours">Our fronts with a share, largest first.</param>
/// <param name="Theirs">Their runs with a share, largest first.</param>
/// <param name="BestReply">What our best single front allows against the charted mix: the upside when they do not adjust.</param>
public sealed record SchemeGame(
    double Value, IReadOnlyList<(string Front, double Share)> Ours, IReadOnlyList<(string Run, double Share)> Theirs, double BestReply, string Sentence)
{
    /// <summary>A run shown less often than this is no answer they can live on; without any such run all count.</summary>
    private const double FewestRuns = 3;

    /// <summary>What each of our fronts with a share would give up if they ran only what it is worst against.</summary>
    public IReadOnlyList<WorstRun> Worst { get; init; } = [];

    private const double Least = 0.005;
    private const double LeastSaid = 0.08;

    /// <returns>Null without a charted run or a front.</returns>
    public static SchemeGame? Of(FrontMatrix matrix)
    {
        var means = matrix.Means();
        var charted = Enumerable.Range(0, matrix.Mix.Cells.Count).Where(c => matrix.Mix.Cells[c].Count > 0).ToArray();
        var often = charted.Where(c => matrix.Mix.Cells[c].Count >= FewestRuns).ToArray();
        var cells = often.Length > 0 ? often : charted;
        if (cells.Length == 0 || matrix.Fronts.Count == 0)
        {
            return null;
        }

        var payoff = new double[cells.Length, matrix.Fronts.Count];
        for (var i = 0; i < cells.Length; i++)
        {
            for (var f = 0; f < matrix.Fronts.Count; f++)
            {
                payoff[i, f] = means[f, cells[i]];
            }
        }

        var game = MatrixGame.Solve(payoff);
        var ours = Largest(matrix.Fronts.Select((f, i) => (f.Name, game.ColumnShares[i])));
        var theirs = Largest(cells.Select((c, i) => ($"{matrix.Mix.Cells[c].Scheme.Name} {matrix.Mix.Cells[c].Side.Word()}", game.RowShares[i])));
        var runs = cells.Sum(c => matrix.Mix.Cells[c].EffectiveCount);
        var best = Enumerable.Range(0, matrix.Fronts.Count).Min(f => cells.Sum(c => matrix.Mix.Cells[c].EffectiveCount / runs * means[f, c]));
        var worst = ours.Where(o => o.Share >= LeastSaid).Select(o => Answer(matrix, means, cells, o.Name));
        return new SchemeGame(game.Value, ours, theirs, best, Say(ours)) { Worst = [.. worst] };
    }

    private static WorstRun Answer(FrontMatrix matrix, double[,] means, int[] cells, string front)
    {
        var f = matrix.Fronts.Index().First(known => known.Item.Name == front).Index;
        var run = cells.MaxBy(c => means[f, c]);
        return new WorstRun(front, matrix.Mix.Cells[run].Scheme.Name, matrix.Mix.Cells[run].Side, means[f, run]);
    }

    /// <summary>A mix of fronts as a coach would say it.</summary>
    internal static string Say(IReadOnlyList<(string Front, double Share)> ours)
    {
        ours = [.. ours.Where(o => o.Share >= LeastSaid)];
        if (ours.Count == 1)
        {
            return $"Stay in {FrontWord.Of(ours[0].Front)}: if they adjust, no other front of ours holds them lower.";
        }

        if (ours.Count > 2)
        {
            var parts = ours.Select(o => $"{FrontWord.Of(o.Front)} {5 * Math.Round(20 * o.Share)}%");
            return $"If they adjust, show {string.Join(", ", parts)} of the time.";
        }

        return (ours[0].Share / ours[1].Share) switch
        {
            < 1.25 => $"If they adjust, show {FrontWord.Of(ours[0].Front)} and {FrontWord.Of(ours[1].Front)} about equally.",
            < 1.75 => $"If they adjust, show {FrontWord.Of(ours[0].Front)} and {FrontWord.Of(ours[1].Front)} about three to two.",
            < 5.5 and var ratio => $"If they adjust, show {FrontWord.Of(ours[0].Front)} and {FrontWord.Of(ours[1].Front)} about {Number(ratio)} to one.",
            _ => $"If they adjust, stay in {FrontWord.Of(ours[0].Front)} and show {FrontWord.Of(ours[1].Front)} now and then.",
        };
    }

    private static string Number(double ratio) => (int)Math.Round(ratio) switch { 2 => "two", 3 => "three", 4 => "four", _ => "five" };

    private static IReadOnlyList<(string Name, double Share)> Largest(IEnumerable<(string Name, double Share)> shares) =>
        [.. shares.Where(s => s.Share >= Least).OrderByDescending(s => s.Share)];
}

/// <summary>The run a front is worst against, and what it allows there.</summary>
public readonly record struct WorstRun(string Front, string Run, RunTo Side, double Allowed);
