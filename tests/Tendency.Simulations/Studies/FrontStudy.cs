using MathNet.Numerics.Distributions;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;

namespace Tendency.Simulations.Studies;

/// <summary>
/// Opponents with a known truth: a run mix from a Dirichlet and, for each front and run, a success rate drawn around the rating as the
/// check believes (a rating is worth eight plays). Is a front called best with 80 % the best in 70 to 90 % of them? How far from the truth
/// is the break-even share?
/// </summary>
internal static class FrontStudy
{
    private const int PlanFronts = 5;
    private const int Schemes = 6;
    private const int Runs = 150;
    private const double Expected = 0.45;

    public static void Run(int opponents, int seed, TextWriter output)
    {
        var random = new Random(seed);
        var book = FrontBook.BuiltIn;
        var options = new FrontOptions { Draws = 2_000 };
        var called = new List<(double Chance, bool WasBest)>();
        var misses = new List<double>();
        for (var i = 0; i < opponents; i++)
        {
            var opponent = Opponent.Draw(book, random, options);
            var film = opponent.Film(random);
            var mix = RunMix.Of(film, film, options.MixPriorPlays);
            var matrix = FrontMatrix.Of(opponent.Fronts, mix, film, Expected, book, options);
            var top = FrontRanking.Of(matrix, options, options.Draws).Ranks[0];
            called.Add((top.ProbabilityBest, opponent.Best() == top.Front));
            misses.AddRange(Misses(opponent, matrix, book, options));
        }

        output.WriteLine("called best with   opponents   were best   mean chance");
        foreach (var bin in called.GroupBy(c => Math.Min(9, (int)(10 * c.Chance))).OrderBy(g => g.Key))
        {
            output.WriteLine($"{10 * bin.Key,3}-{10 * bin.Key + 10} %          {bin.Count(),6}      {100.0 * bin.Count(c => c.WasBest) / bin.Count(),6:0.0} %    {100 * bin.Average(c => c.Chance),6:0.0} %");
        }

        misses.Sort();
        output.WriteLine($"break-even share of pulling schemes, opinion without film against the ratings: {misses.Count} pairs, median miss {misses[misses.Count / 2]:0.000}, 95 % under {misses[(int)(0.95 * misses.Count)]:0.000}");
    }

    /// <summary>Miss of the break-even where the ratings are the truth and the fronts are not on film: what the charted proportions alone cost.</summary>
    private static IEnumerable<double> Misses(Opponent opponent, FrontMatrix matrix, FrontBook book, FrontOptions options)
    {
        var bare = FrontMatrix.Of(opponent.Fronts, matrix.Mix, [], Expected, book, options);
        var truth = FrontMatrix.Of(opponent.Fronts, opponent.TrueMix(100_000), [], Expected, book, options);
        var known = FrontBreakEven.Of(truth, book, Expected, options).Where(b => b.Family == "pull").ToDictionary(b => (b.FrontA, b.FrontB), b => b.BreakEvenShare);
        return FrontBreakEven.Of(bare, book, Expected, options)
            .Where(b => b.Family == "pull" && b.BreakEvenShare is not null && known[(b.FrontA, b.FrontB)] is not null)
            .Select(b => Math.Abs(b.BreakEvenShare!.Value - known[(b.FrontA, b.FrontB)]!.Value));
    }

    private sealed record Opponent(IReadOnlyList<Front> Fronts, IReadOnlyList<(RunScheme Scheme, RunTo Side)> Cells, double[] Mix, double[][] Success)
    {
        public static Opponent Draw(FrontBook book, Random random, FrontOptions options)
        {
            var fronts = book.Fronts.OrderBy(_ => random.Next()).Take(PlanFronts).ToArray();
            var schemes = book.Schemes.Where(s => book.IsRated(s.Name)).OrderBy(_ => random.Next()).Take(Schemes).ToArray();
            var cells = schemes.SelectMany(s => new[] { (s, RunTo.ToBack), (s, RunTo.Away) }).ToArray();
            var mix = Dirichlet.Sample(random, [.. cells.Select(_ => 1.0)]);
            var success = fronts.Select(f => cells.Select(c => Rate(book.RatingOf(f.Name, c.s.Name, c.Item2))).ToArray()).ToArray();
            return new Opponent(fronts, cells, mix, success);

            double Rate(double rating)
            {
                var prior = Expected - (options.RatingStep * rating);
                return Beta.Sample(random, options.PriorPlays * prior, options.PriorPlays * (1 - prior));
            }
        }

        public string Best() => Fronts[Enumerable.Range(0, Fronts.Count).MinBy(f => Mix.Zip(Success[f], (share, rate) => share * rate).Sum())].Name;

        public ChartedRun[] Film(Random random) => [.. Enumerable.Range(0, Runs).Select(row =>
        {
            var cell = Categorical.Sample(random, Mix);
            var front = random.Next(Fronts.Count);
            var success = random.NextDouble() < Success[front][cell];
            return new ChartedRun(row, Cells[cell].Scheme, Cells[cell].Side, Fronts[front].Name, success, null, null, Tag.None, true);
        })];

        public RunMix TrueMix(int runs)
        {
            var all = Cells.SelectMany((c, i) => Enumerable.Repeat(new ChartedRun(0, c.Scheme, c.Side, "", null, null, null, Tag.None, true), (int)(runs * Mix[i])));
            ChartedRun[] film = [.. all];
            return RunMix.Of(film, film, 1);
        }
    }
}
