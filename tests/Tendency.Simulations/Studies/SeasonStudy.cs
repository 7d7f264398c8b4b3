using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Charts.Reading;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Glossaries;
using Tendency.Breakdown.Situations;
using Tendency.Breakdown.Weeks;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>
/// Seasons that were really played, one offense a chart: whether tells found in its first games hold in the games after them, and how well
/// each game is guessed from the ones before it. The charts are the caller's; none are kept here.
/// </summary>
internal static class SeasonStudy
{
    /// <summary>Fewer later plays say nothing of one tell by itself.</summary>
    private const int FewPlays = 5;

    private const int Shuffles = 20;

    /// <param name="folder">Charts, csv, one offense each, games in order.</param>
    /// <param name="games">Games a tell is found in, and games each guess is learned from.</param>
    public static void Run(string folder, int games, TextWriter output)
    {
        var seasons = Directory.GetFiles(folder, "*.csv").Order(StringComparer.Ordinal).Select(Read).ToArray();
        output.WriteLine($"{seasons.Length} offenses, {seasons.Sum(plays => plays.Rows)} plays");
        Hold([.. seasons.SelectMany(plays => Tried(plays, games))], output);
        var shuffled = seasons.SelectMany(plays => Shuffled(plays, games)).ToArray();
        output.WriteLine($"calls shuffled within each of the first games: a tell in {shuffled.Count(any => any)} of {shuffled.Length} charts ({100.0 * shuffled.Count(any => any) / shuffled.Length:0.0}%)");
        foreach (var model in seasons.SelectMany(plays => Guess.Run(plays, ColumnNames.Call, GuessOptions.Default with { Forward = games }).Rows).GroupBy(row => row.Model))
        {
            double plays = model.Sum(row => row.Plays);
            output.WriteLine(
                $"{model.Key,-18} {plays,6:0} plays  accuracy {model.Sum(row => row.Plays * row.Accuracy) / plays:0.0000}  log loss {model.Sum(row => row.Plays * row.LogLoss) / plays:0.0000}  "
                + $"Brier {model.Sum(row => row.Plays * row.Brier) / plays:0.0000}");
        }
    }

    /// <summary>One tell of the first games in the games after them; shares are of its outcome.</summary>
    private readonly record struct LaterTell(Tell Tell, int Plays, int Count, double UsualShare)
    {
        public double Difference => ((double)Count / Plays) - UsualShare;
    }

    private static void Hold(LaterTell[] tells, TextWriter output)
    {
        double now = tells.Sum(t => t.Tell.Plays), later = tells.Sum(t => t.Plays);
        output.WriteLine(
            $"{tells.Length} tells; share then {tells.Sum(t => t.Tell.Count) / now:0.000} of {now} plays, expected {tells.Sum(t => t.Plays * t.Tell.ShrunkShare) / later:0.000}, "
            + $"later {tells.Sum(t => t.Count) / later:0.000} of {later}; same way later {tells.Count(t => t.Plays >= FewPlays && Math.Sign(t.Difference) == Math.Sign(t.Tell.Difference))} of "
            + $"{tells.Count(t => t.Plays >= FewPlays)}; difference from usual then {tells.Average(t => t.Tell.Difference):0.000}, later {tells.Average(t => t.Difference):0.000}");
    }

    private static IEnumerable<LaterTell> Tried(PlayLog plays, int games)
    {
        var first = First(plays, games);
        PlayLog then = plays.Where(row => first[row]), later = plays.Where(row => !first[row]);
        foreach (var tell in later.Rows == 0 ? [] : Tells.Search(then, ColumnNames.Call, TellOptions.Default).Tells)
        {
            var call = later.Category(ColumnNames.Call);
            var rows = TellCondition.RowsOf(tell.Conditions, later);
            if (rows.Length > 0)
            {
                yield return new LaterTell(
                    tell, rows.Length, rows.Count(row => call[row] == tell.Outcome), Enumerable.Range(0, later.Rows).Average(row => call[row] == tell.Outcome ? 1.0 : 0));
            }
        }
    }

    // Their real looks with calls that have nothing to do with them: whatever is found is false.
    private static IEnumerable<bool> Shuffled(PlayLog plays, int games)
    {
        var first = First(plays, games);
        var then = plays.Where(row => first[row]);
        var (game, call) = (then.Category(ColumnNames.Game), then.Category(ColumnNames.Call));
        for (var shuffle = 0; shuffle < Shuffles; shuffle++)
        {
            var chance = new Random(shuffle);
            var calls = new string[then.Rows];
            foreach (var rows in Enumerable.Range(0, then.Rows).GroupBy(row => game.Codes[row]).Select(g => g.ToArray()))
            {
                var drawn = rows.Select(row => call[row]).ToArray();
                chance.Shuffle(drawn);
                foreach (var (row, value) in rows.Zip(drawn))
                {
                    calls[row] = value;
                }
            }

            yield return Tells.Search(SimulatedSnaps.WithCalls(then, calls), ColumnNames.Call, TellOptions.Default with { Shuffles = 0 }).Tells.Count > 0;
        }
    }

    private static bool[] First(PlayLog plays, int games)
    {
        var game = plays.Category(ColumnNames.Game);
        var first = game.UsedLevels().Take(games).ToHashSet(StringComparer.Ordinal);
        return [.. Enumerable.Range(0, plays.Rows).Select(row => first.Contains(game[row]))];
    }

    /// <summary>A chart of one offense, its counted plays.</summary>
    internal static PlayLog Read(string path)
    {
        var read = ChartReader.Read([new ChartSource(Path.GetFileName(path), () => File.OpenRead(path))], WeekPlan.Default, Glossary.BuiltIn);
        var studied = StudiedPlays.Choose(DerivedColumns.AddTo(read.Plays, WeekPlan.Default, Glossary.BuiltIn), WeekPlan.Default, [], Unit.Offense, out var problem);
        return studied?.Plays ?? throw new InvalidDataException($"{path}: {problem}");
    }
}
