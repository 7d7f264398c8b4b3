using System.Diagnostics;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Breakdown.Findings.Guessing;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>How often the search for tells cries wolf, and how often it finds what is there.</summary>
internal static class TellStudies
{
    // Charts a judge might draw, from three columns of even values to every column of the contract with looks that hang together.
    private static readonly (string Name, Func<Random, int, PlayLog> Draw, IReadOnlyList<string> Planted)[] s_charts =
    [
        ("few columns", (chance, games) => SimulatedColumns.Few.Draw(games, SnapsAGame(games), chance), SimulatedColumns.Few.Planted),
        ("some columns", (chance, games) => SimulatedColumns.Some.Draw(games, SnapsAGame(games), chance), SimulatedColumns.Some.Planted),
        ("many columns", (chance, games) => SimulatedColumns.Many.Draw(games, SnapsAGame(games), chance), SimulatedColumns.Many.Planted),
        ("looks as on film", (chance, games) => SimulatedSnaps.Looks(chance.Next(), games, SnapsAGame(games)), PlantedHabits.Columns),
    ];

    private static int SnapsAGame(int games) => games == 4 ? 58 : 65;

    /// <summary>Charts with nothing planted: four games of about 58 snaps. Prints the share of charts with any tell reported.</summary>
    public static void Null(int charts, int seed, TextWriter output)
    {
        foreach (var (name, draw, _) in s_charts)
        {
            foreach (var (depth, swing) in ((int, double)[])[(2, 0), (2, 0.5), (3, 0)])
            {
                var watch = Stopwatch.StartNew();
                int withTells = 0, tells = 0;
                double searched = 0;
                for (var i = 0; i < charts; i++)
                {
                    var chance = new Random(unchecked((seed * 100_003) + i));
                    var looks = draw(chance, 4);
                    var calls = PlantedHabits.Draw(PlantedHabits.RunChances(looks, 0.45 + (0.15 * chance.NextDouble()), swing, [], chance), chance);
                    var report = Tells.Search(SimulatedSnaps.WithCalls(looks, calls), ColumnNames.Call, Options with { Depth = depth });
                    withTells += report.Tells.Count > 0 ? 1 : 0;
                    tells += report.Tells.Count;
                    searched += report.Searched;
                }

                output.WriteLine(
                    $"{name}, depth {depth}, swing {swing:0.0}: {withTells} of {charts} charts with a tell ({100.0 * withTells / charts:0.0}%), {tells} tells, "
                    + $"{searched / charts:0} pairs a chart, {watch.Elapsed.TotalSeconds:0.0} s");
            }
        }
    }

    /// <summary>Charts of six games of about 65 snaps with three habits. Prints the share of habits found and of reported tells that are none.</summary>
    public static void Planted(int charts, int seed, TextWriter output)
    {
        foreach (var (name, draw, planted) in s_charts)
        {
            foreach (var swing in (double[])[0, 0.5])
            {
                var watch = Stopwatch.StartNew();
                var score = new TellScore();
                for (var i = 0; i < charts; i++)
                {
                    var chance = new Random(unchecked((seed * 100_003) + i));
                    var looks = draw(chance, 6);
                    var derived = SimulatedSnaps.WithCalls(looks, Enumerable.Repeat("run", looks.Rows));
                    var habits = PlantedHabits.Choose(derived, 3, planted, chance);
                    var odds = PlantedHabits.RunChances(derived, 0.45 + (0.15 * chance.NextDouble()), swing, habits, chance);
                    var plays = SimulatedSnaps.WithCalls(looks, PlantedHabits.Draw(odds, chance));
                    score.Add(Tells.Search(plays, ColumnNames.Call, Options), habits, odds, plays);
                }

                output.WriteLine($"{name}, swing {swing:0.0}: {score.Text()}, {watch.Elapsed.TotalSeconds:0.0} s");
            }
        }
    }

    /// <summary>Charts of six games in which calls go by down and distance alone. Prints how many tells name anything beside it.</summary>
    public static void Situations(int charts, int seed, TextWriter output)
    {
        foreach (var (name, draw, _) in s_charts)
        {
            foreach (var depth in (int[])[2, 3])
            {
                int tells = 0, more = 0, withMore = 0;
                for (var i = 0; i < charts; i++)
                {
                    var chance = new Random(unchecked((seed * 100_003) + i));
                    var looks = draw(chance, 6);
                    var derived = SimulatedSnaps.WithCalls(looks, Enumerable.Repeat("run", looks.Rows));
                    var runs = Snapshot.Of(derived).Select(snap => 1 / (1 + Math.Exp(UsualCalls.PassLogOdds(snap)[0] - 0.6)));
                    var report = Tells.Search(SimulatedSnaps.WithCalls(looks, PlantedHabits.Draw([.. runs], chance)), ColumnNames.Call, Options with { Depth = depth });
                    var beside = report.Tells.Count(tell => tell.Conditions.Any(c => c.Name is not (ColumnNames.Down or ColumnNames.DownDistance)));
                    (tells, more, withMore) = (tells + report.Tells.Count, more + beside, withMore + (beside > 0 ? 1 : 0));
                }

                output.WriteLine($"{name}, depth {depth}: {tells} tells, {more} with more than down and distance ({100.0 * more / Math.Max(1, tells):0.0}%), in {100.0 * withMore / charts:0.0}% of charts");
            }
        }
    }

    // Shuffles are printed only; they choose nothing.
    private static TellOptions Options => TellOptions.Default with { Shuffles = 0 };
}
