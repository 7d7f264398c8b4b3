using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>How often a habit that never changed is said to have moved, and how often a change is seen.</summary>
internal static class SteadyStudy
{
    private const int Draws = 299;

    public static void Run(int opponents, int seed, TextWriter output)
    {
        foreach (var games in (int[])[4, 6, 8])
        {
            foreach (var (swing, shift) in ((double, double)[])[(0, 0), (0.3, 0), (0.5, 0), (0.3, 0.8), (0.3, 1.4)])
            {
                int moved = 0, changed = 0;
                for (var i = 0; i < opponents; i++)
                {
                    var chance = new Random(unchecked((seed * 100_003) + i));
                    var looks = SimulatedSnaps.Looks(chance.Next(), games, 55);
                    var p = PlantedHabits.RunChances(looks, 0.5, swing, [], chance);
                    var game = looks.Category(ColumnNames.Game);
                    var late = p.Select((share, row) => game.Codes[row] > games / 2 ? 1 / (1 + Math.Exp(-Math.Log(share / (1 - share)) + shift)) : share);
                    PlayLog plays = SimulatedSnaps.WithCalls(looks, PlantedHabits.Draw([.. late], chance));
                    var steady = SteadyHabits.Follow(plays, Habit.Usual[0], 1, Draws)!;
                    moved += steady.SpreadP <= 0.05 ? 1 : 0;
                    changed += steady.Changed ? 1 : 0;
                }

                output.WriteLine($"{games} games, swing {swing:0.0} log odds, change {shift:0.0}: moved {100.0 * moved / opponents:0.0}%, changed {100.0 * changed / opponents:0.0}%");
            }
        }
    }
}
