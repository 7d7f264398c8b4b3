using Tendency.Breakdown.Charts;
using Tendency.Breakdown.Charts.Columns;

namespace Tendency.Simulations.Charts;

/// <summary>A habit written into simulated calls: in the snaps of a situation the log odds of a run are moved.</summary>
internal sealed record PlantedHabit(IReadOnlyList<(string Name, string Value)> Conditions, double LogOdds, IReadOnlyList<int> Rows)
{
    public override string ToString() => $"{string.Join(" & ", Conditions.Select(c => $"{c.Name}={c.Value}"))} ({LogOdds:+0.00;-0.00} on {Rows.Count})";
}

/// <summary>Calls drawn with and without habits.</summary>
internal static class PlantedHabits
{
    /// <summary>Columns of <see cref="SimulatedSnaps"/> that habits are planted in.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        ColumnNames.Down, ColumnNames.DownDistance, ColumnNames.Hash, ColumnNames.Personnel, ColumnNames.Formation, ColumnNames.BackSet,
        ColumnNames.BackSide, ColumnNames.Attached, ColumnNames.Wing, ColumnNames.Motion, ColumnNames.Tempo, ColumnNames.FieldZone, ColumnNames.ScoreState,
    ];

    /// <summary>Chooses habits of 25 to 60 snaps, two conditions three times out of four, with little overlap among them.</summary>
    public static List<PlantedHabit> Choose(PlayLog plays, int habits, IReadOnlyList<string> columns, Random chance)
    {
        var chosen = new List<PlantedHabit>();
        var wanted = chance.Next(25, 61);
        for (var attempt = 1; chosen.Count < habits; attempt++)
        {
            if (attempt % 100 == 0)
            {
                wanted = chance.Next(25, 61);
            }

            var names = chance.GetItems([.. columns], chance.Next(4) == 0 ? 1 : 2).Distinct().ToArray();
            var row = chance.Next(plays.Rows);
            var conditions = names.Select(name => (name, plays.Category(name)[row])).ToArray();
            var rows = Enumerable.Range(0, plays.Rows).Where(r => conditions.All(c => plays.Category(c.name)[r] == c.Item2)).ToArray();
            if (Math.Abs(rows.Length - wanted) > 1 + (attempt / 500) || conditions.Any(c => c.Item2.Length == 0)
                || chosen.Exists(other => other.Rows.Intersect(rows).Count() > rows.Length / 4))
            {
                continue;
            }

            var size = 1.3 + (0.3 * chance.NextDouble());
            chosen.Add(new PlantedHabit(conditions, chance.Next(2) == 0 ? -size : size, rows));
            wanted = chance.Next(25, 61);
        }

        return chosen;
    }

    /// <summary>Chance of a run on every snap: base rate, a swing from game to game, the habits; all in log odds.</summary>
    public static double[] RunChances(PlayLog plays, double baseShare, double swing, IReadOnlyList<PlantedHabit> habits, Random chance)
    {
        var games = plays.Category(ColumnNames.Game);
        var shift = games.Levels.Select(_ => swing * Normal(chance)).ToArray();
        var odds = new double[plays.Rows];
        for (var row = 0; row < odds.Length; row++)
        {
            odds[row] = Math.Log(baseShare / (1 - baseShare)) + shift[games.Codes[row]];
        }

        foreach (var habit in habits)
        {
            foreach (var row in habit.Rows)
            {
                odds[row] += habit.LogOdds;
            }
        }

        return [.. odds.Select(o => 1 / (1 + Math.Exp(-o)))];
    }

    public static IEnumerable<string> Draw(IReadOnlyList<double> runChances, Random chance) =>
        runChances.Select(p => chance.NextDouble() < p ? "run" : "pass");

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
