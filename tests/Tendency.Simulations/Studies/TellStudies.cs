using System.Diagnostics;
using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;
using Tendency.Breakdown.Findings;
using Tendency.Simulations.Charts;

namespace Tendency.Simulations.Studies;

/// <summary>How often the search for tells cries wolf, and how often it finds what is there.</summary>
internal static class TellStudies
{
    /// <summary>Charts with nothing planted: four games of about 58 snaps. Prints the share of charts with any tell reported.</summary>
    public static void Null(int charts, int seed, TextWriter output)
    {
        foreach (var depth in (int[])[2, 3])
        {
            foreach (var swing in (double[])[0, 0.5])
            {
                var watch = Stopwatch.StartNew();
                int withTells = 0, tells = 0;
                double searched = 0;
                for (var i = 0; i < charts; i++)
                {
                    var chance = new Random((seed * 100_003) + i);
                    var looks = SimulatedSnaps.Looks(chance.Next(), 4, 58);
                    var calls = PlantedHabits.Draw(PlantedHabits.RunChances(looks, 0.45 + (0.15 * chance.NextDouble()), swing, [], chance), chance);
                    var report = Tells.Search(SimulatedSnaps.WithCalls(looks, calls), ColumnNames.Call, TellOptions.Default with { Depth = depth });
                    withTells += report.Tells.Count > 0 ? 1 : 0;
                    tells += report.Tells.Count;
                    searched += report.Searched;
                }

                output.WriteLine(
                    $"depth {depth}, swing {swing:0.0}: {withTells} of {charts} charts with a tell ({100.0 * withTells / charts:0.0}%), {tells} tells, "
                    + $"{searched / charts:0} pairs a chart, {watch.Elapsed.TotalSeconds:0.0} s");
            }
        }
    }

    /// <summary>Charts of six games with three habits. Prints the share of habits found and of reported tells that are none.</summary>
    public static void Planted(int charts, int seed, TextWriter output)
    {
        foreach (var (sameSign, swing) in ((bool, double)[])[(false, 0), (true, 0), (false, 0.5)])
        {
            var watch = Stopwatch.StartNew();
            var score = new Score();
            for (var i = 0; i < charts; i++)
            {
                var chance = new Random((seed * 100_003) + i);
                var looks = SimulatedSnaps.Looks(chance.Next(), 6, 58);
                var derived = SimulatedSnaps.WithCalls(looks, Enumerable.Repeat("run", looks.Rows));
                var habits = PlantedHabits.Choose(derived, 3, sameSign, chance);
                var odds = PlantedHabits.RunChances(derived, 0.45 + (0.15 * chance.NextDouble()), swing, habits, chance);
                var plays = SimulatedSnaps.WithCalls(looks, PlantedHabits.Draw(odds, chance));
                score.Add(Tells.Search(plays, ColumnNames.Call, TellOptions.Default), habits, odds, plays);
            }

            output.WriteLine($"signs {(sameSign ? "alike" : "mixed")}, swing {swing:0.0}: {score.Text()}, {watch.Elapsed.TotalSeconds:0.0} s");
        }
    }

    private sealed class Score
    {
        private int _habits;
        private int _found;
        private int _exact;
        private int _tells;
        private int _strange;
        private int _unrelated;
        private int _near;
        private int _untrue;
        private int _heldPlays;
        private double _heldError;

        private double _searched;
        private double _listed;

        public void Add(TellReport report, List<PlantedHabit> habits, double[] odds, PlayLog plays)
        {
            _searched += report.Searched;
            _listed += report.Listed;
            _habits += habits.Count;
            _found += habits.Count(h => report.Tells.Any(t => IsOf(t, h)));
            _exact += habits.Count(h => report.Tells.Any(t => t.Rows.Count == h.Rows.Count && t.Rows.SequenceEqual(h.Rows)));
            _tells += report.Tells.Count;
            _strange += report.Tells.Count(t => !habits.Exists(h => IsOf(t, h)));
            _unrelated += report.Tells.Count(t => !habits.Exists(h => IsNear(t, h)));
            _near += habits.Count(h => report.Tells.Any(t => IsNear(t, h)));
            _untrue += report.Tells.Count(t => Truth(t, odds, plays) < 0.05);
            foreach (var tell in report.Tells.Where(t => t.HeldOutPlays > 0))
            {
                _heldPlays += tell.HeldOutPlays;
                var truth = tell.Rows.Average(r => odds[r]);
                _heldError += tell.HeldOutCount - (tell.HeldOutPlays * (tell.Outcome == "run" ? truth : 1 - truth));
            }
        }

        public string Text() =>
            $"m {3 * _searched / _habits:0} listed {3 * _listed / _habits:0.0} found {100.0 * _found / _habits:0.0}% of {_habits} (same plays {100.0 * _exact / _habits:0.0}%), {_tells} tells, near {100.0 * _near / _habits:0.0}%, unrelated {100.0 * _unrelated / _tells:0.0}%, of no habit {100.0 * _strange / _tells:0.0}%, "
            + $"true difference under 5 points {100.0 * _untrue / _tells:0.0}%, held-out excess over truth {100 * _heldError / _heldPlays:0.0} points";

        private static bool IsNear(Tell tell, PlantedHabit habit)
        {
            var both = tell.Rows.Intersect(habit.Rows).Count();
            return (tell.Outcome == "run") == (habit.LogOdds > 0) && (2 * both >= tell.Rows.Count || 2 * both >= habit.Rows.Count);
        }

        // A tell is of a habit when half the plays of either are the other's too and the sign fits.
        private static bool IsOf(Tell tell, PlantedHabit habit)
        {
            var both = tell.Rows.Intersect(habit.Rows).Count();
            return (tell.Outcome == "run") == (habit.LogOdds > 0) && 2 * both >= tell.Rows.Count && 2 * both >= habit.Rows.Count;
        }

        // Expected difference, in the tell's direction, from the plays of the same games outside it.
        private static double Truth(Tell tell, double[] odds, PlayLog plays)
        {
            var inside = tell.Rows.ToHashSet();
            var games = plays.Category(ColumnNames.Game);
            var sum = 0.0;
            foreach (var row in tell.Rows)
            {
                sum += odds[row];
            }

            var outside = Enumerable.Range(0, plays.Rows).Where(r => !inside.Contains(r)).GroupBy(r => games.Codes[r]).ToDictionary(g => g.Key, g => g.Average(r => odds[r]));
            var expected = tell.Rows.Sum(r => outside.GetValueOrDefault(games.Codes[r], odds[r]));
            return (tell.Outcome == "run" ? 1 : -1) * (sum - expected) / tell.Rows.Count;
        }
    }
}
