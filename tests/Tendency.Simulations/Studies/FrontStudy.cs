using MathNet.Numerics.Distributions;
using Tendency.Breakdown.Fronts;
using Tendency.Breakdown.Fronts.Checks;
using Tendency.Breakdown.Fronts.Ledgers;
using Tendency.Inference.Intervals;

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
    private const double Expected = 0.45;
    private const string Family = "pull";

    public static void Run(int opponents, int seed, TextWriter output, int runs = 150)
    {
        var random = new Random(seed);
        var book = FrontBook.BuiltIn;
        var options = new FrontOptions { Draws = 2_000 };
        var called = new List<(double Chance, bool WasBest)>();
        var misses = new Misses();
        var films = new Misses();
        for (var i = 0; i < opponents; i++)
        {
            var opponent = Opponent.Draw(book, random, options);
            var film = opponent.Film(random, runs);
            var mix = RunMix.Of(film, film, options.MixPriorPlays);
            var matrix = FrontMatrix.Of(opponent.Fronts, mix, film, Expected, book, options);
            var top = FrontRanking.Of(matrix, options, options.Draws).Ranks[0];
            called.Add((top.ProbabilityBest, opponent.Best() == top.Front));
            MixAlone(opponent, mix, book, options, misses);
            WithFilm(opponent, matrix, book, options, films);
        }

        output.WriteLine("called best with   opponents   were best   mean chance");
        foreach (var bin in called.GroupBy(c => Math.Min(9, (int)(10 * c.Chance))).OrderBy(g => g.Key))
        {
            output.WriteLine($"{10 * bin.Key,3}-{10 * bin.Key + 10} %          {bin.Count(),6}      {100.0 * bin.Count(c => c.WasBest) / bin.Count(),6:0.0} %    {100 * bin.Average(c => c.Chance),6:0.0} %");
        }

        misses.Print("ratings are the truth, no film of our fronts, the mix charted", output);
        films.Print("success drawn around the ratings, film of our fronts", output);
    }

    /// <summary>Where the ratings are the truth and the fronts are not on film: what the charted proportions alone cost.</summary>
    private static void MixAlone(Opponent opponent, RunMix mix, FrontBook book, FrontOptions options, Misses misses)
    {
        var bare = FrontMatrix.Of(opponent.Fronts, mix, [], Expected, book, options);
        foreach (var even in FrontBreakEven.Of(bare, book, Expected, options).Where(b => b.Family == Family))
        {
            misses.Add(even, opponent.Turn(even, (front, cell) => Expected - (options.RatingStep * opponent.Rating(book, front, cell))), even.IfRatesHold.Range);
        }
    }

    private static void WithFilm(Opponent opponent, FrontMatrix matrix, FrontBook book, FrontOptions options, Misses misses)
    {
        foreach (var even in FrontBreakEven.Of(matrix, book, Expected, options).Where(b => b.Family == Family))
        {
            misses.Add(even, opponent.Turn(even, (front, cell) => opponent.Success[front][cell]), even.InAll.Range);
        }
    }

    /// <summary>Shares said and true, of the pairs that truly turn: how far apart, and whether the printed range held the truth.</summary>
    private sealed class Misses
    {
        private readonly List<double> _misses = [];
        private int _pairs, _ranges, _held;

        /// <param name="truth">Null where one front is better at every share; then nothing is counted.</param>
        public void Add(FrontBreakEven said, (double Share, string Below)? truth, Interval? range)
        {
            if (truth is not { } known)
            {
                return;
            }

            _pairs++;
            if (said.BreakEvenShare is { } share && said.BetterBelow == known.Below)
            {
                _misses.Add(Math.Abs(share - known.Share));
                _ranges += range is null ? 0 : 1;
                _held += range?.Contains(known.Share) == true ? 1 : 0;
            }
        }

        public void Print(string what, TextWriter output)
        {
            _misses.Sort();
            output.WriteLine($"break-even share of pulling schemes, {what}: {_pairs} pairs turn, {_misses.Count} said so; median miss {_misses[_misses.Count / 2]:0.000}, within 0.02 {100.0 * _misses.Count(m => m <= 0.02) / _misses.Count:0} %, 95 % under {_misses[(int)(0.95 * _misses.Count)]:0.000}; range held it in {100.0 * _held / _ranges:0.0} %");
        }
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

        public ChartedRun[] Film(Random random, int runs) => [.. Enumerable.Range(0, runs).Select(row =>
        {
            var cell = Categorical.Sample(random, Mix);
            var front = random.Next(Fronts.Count);
            var success = random.NextDouble() < Success[front][cell];
            return new ChartedRun(row, Cells[cell].Scheme, Cells[cell].Side, Fronts[front].Name, success, null, null, Tag.None, true);
        })];

        public double Rating(FrontBook book, int front, int cell) => book.RatingOf(Fronts[front].Name, Cells[cell].Scheme.Name, Cells[cell].Side);

        /// <summary>The true break-even and the front that is better below it, from the true mix and some true success; null where there is none.</summary>
        public (double Share, string Below)? Turn(FrontBreakEven pair, Func<int, int, double> allowed)
        {
            var inside = RunFamily.All.Single(f => f.Name == pair.Family);
            var (a, b) = (At(pair.FrontA), At(pair.FrontB));
            double with = 0, without = 0, share = 0;
            for (var c = 0; c < Cells.Count; c++)
            {
                var lead = Mix[c] * (allowed(b, c) - allowed(a, c));
                var isInside = inside.Holds(Cells[c].Scheme);
                with += isInside ? lead : 0;
                without += isInside ? 0 : lead;
                share += isInside ? Mix[c] : 0;
            }

            (with, without) = (with / share, without / (1 - share));
            return share is 0 or 1 || with * without >= 0 ? null : (without / (without - with), with > 0 ? pair.FrontB : pair.FrontA);
        }

        private int At(string front) => Fronts.Index().First(f => f.Item.Name == front).Index;
    }
}
