using Tendency.Breakdown.Charts;
using static Tendency.Breakdown.Charts.Columns.ColumnNames;

namespace Tendency.Simulations.Charts;

/// <summary>Snaps whose columns know nothing of each other: the plainest chart a judge could draw.</summary>
/// <param name="Even">All values of a column alike; else each is rarer than the one before.</param>
/// <param name="Looks">Columns charted beside down and distance.</param>
/// <param name="Situations">Whether ball, score, quarter and series are charted too.</param>
internal sealed record SimulatedColumns(bool Even, IReadOnlyList<string> Looks, bool Situations)
{
    /// <summary>Formation and back side only.</summary>
    public static SimulatedColumns Few { get; } = new(true, [Formation, BackSide], false);

    /// <summary>Five looks.</summary>
    public static SimulatedColumns Some { get; } = new(false, [Formation, BackSide, Personnel, Wing, Motion], false);

    /// <summary>Seven looks, and everything that situations are derived from.</summary>
    public static SimulatedColumns Many { get; } = new(true, [Formation, BackSide, Personnel, Wing, Motion, BackSet, Hash], true);

    private static readonly Dictionary<string, (string[] Values, double Ratio)> s_values = new()
    {
        [Formation] = (["trips", "doubles", "bunch", "ace", "empty", "wing", "tight"], 0.75),
        [BackSide] = (["strong", "weak", "middle"], 0.7),
        [Personnel] = (["11", "12", "21", "10"], 0.5),
        [BackSet] = (["gun", "pistol", "under"], 0.5),
        [Wing] = (["none", "L", "R"], 0.5),
        [Motion] = (["none", "jet", "orbit", "zip"], 0.45),
        [Hash] = (["L", "M", "R"], 0.9),
    };

    /// <summary>Columns that habits are planted in.</summary>
    public IReadOnlyList<string> Planted => [.. Looks, Down];

    /// <summary>A log without calls and derived columns.</summary>
    public PlayLog Draw(int games, int snaps, Random chance)
    {
        var words = new Dictionary<string, List<string>> { [Game] = [], [Down] = [] };
        var numbers = new Dictionary<string, List<int?>> { [Play] = [], [Distance] = [] };
        for (var game = 1; game <= games; game++)
        {
            var last = snaps + chance.Next(-5, 6);
            for (var play = 1; play <= last; play++)
            {
                var down = chance.NextDouble() switch { < 0.43 => 1, < 0.76 => 2, < 0.96 => 3, _ => 4 };
                words[Game].Add($"G{game}");
                words[Down].Add($"{down}");
                numbers[Play].Add(play);
                numbers[Distance].Add(down == 1 ? 10 : 1 + chance.Next(12));
                foreach (var look in Looks)
                {
                    Add(words, look, Pick(look, chance));
                }

                if (Situations)
                {
                    Add(numbers, YardsToGoal, 1 + chance.Next(99));
                    Add(numbers, Margin, chance.Next(-21, 22));
                    Add(numbers, Quarter, 1 + chance.Next(4));
                    Add(numbers, Series, 1 + (play / 6));
                }
            }
        }

        return new PlayLog(
            numbers[Play].Count,
            words.Select(pair => CategoryColumn.FromWords(pair.Key, pair.Value)),
            numbers.Select(pair => NumberColumn.Create(pair.Key, pair.Value)),
            []);
    }

    private string Pick(string look, Random chance)
    {
        var (values, ratio) = s_values[look];
        var weights = values.Select((_, i) => Math.Pow(Even ? 1 : ratio, i)).ToArray();
        var roll = chance.NextDouble() * weights.Sum();
        var at = 0;
        while (at < values.Length - 1 && (roll -= weights[at]) >= 0)
        {
            at++;
        }

        return values[at];
    }

    private static void Add<T>(Dictionary<string, List<T>> columns, string name, T value) =>
        (columns.TryGetValue(name, out var list) ? list : columns[name] = []).Add(value);
}
