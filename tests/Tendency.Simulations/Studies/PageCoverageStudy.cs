using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Counts;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>
/// How often does a range that a page prints hold the share its row would have over games without end? Charts of 60 snaps a game whose run
/// chances hang on down, formation and the back's side, and on the game: on the whole game, or on each down and distance in it by itself.
/// </summary>
internal static class PageCoverageStudy
{
    private const double Level = 0.95;
    private const int FewestPlays = 5;

    private static readonly (string Name, string? Column)[] s_rows =
        [("all plays", null), ("back's side", ColumnNames.BackSide), ("formation", ColumnNames.Formation), ("down and distance", ColumnNames.DownDistance)];

    private sealed class Score
    {
        public int Rows, Plain, Paged;
        public double PlainWidth, PagedWidth;
    }

    public static void Run(int charts, int seed, TextWriter to)
    {
        to.WriteLine("games  correlation  games differ             rows               plain ranges  page ranges  times as wide");
        foreach (var games in new[] { 3, 4, 5, 6 })
        {
            foreach (var rho in new[] { 0.0, 0.03, 0.05 })
            {
                foreach (var whole in rho == 0 ? [true] : new[] { true, false })
                {
                    var scores = s_rows.Select(_ => new Score()).ToArray();
                    var random = new Random(seed);
                    for (var i = 0; i < charts; i++)
                    {
                        Count(Chart(games, rho, whole, random), scores);
                    }

                    foreach (var (row, score) in s_rows.Zip(scores))
                    {
                        var how = rho == 0 ? "not" : whole ? "as a whole" : "by down and distance";
                        to.WriteLine($"{games,5}  {rho,11:F2}  {how,-23}  {row.Name,-17}  {100.0 * score.Plain / score.Rows,11:F1}%  {100.0 * score.Paged / score.Rows,10:F1}%  {score.PagedWidth / score.PlainWidth,13:F2}");
                    }
                }
            }
        }
    }

    private static void Count((PlayLog Plays, double[] Truth) chart, Score[] scores)
    {
        var ranges = new LikelyRanges(chart.Plays, Level);
        foreach (var ((_, column), score) in s_rows.Zip(scores))
        {
            var words = column is null ? null : chart.Plays.Dimension(column);
            foreach (var rows in Enumerable.Range(0, chart.Plays.Rows).GroupBy(row => words?.Codes[row] ?? 0).Select(group => group.ToArray()).Where(rows => rows.Length >= FewestPlays))
            {
                var plays = chart.Plays.Take(rows);
                var truth = rows.Average(row => chart.Truth[row]);
                var plain = Estimate.Of(CrossTab.Share(plays, ColumnNames.Call, "run"), Level).Likely;
                var paged = ranges.Of(plays, ColumnNames.Call, "run");
                score.Rows++;
                score.Plain += plain.Contains(truth) ? 1 : 0;
                score.Paged += paged.Contains(truth) ? 1 : 0;
                score.PlainWidth += plain.Width;
                score.PagedWidth += paged.Width;
            }
        }
    }

    // On the logit scale an effect of standard deviation 2 sqrt(rho) makes plays near an even split correlate by rho.
    private static (PlayLog Plays, double[] Truth) Chart(int games, double rho, bool whole, Random random)
    {
        var looks = SimulatedColumns.Few.Draw(games, 60, random);
        var derived = SimulatedSnaps.WithCalls(looks, Enumerable.Repeat("run", looks.Rows));
        var (game, cell) = (derived.Category(ColumnNames.Game), derived.Category(ColumnNames.DownDistance));
        var usual = Effects(cell, 0.8, random).Zip(Effects(derived.Category(ColumnNames.Formation), 0.5, random), (a, b) => a + b)
            .Zip(Effects(derived.Category(ColumnNames.BackSide), 0.4, random), (a, b) => a + b).ToArray();
        var spread = 2 * Math.Sqrt(rho);
        var swings = new Dictionary<(ushort, ushort), double>();
        var truth = usual.Select(odds => Mean(odds, spread)).ToArray();
        var calls = usual.Select((odds, row) =>
        {
            var key = (game.Codes[row], whole ? (ushort)0 : cell.Codes[row]);
            var swing = swings.TryGetValue(key, out var drawn) ? drawn : swings[key] = spread * Normal(random);
            return random.NextDouble() < Chance(odds + swing) ? "run" : "pass";
        }).ToArray();
        return (SimulatedSnaps.WithCalls(looks, calls), truth);
    }

    private static IEnumerable<double> Effects(CategoryColumn column, double spread, Random random)
    {
        var effects = column.Levels.Select(_ => spread * Normal(random)).ToArray();
        return Enumerable.Range(0, column.Codes.Length).Select(row => effects[column.Codes[row]]);
    }

    // Over the normal distribution, in steps of a fifth.
    private static double Mean(double odds, double spread)
    {
        var steps = Enumerable.Range(-20, 41).Select(i => i / 5.0).Select(z => (Weight: Math.Exp(-z * z / 2), Chance: Chance(odds + (spread * z)))).ToArray();
        return steps.Sum(step => step.Weight * step.Chance) / steps.Sum(step => step.Weight);
    }

    private static double Chance(double odds) => 1 / (1 + Math.Exp(-odds));

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
